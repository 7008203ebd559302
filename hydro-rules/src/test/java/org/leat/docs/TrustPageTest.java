package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Limit;
import org.leat.check.RuleInForce;
import org.leat.pack.BuiltInPack;
import org.leat.report.UsualUnits;

/**
 * The page that says how far to trust the program, from what the tests of hydro-model wrote down, the rules and the
 * physics notes; written again with {@code -Dleat.write-docs=true}.
 */
class TrustPageTest {

    private static final Path DOCS = Path.of("..", "docs");
    private static final Path PAGE = DOCS.resolve("trust.md");
    private static final Path FRAME = Path.of("src", "test", "resources", "trust.md");
    private static final Path DATA = Path.of("..", "hydro-model", "src", "test", "resources", "published");
    private static final Path OURS = Path.of("..", "hydro-model", "target", "published-values");
    private static final List<String> FROM_MEMORY = List.of("from memory", "common practice");

    private final List<RuleInForce> rules =
            Checker.of(List.of(new BuiltInPack())).rulebook().rules();
    private final Map<String, List<HeldAgainst>> files = new TreeMap<>();

    @BeforeEach
    void read() throws IOException {
        assumeTrue(Files.isDirectory(OURS), "the tests of hydro-model, which write down our values, have not run here");
        ObjectMapper json = new ObjectMapper();
        for (Path file : sorted(DATA)) {
            List<HeldAgainst> values = new ArrayList<>();
            for (JsonNode each : json.readTree(file.toFile())) {
                for (Map.Entry<String, JsonNode> expected : each.get("expected").properties()) {
                    String id = each.get("id").asText();
                    Path ours = OURS.resolve((id + "." + expected.getKey()).replace('/', ' '));
                    values.add(new HeldAgainst(
                            id,
                            expected.getKey(),
                            each,
                            expected.getValue(),
                            Files.exists(ours) ? Double.valueOf(Files.readString(ours)) : null));
                }
            }
            files.put(file.getFileName().toString().replace(".json", ""), values);
        }
    }

