package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.Arg;
import org.leat.check.CardText;
import org.leat.check.CommonMessages;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Message;
import org.leat.check.Report;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.pack.BuiltInPack;

/** What holds of the examples of the built-in rules. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class PackExamplesTest {

    private final RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);

    /** Rules without an example of a kind of finding, each with the reason why there can be none. Shrinks only. */
    private static final Map<String, Set<Kind>> UNREACHABLE = Map.of();

    private final Map<String, RuleCard> cards =
            new BuiltInPack().rules().stream().map(Rule::card).collect(Collectors.toMap(RuleCard::id, card -> card));

    static Collection<Example> all() {
        return PackExamples.asked();
    }

    @ParameterizedTest
    @MethodSource("all")
    void an_example_is_found_to_be_what_it_is_expected_to_be(Example example) throws IOException {
        assertThat(kit.differences(example)).isEmpty();
    }

    @Test
    void every_rule_has_a_file_of_examples_and_every_file_is_of_a_rule() throws IOException {
        Map<String, Path> files = new TreeMap<>();
        PackExamples.ofRules().forEach(example -> files.put(example.rule(), example.file()));
        assertThat(files.keySet()).isEqualTo(cards.keySet());
        assertThat(files)
                .allSatisfy((rule, file) -> assertThat(file).isEqualTo(PackExamples.FOLDER.resolve(rule + ".yaml")));
    }

    @Test
    void every_rule_has_a_passing_a_failing_and_an_open_example() throws IOException {
        assertThat(RuleTestKit.withoutExample(cards.keySet(), PackExamples.ofRules()))
                .isEqualTo(UNREACHABLE);
    }

    @Test
    void an_example_expects_of_its_rule_what_it_is_called() throws IOException {
        for (Example example : PackExamples.ofRules()) {
            Kind kind = Stream.of(Kind.PASS, Kind.FAIL, Kind.OPEN, Kind.REVIEW, Kind.NOT_APPLICABLE)
                    .filter(k -> example.name().startsWith(called(k)))
                    .findFirst()
                    .orElseThrow(() -> new AssertionError("no kind of finding in the name of " + example));
            assertThat(example.expects(kind)).as(example.id()).isTrue();
            assertThat(example.expects(Kind.FAIL)).as(example.id()).isEqualTo(kind == Kind.FAIL);
        }
    }

    private static String called(Kind kind) {
        return switch (kind) {
            case PASS -> "passes";
            case FAIL -> "fails";
            case NOT_APPLICABLE -> "does-not-apply";
            default -> kind.word();
        };
    }

    @Test
    void a_sound_plant_breaks_no_rule_that_warns() throws IOException {
        List<String> sound = List.of("sound", "sound-lead", "sound-tracking");
        List<Example> whole = PackExamples.ofPlants().stream()
                .filter(example -> sound.contains(example.name()))
                .toList();
        assertThat(whole)
                .hasSameSizeAs(sound)
                .allSatisfy(example ->
                        assertThat(kit.check(example).findings()).noneMatch(finding -> finding.failsAt(Level.WARNING)));
    }

    @Test
    void no_rule_breaks_over_an_example_and_every_rule_answers() throws IOException {
        for (Example example : all()) {
            Report report = kit.check(example);
            assertThat(report.findings().stream()
                            .filter(Finding::broke)
                            .map(f -> f.outcome().rule()))
                    .as(example.id())
                    .isEmpty();
            assertThat(report.findings().stream().map(f -> f.outcome().rule()).collect(Collectors.toSet()))
                    .as(example.id())
                    .isEqualTo(cards.keySet());
        }
    }

    @Test
    void checking_twice_gives_the_same() throws IOException {
        Example first = all().iterator().next();
        assertThat(PackExamples.CHECKER.check(kit.read(first))).isEqualTo(kit.check(first));
    }

    @Test
    void what_is_said_is_declared_and_has_every_argument_declared() throws IOException {
        for (Example example : all()) {
            for (Finding finding : kit.check(example).findings()) {
                RuleCard card = cards.get(finding.outcome().rule());
                assertDeclared(example, card, finding.outcome().message());
                finding.waysOut().forEach(way -> assertDeclared(example, card, way.message()));
            }
        }
    }

    private static void assertDeclared(Example example, RuleCard card, Message message) {
        CardText text = card.texts().get(message.id());
        List<String> declared = text == null ? CommonMessages.ARGUMENTS.get(message.id()) : text.arguments();
        assertThat(declared).as("%s: %s.%s", example, card.id(), message.id()).isNotNull();
        assertThat(message.args().stream().map(Arg::name))
                .as("%s: %s.%s", example, card.id(), message.id())
                .containsAll(declared);
    }
}
