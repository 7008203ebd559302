package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Arg;
import org.leat.check.CardText;
import org.leat.check.Checker;
import org.leat.check.CommonMessages;
import org.leat.check.DesignEdits;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Message;
import org.leat.check.NamedLimit;
import org.leat.check.Report;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.report.testing.RuleTestKit;

/** What holds for every rule of the pack. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class AllRulesTest {

    private static final Path EXAMPLES = Path.of("src/test/resources/rules");
    private static final Path DEMOS = Path.of("../hydro-examples/designs");
    private static final Pattern PLACEHOLDER = Pattern.compile("\\{([a-zA-Z]+)(?::[^,{}]*)?(?:,[1-6])?}");
    private static final Set<String> COMPARED = Set.of("value", "limit", "margin");

    /** What still has no example. Shrinks only: an example that is added must be taken out here. */
    private static final Map<String, Set<Kind>> WITHOUT_EXAMPLE = Map.of();

    private final BuiltInPack pack = new BuiltInPack();
    private final Checker checker = Checker.of(List.of(pack));
    private final Map<Path, Report> reports = new TreeMap<>();
    private final Map<Path, Design> designs = new TreeMap<>();

    private Map<Path, Report> reports() throws IOException {
        if (reports.isEmpty()) {
            List<Path> files = new ArrayList<>(RuleTestKit.designs(EXAMPLES));
            try (Stream<Path> demos = Files.list(DEMOS)) {
                demos.filter(f -> f.toString().endsWith(".yaml")).sorted().forEach(files::add);
            }
            for (Path file : files) {
                var reading = DesignReader.read(file);
                assertThat(reading.problems()).as(file.toString()).isEmpty();
                designs.put(file, reading.design());
                reports.put(file, checker.check(reading));
            }
        }
        return reports;
    }

    private Stream<RuleCard> cards() {
        return pack.rules().stream().map(Rule::card);
    }

    private static Stream<Path> examples() throws IOException {
        return RuleTestKit.designs(EXAMPLES).stream();
    }

    @ParameterizedTest
    @MethodSource("examples")
    void an_example_is_found_to_be_what_it_is_expected_to_be(Path design) throws IOException {
        if ("write".equals(System.getProperty("leat.docs"))) {
            Files.writeString(
                    RuleTestKit.expectation(design), new RuleTestKit(checker).draft(design, List.of(ruleOf(design))));
        }
        assertThat(new RuleTestKit(checker).differences(design)).isEmpty();
    }

    /** Examples of a rule lie in the folder of its name. */
    private static String ruleOf(Path design) {
        return EXAMPLES.relativize(design.getParent()).toString().replace('\\', '/');
    }

    @Test
    void ids_are_listed_in_order_each_once() {
        List<String> ids = cards().map(RuleCard::id).toList();
        assertThat(ids).isSorted().doesNotHaveDuplicates();
    }

    @Test
    void every_limit_has_a_source_and_every_source_is_a_reference_or_common_practice() {
        assertThat(cards()).allSatisfy(card -> {
            List<String> sources = new ArrayList<>(card.sources());
            card.limits().values().stream().map(NamedLimit::source).forEach(sources::add);
            assertThat(sources).allSatisfy(source -> assertThat(source).hasSizeGreaterThan(5));
        });
    }

    @Test
    void what_is_said_is_declared_and_has_every_argument_declared() throws IOException {
        Map<String, RuleCard> byId = cards().collect(Collectors.toMap(RuleCard::id, c -> c));
        reports().forEach((file, report) -> {
            for (Finding finding : report.findings()) {
                RuleCard card = byId.get(finding.outcome().rule());
                assertDeclared(file, card, finding.outcome().message());
                finding.waysOut().forEach(way -> assertDeclared(file, card, way.message()));
            }
        });
    }

    private static void assertDeclared(Path file, RuleCard card, Message message) {
        CardText text = card.texts().get(message.id());
        List<String> declared = text == null ? CommonMessages.ARGUMENTS.get(message.id()) : text.arguments();
        assertThat(declared).as("%s: %s.%s", file, card.id(), message.id()).isNotNull();
        assertThat(message.args().stream().map(Arg::name))
                .as("%s: %s.%s", file, card.id(), message.id())
                .containsAll(declared);
    }

    @Test
    void checking_twice_gives_the_same() throws IOException {
        Path first = reports().keySet().iterator().next();
        assertThat(checker.check(DesignReader.read(first))).isEqualTo(reports().get(first));
    }

    @Test
    void no_rule_breaks_over_an_example_and_every_rule_answers() throws IOException {
        Set<String> ids = cards().map(RuleCard::id).collect(Collectors.toSet());
        reports().forEach((file, report) -> {
            assertThat(report.findings().stream().filter(Finding::broke))
                    .as(file.toString())
                    .isEmpty();
            assertThat(report.findings().stream().map(f -> f.outcome().rule()).collect(Collectors.toSet()))
                    .as(file.toString())
                    .isEqualTo(ids);
        });
    }

    @Test
    void every_rule_has_a_failing_a_passing_and_an_open_example() throws IOException {
        Map<String, Set<Kind>> seen = new TreeMap<>();
        cards().forEach(card -> seen.put(card.id(), EnumSet.of(Kind.FAIL, Kind.PASS, Kind.OPEN)));
        reports()
                .forEach((file, report) -> report.findings()
                        .forEach(f ->
                                seen.get(f.outcome().rule()).remove(f.outcome().kind())));
        seen.values().removeIf(Set::isEmpty);
        assertThat(seen).as("what each rule has no example of").isEqualTo(WITHOUT_EXAMPLE);
    }

    @Test
    void every_way_out_takes_its_failure_away_and_brings_no_new_one_of_its_level() throws IOException {
        List<String> wrong = new ArrayList<>();
        int tried = 0;
        for (Map.Entry<Path, Report> entry : reports().entrySet()) {
            for (Finding finding : entry.getValue().findings()) {
                for (WayOut way : finding.waysOut()) {
                    if (!way.edits().isEmpty()) {
                        tried++;
                        Design edited = DesignEdits.apply(designs.get(entry.getKey()), way.edits());
                        wrong.addAll(
                                newFailures(entry.getKey(), entry.getValue(), finding, way, checker.check(edited)));
                    }
                }
            }
        }
        assertThat(tried).isPositive();
        assertThat(wrong).isEmpty();
    }

    private static List<String> newFailures(Path file, Report before, Finding finding, WayOut way, Report after) {
        Level level = finding.outcome().level();
        Set<Object> known = new HashSet<>();
        before.findings().stream()
                .filter(f -> f.failsAt(level))
                .map(f -> f.outcome().rule() + f.outcome().path())
                .forEach(known::add);
        return after.findings().stream()
                .filter(f -> f.outcome().identity().equals(finding.outcome().identity())
                        ? f.outcome().kind() == Kind.FAIL
                        : f.failsAt(level)
                                && !known.contains(
                                        f.outcome().rule() + f.outcome().path()))
                .map(f -> file.getFileName() + " " + finding.outcome().identity() + " by "
                        + way.message().id() + ": " + f.outcome().identity() + " "
                        + f.outcome().message().id())
                .toList();
    }
}
