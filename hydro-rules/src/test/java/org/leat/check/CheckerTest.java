package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.tuple;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LevelChange;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.file.DesignReader;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

class CheckerTest {

    private static Rule made(String id, Function<Judgement, List<Outcome>> judging, List<Edit> way) {
        RuleBuilder rule = MadeRule.card(id, Level.WARNING, Level.WARNING)
                .limit("metre", QuantityKind.LENGTH, 1, "m", RuleCard.COMMON_PRACTICE)
                .judgeAll(judging);
        return way.isEmpty()
                ? rule.build()
                : rule.wayOut("way", "Way.", (j, failure) -> Stream.of(Change.of(way)))
                        .build();
    }

    private static Report check(Rule... rules) {
        return Checker.of(List.of(MadeRule.pack(rules))).check(Samples.reading());
    }

    private static List<Outcome> openBoreAtMost(Judgement j, double limit) {
        double bore = Si.of(j.design().nozzles().open().get(0));
        return List.of(j.at("/nozzles/open[0]").atMost(bore, limit, QuantityKind.LENGTH));
    }

    @Test
    void a_way_out_that_makes_another_rule_fail_is_told_as_tried_in_vain() {
        Edit wider = new Edit("/nozzles/open[0]", Si.quantity(12, "mm", Length.class));
        Rule atLeastElevenMillimetres = made(
                "a/wide",
                j -> {
                    double bore = Si.of(j.design().nozzles().open().get(0));
                    return List.of(j.at("/nozzles/open[0]").atLeast(bore, 0.011, QuantityKind.LENGTH));
                },
                List.of(wider));
        Rule atMostElevenMillimetres = made("a/narrow", j -> openBoreAtMost(j, 0.011), List.of());
        Finding alone = check(atLeastElevenMillimetres).worstFirst(Kind.FAIL).get(0);
        assertThat(alone.waysOut()).hasSize(1);
        assertThat(alone.rejected()).isEmpty();
        Finding both = check(atLeastElevenMillimetres, atMostElevenMillimetres)
                .worstFirst(Kind.FAIL)
                .get(0);
        assertThat(both.waysOut()).isEmpty();
        assertThat(both.rejected()).singleElement().satisfies(tried -> {
            assertThat(tried.brings()).isEqualTo("a/narrow");
            assertThat(tried.way()).isEqualTo(alone.waysOut().get(0));
        });
    }

    @Test
    void a_rule_that_throws_is_open_with_its_cause_and_the_rest_goes_on() {
        Report report = check(
                made(
                        "a/throws",
                        j -> {
                            throw new IllegalStateException("boom");
                        },
                        List.of()),
                made("a/loops", CheckerTest::forever, List.of()),
                made("a/silent", j -> List.of(), List.of()),
                made("a/works", j -> List.of(j.at("/").says("yes")), List.of()));
        assertThat(report.broke()).isTrue();
        assertThat(report.findings().stream().filter(Finding::broke))
                .hasSize(3)
                .allSatisfy(f -> assertThat(f.outcome().kind()).isEqualTo(Kind.OPEN));
        assertThat(report.findings().stream().map(f -> f.outcome().message()))
                .contains(
                        Message.of(CommonMessages.RULE_BROKE, Arg.of("cause", "IllegalStateException: boom")),
                        Message.of(CommonMessages.RULE_SILENT));
        assertThat(report.count(Kind.PASS)).isEqualTo(1);
    }

    @SuppressWarnings("InfiniteRecursion")
    private static List<Outcome> forever(Judgement j) {
        return forever(j);
    }

    @Test
    void a_pass_that_fails_within_the_range_of_an_assumption_is_open_and_names_the_field() {
        Report report = check(made(
                "a/roughness",
                j -> List.of(j.at("/penstock")
                        .atMost(j.plant().numbers().penstock().last().roughness(), 0.04e-3, QuantityKind.LENGTH)),
                List.of()));
        Finding finding = report.findings().get(0);
        assertThat(finding.outcome().kind()).isEqualTo(Kind.OPEN);
        assertThat(finding.outcome().missing()).isEqualTo("/penstock/sections[run]/pipe/roughness");
        assertThat(finding.outcome().comparison()).isNotNull();
        assertThat(finding.restsOn())
                .containsExactly(new SensitiveVerdict("/penstock/sections[run]/pipe/roughness", Kind.PASS, Kind.FAIL));
        assertThat(report.assumptions())
                .filteredOn(a -> a.assumption().path().endsWith("roughness"))
                .singleElement()
                .satisfies(a -> assertThat(a.rules()).containsExactly("a/roughness"));
    }

    @Test
    void a_failure_that_an_assumption_could_turn_stays_one_and_says_so() {
        Report report = check(made(
                "a/roughness",
                j -> List.of(j.at("/penstock")
                        .atMost(j.plant().numbers().penstock().last().roughness(), 0.01e-3, QuantityKind.LENGTH)),
                List.of()));
        assertThat(report.findings().get(0).outcome().kind()).isEqualTo(Kind.FAIL);
        assertThat(report.findings().get(0).restsOn()).hasSize(1);
    }

