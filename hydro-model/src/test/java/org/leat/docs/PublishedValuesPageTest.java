package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.leat.published.PublishedCase;

/** The page that lists what the laws are held against; written again with {@code -Dleat.write-docs=true}. */
class PublishedValuesPageTest {

    private static final Path PAGE = Sources.ROOT.resolve("docs/physics/published-values.md");
    private static final Path DATA = Sources.ROOT.resolve("hydro-model/src/test/resources/published");
    private static final int LONGEST = 90;

    @Test
    void the_page_tells_the_data_files() throws IOException {
        String page = page();
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(PAGE, page);
        }
        assertThat(Files.readString(PAGE)).isEqualTo(page);
    }

    private static String page() throws IOException {
        StringBuilder out = new StringBuilder("""
                # What the laws are held against

                Written from the data files under `hydro-model/src/test/resources/published`, one row for each family of cases; the source
                of each case stands in the file. What an origin is worth: [README](README.md). The tolerance is that of the case (rel: of the
                expected value).
                """);
        for (String file : files()) {
            Map<String, List<PublishedCase>> families = PublishedCase.of(file)
                    .collect(Collectors.groupingBy(PublishedCase::family, LinkedHashMap::new, Collectors.toList()));
            out.append("\n## ").append(file).append("\n\n| family | cases | first case | tolerance | origin |\n");
            out.append("|---|---|---|---|---|\n");
            families.forEach((family, cases) -> out.append("| ")
                    .append(family)
                    .append(" | ")
                    .append(cases.size())
                    .append(" | ")
                    .append(what(cases.get(0)))
                    .append(" | ")
                    .append(each(cases, PublishedValuesPageTest::tolerance))
                    .append(" | ")
                    .append(each(cases, c -> c.json().get("origin").asText()))
                    .append(" |\n"));
        }
        return out.toString();
    }

    private static List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(DATA)) {
            return files.map(p -> p.getFileName().toString().replace(".json", ""))
                    .sorted()
                    .toList();
        }
    }

    private static String each(List<PublishedCase> cases, Function<PublishedCase, String> of) {
        return cases.stream().map(of).distinct().sorted().collect(Collectors.joining(", "));
    }

    private static String what(PublishedCase c) {
        String text = c.json().get("what").asText().replace("|", "/");
        return text.length() <= LONGEST ? text : text.substring(0, text.lastIndexOf(' ', LONGEST)) + " …";
    }

    private static String tolerance(PublishedCase c) {
        BigDecimal by = new BigDecimal(c.json().at("/tolerance/value").asText()).stripTrailingZeros();
        String number = by.signum() != 0 && by.doubleValue() < 1e-4
                ? by.unscaledValue() + "e" + -by.scale()
                : by.toPlainString();
        boolean relative = c.json().at("/tolerance/kind").asText().equals("relative");
        return by.signum() == 0 ? "exact" : number + (relative ? " rel" : "");
    }
}