    @Test
    void the_page_tells_what_the_tests_found() throws IOException {
        String page = page();
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE))
                .as("run the tests of hydro-model first, then with -Dleat.write-docs=true")
                .isEqualTo(page);
    }

    @Test
    void every_limit_of_every_rule_names_its_source() {
        assertThat(rules)
                .allSatisfy(rule -> assertThat(rule.limits().values())
                        .allSatisfy(limit -> assertThat(limit.named().source()).isNotBlank()));
    }

    @Test
    void nearly_every_value_is_compared_as_a_number() {
        List<HeldAgainst> all = all();
        assertThat(all.stream().filter(HeldAgainst::comparable).count())
                .as("values that a test of hydro-model wrote down")
                .isGreaterThan(all.size() * 9L / 10);
    }

    private String page() throws IOException {
        return Files.readString(FRAME)
                .replace("{origins}", origins())
                .replace("{differences}", differences())
                .replace("{diagnosis}", diagnosis())
                .replace("{memory}", memory())
                .replace("{left-out}", leftOut())
                .replace("{limits}", limits())
                .replace("{values}", values());
    }

    private List<HeldAgainst> all() {
        return files.values().stream().flatMap(List::stream).toList();
    }

    private String origins() {
        Map<String, List<HeldAgainst>> by = all().stream()
                .collect(Collectors.groupingBy(
                        HeldAgainst::origin,
                        () -> new TreeMap<>(Comparator.comparing(HeldAgainst::rank)),
                        Collectors.toList()));
        StringBuilder out = new StringBuilder(
                "| origin | values | compared as numbers | within what is allowed |\n|---|---|---|---|\n");
        by.forEach((origin, values) -> out.append(counts(origin, values)));
        return out.append(counts("all", all())).toString().strip();
    }

    private static String counts(String name, List<HeldAgainst> values) {
        long compared = values.stream().filter(HeldAgainst::comparable).count();
        long outside = values.stream().filter(HeldAgainst::outside).count();
        return "| " + name + " | " + values.size() + " | " + compared + " | " + (compared - outside) + " |\n";
    }

    private String differences() {
        String rows = all().stream()
                .filter(HeldAgainst::outside)
                .map(value -> value.row().replaceAll("\\s*\\|$", "") + note(value) + " |")
                .collect(Collectors.joining("\n"));
        return rows.isEmpty() ? "There is none." : heading() + rows;
    }

    private static String note(HeldAgainst value) {
        String note = value.json().path("note").asText();
        return note.isEmpty() ? "" : ". Note: " + HeldAgainst.cell(note);
    }

    /** The first and the third table of the study of faults, which its own command writes. */
    private static String diagnosis() throws IOException {
        String study = Files.readString(DOCS.resolve("fault-study.md"));
        return table(study, "| readings | seen |") + "\n\n" + table(study, "| fault, all readings |");
    }

    private static String table(String page, String heading) {
        int begins = page.indexOf(heading);
        assertThat(begins).as(heading).isNotNegative();
        return page.substring(begins, page.indexOf("\n\n", begins)).strip();
    }

    private String memory() {
        StringBuilder out =
                new StringBuilder("| file | values | of them from memory or common practice |\n|---|---|---|\n");
        files.forEach((file, values) -> {
            long count = values.stream()
                    .filter(v -> FROM_MEMORY.contains(v.origin()))
                    .count();
            if (count > 0) {
                out.append("| ").append(file).append(" | ").append(values.size());
                out.append(" | ").append(count).append(" |\n");
            }
        });
        long limits = rules.stream().flatMap(r -> r.limits().values().stream()).count();
        out.append("\nOf the ").append(limits).append(" limits of the rules, ");
        out.append(named("from memory"))
                .append(" name a source from memory and ")
                .append(named("common practice"));
        return out.append(" common practice.").toString();
    }

    private long named(String words) {
        return rules.stream()
                .flatMap(rule -> rule.limits().values().stream())
                .filter(limit -> limit.named().source().contains(words))
                .count();
    }

    private String limits() {
        StringBuilder out = new StringBuilder("| rule | limit | value | source |\n|---|---|---|---|\n");
        for (RuleInForce rule : rules) {
            String id = rule.card().id();
            for (Limit limit : rule.limits().values()) {
                out.append("| [")
                        .append(id)
                        .append("](rules/")
                        .append(id)
                        .append(".md) | ")
                        .append(limit.name());
                out.append(" | ")
                        .append(UsualUnits.show(
                                limit.value(), limit.kind(), limit.named().unit(), 6));
                out.append(" | ")
                        .append(limit.named().source().replace("|", "/"))
                        .append(" |\n");
            }
        }
        out.append("\nRules without a limit to change judge by these:\n\n| rule | source |\n|---|---|\n");
        rules.stream()
                .filter(rule -> rule.limits().isEmpty())
                .map(rule -> "| [" + rule.card().id() + "](rules/" + rule.card().id() + ".md) | "
                        + String.join("; ", rule.card().sources()).replace("|", "/") + " |\n")
                .forEach(out::append);
        return out.toString().strip();
    }

    private static String leftOut() throws IOException {
        StringBuilder out = new StringBuilder("| page | model | left out |\n|---|---|---|\n");
        Pattern sections = Pattern.compile("(?m)^#+ (.+)$|^Left out: ((?:.|\\n(?!\\n|Class: |Source|Checked))+)");
        for (Path file : sorted(DOCS.resolve("physics"))) {
            String name = file.getFileName().toString();
            Matcher found = sections.matcher(Files.readString(file));
            String heading = "";
            while (found.find()) {
                if (found.group(1) != null) {
                    heading = found.group(1);
                } else {
                    out.append("| [")
                            .append(name.replace(".md", ""))
                            .append("](physics/")
                            .append(name)
                            .append(") | ");
                    out.append(heading.replace("|", "/")).append(" | ");
                    out.append(seenFromDocs(found.group(2))).append(" |\n");
                }
            }
        }
        return out.toString().strip();
    }

    /** One line of a page of the folder physics, its links as they are seen from the folder above. */
    private static String seenFromDocs(String text) {
        return text.strip().replaceAll("\\s+", " ").replace("](", "](physics/").replace("](physics/../", "](");
    }

    private String values() {
        StringBuilder out = new StringBuilder();
        files.forEach((file, values) -> {
            out.append("### ").append(file).append("\n\n").append(heading());
            values.forEach(value -> out.append(value.row()).append('\n'));
            out.append('\n');
        });
        return out.toString().strip();
    }

    private static String heading() {
        return "| case | what | expected | ours | deviation | allowed | origin and source |\n|---|---|---|---|---|---|---|\n";
    }

    private static List<Path> sorted(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        }
    }
}