    @Test
    void a_way_out_that_does_not_help_or_makes_another_rule_fail_is_left_out() {
        Edit smaller = new Edit("/nozzles/open[0]", Si.quantity(8, "mm", Length.class));
        Rule failing = made("a/bore", j -> openBoreAtMost(j, 0.009), List.of(smaller));
        assertThat(check(failing).findings().get(0).waysOut()).hasSize(1);
        Rule hopeless = made("a/bore", j -> openBoreAtMost(j, 0.007), List.of(smaller));
        assertThat(check(hopeless).findings().get(0).waysOut()).isEmpty();
        Rule guard = made(
                "a/guard",
                j -> List.of(j.at("/nozzles")
                        .atLeast(Si.of(j.design().nozzles().open().get(0)), 0.009, QuantityKind.LENGTH)),
                List.of());
        assertThat(check(failing, guard).findings())
                .allSatisfy(f -> assertThat(f.waysOut()).isEmpty());
    }

    @Test
    void a_limit_that_settings_change_is_in_force_and_names_who_changed_it() {
        Rule rule = made("a/limit", j -> List.of(j.at("/").atMost(1.5, j.limit("metre"))), List.of());
        assertThat(check(rule).findings().get(0).outcome().kind()).isEqualTo(Kind.FAIL);
        Settings settings = new Settings(Map.of(
                "a/limit",
                new RuleSettings(
                        Map.of("metre", new LimitChange(2, Grounds.of("us", "why"))),
                        new LevelChange(Level.NOTE, new Grounds("us", "why", "A. Example", true)),
                        null)));
        Checker checker = Checker.of(List.of(MadeRule.pack(rule)), settings);
        Outcome outcome = checker.check(Samples.reading()).findings().get(0).outcome();
        assertThat(outcome.kind()).isEqualTo(Kind.PASS);
        assertThat(outcome.level()).isEqualTo(Level.NOTE);
        assertThat(checker.rulebook().rule("a/limit").limits().get("metre").changedBy())
                .isEqualTo("us");
    }

    @Test
    void settings_that_name_what_is_not_there_are_refused() {
        Rule rule = made("a/limit", j -> List.of(), List.of());
        for (Settings settings : List.of(
                new Settings(Map.of("a/other", RuleSettings.NONE)),
                new Settings(Map.of(
                        "a/limit",
                        new RuleSettings(Map.of("least", new LimitChange(2, Grounds.of("us", ""))), null, null))))) {
            assertThatIllegalArgumentException().isThrownBy(() -> Checker.of(List.of(MadeRule.pack(rule)), settings));
        }
        assertThatIllegalArgumentException().isThrownBy(() -> Checker.of(List.of(MadeRule.pack(rule, rule))));
    }

    @Test
    void an_alternative_is_checked_as_a_design_of_its_own_beside_the_design() {
        String text = Samples.SHORT + "alternatives:\n  - name: small jet\n    nozzles: { open: [8 mm] }\n";
        Rule rule = made("a/bore", j -> openBoreAtMost(j, 0.009), List.of());
        Report report = Checker.of(List.of(MadeRule.pack(rule))).check(DesignReader.read(text, "two.yaml"));
        assertThat(report.count(Kind.FAIL)).isEqualTo(1);
        Report other = report.alternatives().get(0);
        assertThat(other.alternative()).isEqualTo("small jet");
        assertThat(other.count(Kind.FAIL)).isZero();
        assertThat(other.findings().get(0).position().line()).isEqualTo(22);
    }

    @Test
    void a_finding_stands_where_its_value_stands() {
        Rule rule = made("a/bore", j -> openBoreAtMost(j, 0.009), List.of());
        assertThat(check(rule).findings().get(0).position()).hasToString("sample.yaml:11:10");
    }

    /** Fails in one case for the value assumed, and in another, as badly as said, for a rougher pipe. */
    private static Rule failsElsewhere(Level there) {
        return MadeRule.of("a/worst", Level.ERROR, Level.ERROR, j -> {
            boolean rough = j.plant().numbers().penstock().last().roughness() > 0.04e-3;
            return List.of(j.at("/penstock")
                    .during(rough ? "rough" : "smooth")
                    .as(rough ? there : Level.WARNING)
                    .says("no"));
        });
    }

    @Test
    void a_failure_is_no_question_for_its_other_case_at_an_end_of_a_range_unless_that_is_worse() {
        assertThat(check(failsElsewhere(Level.WARNING)).findings())
                .extracting(f -> f.outcome().kind())
                .containsExactly(Kind.FAIL);
        assertThat(check(failsElsewhere(Level.ERROR)).findings())
                .extracting(f -> f.outcome().kind(), f -> f.outcome().level())
                .containsExactlyInAnyOrder(tuple(Kind.FAIL, Level.WARNING), tuple(Kind.OPEN, Level.ERROR));
    }
}
