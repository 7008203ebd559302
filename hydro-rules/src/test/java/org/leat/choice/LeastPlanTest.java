package org.leat.choice;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Stream;
import javax.measure.quantity.Area;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.leat.check.Change;
import org.leat.check.Checker;
import org.leat.check.DesignEdits;
import org.leat.check.Edit;
import org.leat.check.Examined;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.Rule;
import org.leat.check.RuleBuilder;
import org.leat.check.RuleCard;
import org.leat.check.RulePack;
import org.leat.check.Samples;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.choice.Plan.Step;
import org.leat.design.Cable;
import org.leat.design.CableBuilder;
import org.leat.design.ConductorBuilder;
import org.leat.design.Design;
import org.leat.design.Place;
import org.leat.quantity.Si;

/** The search for the least plan, on rules made up so that the smallest set is known beforehand. */
class LeastPlanTest {

    private static final Change POLES = Change.of("/alternator/pole-pairs", 7);
    private static final Change HEATED = Change.of("/battery/heated", true);
    private static final Change DRAINED = Change.of("/penstock/drained", true);

    private static boolean poles(Design d) {
        return Integer.valueOf(7).equals(d.alternator().polePairs());
    }

    private static boolean heated(Design d) {
        return Boolean.TRUE.equals(d.battery().heated());
    }

    private static boolean drained(Design d) {
        return Boolean.TRUE.equals(d.penstock().drained());
    }

    private static RuleBuilder rule(String id) {
        return Rule.of(id, Level.ERROR, "t")
                .why("w")
                .formula("f")
                .judged("j")
                .source(RuleCard.COMMON_PRACTICE)
                .passes("yes", "Yes.")
                .fails("no", "No.")
                .open("who-knows", "Who knows.");
    }

    private static Rule holdsIf(String id, Predicate<Design> holds, Change... ways) {
        RuleBuilder rule = rule(id).judge(j -> j.at("/battery").holds(holds.test(j.design())));
        for (int i = 0; i < ways.length; i++) {
            Change way = ways[i];
            rule = rule.wayOut("way-" + i, "Do it.", (j, failure) -> Stream.of(way));
        }
        return rule.build();
    }

    private record Found(Overview overview, Report anew) {}

    private static Found found(Rule... rules) {
        RulePack pack = new RulePack() {
            @Override
            public String name() {
                return "made";
            }

            @Override
            public List<Rule> rules() {
                return List.of(rules);
            }
        };
        Checker checker = Checker.of(List.of(pack));
        Examined examined = checker.examined(Samples.reading());
        Overview overview = Overview.of(examined, checker.rulebook());
        return new Found(overview, checker.check(DesignEdits.apply(Samples.design(), edits(overview.plan()))));
    }

    private static List<Edit> edits(Plan plan) {
        return plan.steps().stream().flatMap(s -> s.way().edits().stream()).toList();
    }

    private static List<String> changed(Plan plan) {
        return edits(plan).stream().map(Edit::path).sorted().toList();
    }

    @Test
    void two_changes_that_clear_all_between_them_are_less_than_the_one_that_clears_most_and_two_more() {
        Found found = found(
                holdsIf("a/one", d -> poles(d) || heated(d), POLES, HEATED),
                holdsIf("a/two", d -> poles(d) || heated(d), POLES, HEATED),
                holdsIf("a/three", d -> poles(d) || drained(d), POLES, DRAINED),
                holdsIf("a/four", d -> poles(d) || drained(d), POLES, DRAINED),
                holdsIf("a/five", d -> heated(d), HEATED),
                holdsIf("a/six", d -> drained(d), DRAINED));
        Plan plan = found.overview().plan();
        assertThat(plan.result()).isEqualTo(Plan.Result.FOUND);
        assertThat(changed(plan)).containsExactly("/battery/heated", "/penstock/drained");
        assertThat(found.anew().failures(Level.ERROR)).isZero();
    }

    @Test
    void failures_that_one_change_clears_are_one_cause() {
        Found found = found(
                holdsIf("a/one", LeastPlanTest::heated, HEATED),
                holdsIf("a/two", LeastPlanTest::drained, DRAINED),
                holdsIf("a/three", LeastPlanTest::heated, HEATED));
        assertThat(found.overview().causes())
                .extracting(c ->
                        c.clears().stream().map(g -> g.worst().outcome().rule()).toList())
                .containsExactly(List.of("a/one", "a/three"), List.of("a/two"));
        assertThat(found.overview().causes()).allMatch(Cause::inPlan);
    }

    @Test
    void among_as_few_changes_that_of_most_power_is_taken() {
        Change small = Change.of("/nozzles/open", List.of(Si.quantity(9, "mm", Length.class)));
        Change large = Change.of("/nozzles/open", List.of(Si.quantity(12, "mm", Length.class)));
        double bore = 0.010;
        Found found =
                found(holdsIf("a/one", d -> Math.abs(Si.of(d.nozzles().open().get(0)) - bore) > 1e-6, small, large));
        assertThat(edits(found.overview().plan())).isEqualTo(large.edits());
        assertThat(found.overview().plan().batteryPower()).isPresent();
    }

    @Test
    void an_error_with_advice_alone_stays_and_the_plan_says_why() {
        Rule advised = rule("a/advised")
                .judge(j -> j.at("/battery").holds(false))
                .advice("think", "Think.", (j, failure) -> Stream.of(Change.advice()))
                .build();
        Found found = found(advised, holdsIf("a/one", LeastPlanTest::heated, HEATED), holdsIf("a/none", d -> false));
        Plan plan = found.overview().plan();
        assertThat(plan.result()).isEqualTo(Plan.Result.SOME_STAY);
        assertThat(changed(plan)).containsExactly("/battery/heated");
        assertThat(plan.stays())
                .extracting(s -> s.failure().worst().outcome().rule() + " " + s.why())
                .containsExactlyInAnyOrder("a/advised ADVICE_ONLY", "a/none NO_WAY_OUT");
        assertThat(found.anew().failures(Level.ERROR)).isEqualTo(2);
    }

    @Test
    void a_change_that_brings_another_error_is_taken_with_the_change_that_clears_that_one() {
        Found found = found(
                holdsIf("a/one", LeastPlanTest::heated, HEATED),
                holdsIf("a/two", d -> !heated(d) || drained(d), DRAINED));
        Plan plan = found.overview().plan();
        assertThat(plan.result()).isEqualTo(Plan.Result.FOUND);
        assertThat(changed(plan)).containsExactly("/battery/heated", "/penstock/drained");
        assertThat(found.anew().failures(Level.ERROR)).isZero();
    }

    @Test
    void an_error_of_which_every_change_brings_another_stays_for_that_reason() {
        Found found = found(holdsIf("a/one", LeastPlanTest::heated, HEATED), holdsIf("a/two", d -> !heated(d)));
        Plan plan = found.overview().plan();
        assertThat(plan.steps()).isEmpty();
        assertThat(plan.stays()).extracting(Plan.Staying::why).containsExactly(Plan.Why.BRINGS_ANOTHER);
        assertThat(found.overview().causes()).noneMatch(Cause::isTried);
    }

    @Test
    void an_error_that_becomes_an_open_question_is_not_cleared() {
        Rule asks = rule("a/asks")
                .judge(j -> poles(j.design())
                        ? j.at("/battery").open(null, "who-knows")
                        : j.at("/battery").holds(false))
                .build();
        Found found = found(asks, holdsIf("a/one", LeastPlanTest::poles, POLES));
        Plan plan = found.overview().plan();
        assertThat(plan.result()).isEqualTo(Plan.Result.SOME_STAY);
        assertThat(plan.stays())
                .extracting(s -> s.failure().worst().outcome().rule())
                .containsExactly("a/asks");
        assertThat(plan.openAfter()).isEqualTo(1);
    }

    @Test
    void a_change_that_replaces_what_another_changes_is_not_put_beside_it() {
        Change eight = Change.of("/alternator/pole-pairs", 8);
        Found found = found(
                holdsIf("a/one", LeastPlanTest::poles, POLES),
                holdsIf("a/two", d -> Integer.valueOf(8).equals(d.alternator().polePairs()), eight));
        Plan plan = found.overview().plan();
        assertThat(plan.result()).isEqualTo(Plan.Result.SOME_STAY);
        assertThat(plan.steps()).hasSize(1);
        assertThat(plan.stays()).extracting(Plan.Staying::why).containsExactly(Plan.Why.AGAINST_OTHERS);
        assertThat(found.anew().failures(Level.ERROR)).isEqualTo(1);
    }

    private static final Change TRICKLE = Change.of("/nozzles/open", List.of(Si.quantity(3, "mm", Length.class)));

    private static RuleBuilder wantsTrickle() {
        return rule("a/one")
                .judge(j ->
                        j.at("/battery").holds(Si.of(j.design().nozzles().open().get(0)) < 0.004))
                .wayOut("trickle", "Do it.", (j, failure) -> Stream.of(TRICKLE));
    }

    @Test
    void what_loses_most_of_the_power_is_not_used_where_advice_is_known_and_stays_listed() {
        Found found = found(wantsTrickle()
                .advice("think", "Think.", (j, failure) -> Stream.of(Change.advice()))
                .build());
        Overview overview = found.overview();
        assertThat(overview.plan().steps()).isEmpty();
        assertThat(overview.plan().stays()).extracting(Plan.Staying::why).containsExactly(Plan.Why.LOSES_MOST);
        assertThat(overview.causes()).hasSize(1).noneMatch(Cause::isTried);
        assertThat(overview.plan().stays().get(0).failure().worst().waysOut())
                .anyMatch(way -> way.edits().equals(TRICKLE.edits()));
    }

    @Test
    void what_loses_most_of_the_power_is_used_where_nothing_else_is_known() {
        Found found = found(wantsTrickle().build());
        assertThat(found.overview().plan().steps()).hasSize(1);
        assertThat(found.anew().failures(Level.ERROR)).isZero();
    }

    @Test
    void no_two_changes_of_a_plan_set_one_field() {
        Change both = Change.of(List.of(new Edit("/alternator/pole-pairs", 7), new Edit("/battery/heated", true)));
        Change eight = Change.of("/alternator/pole-pairs", 8);
        Found found = found(holdsIf("a/one", LeastPlanTest::heated, both), holdsIf("a/two", d -> !poles(d), eight));
        List<Step> steps = found.overview().plan().steps();
        for (int i = 1; i < steps.size(); i++) {
            for (Step before : steps.subList(0, i)) {
                assertThat(new AddedItems(Samples.design())
                                .goTogether(
                                        before.way().edits(), steps.get(i).way().edits()))
                        .isTrue();
            }
        }
        assertThat(found.overview().plan().result()).isEqualTo(Plan.Result.SOME_STAY);
    }

    @Test
    void cases_of_one_rule_at_one_element_are_one_failure_with_the_ways_that_hold_for_all() {
        Rule cases = rule("a/cases")
                .judgeAll(LeastPlanTest::twoCases)
                .wayOut("both", "For both.", (j, failure) -> Stream.of(HEATED))
                .wayOut("one", "For one.", (j, failure) -> Stream.of(DRAINED))
                .build();
        GroupedFailure group = found(cases).overview().causes().get(0).clears().get(0);
        assertThat(group.size()).isEqualTo(2);
        assertThat(group.waysForAll()).extracting(w -> w.message().id()).containsExactly("both");
        assertThat(group.onlyForSome()).isFalse();
    }

    @Test
    void where_no_way_holds_for_all_cases_that_is_said() {
        Rule cases = rule("a/cases")
                .judgeAll(LeastPlanTest::twoCases)
                .wayOut("one", "For one.", (j, failure) -> Stream.of(DRAINED))
                .build();
        Found found = found(cases);
        GroupedFailure group = found.overview().causes().get(0).clears().get(0);
        assertThat(group.waysForAll()).isEmpty();
        assertThat(group.onlyForSome()).isTrue();
        assertThat(found.overview().plan().stays())
                .extracting(Plan.Staying::why)
                .containsExactly(Plan.Why.ONLY_FOR_SOME);
    }

    private static List<Outcome> twoCases(Judgement j) {
        boolean heated = heated(j.design());
        return List.of(
                j.at("/battery").during("running/a").holds(heated || drained(j.design())),
                j.at("/battery").during("running/b").holds(heated));
    }

    @Test
    void without_an_error_nothing_is_planned() {
        assertThat(found(holdsIf("a/one", d -> true)).overview().plan().result())
                .isEqualTo(Plan.Result.NOTHING_NEEDED);
    }

    private static Cable run(Place from, Place to, double metres) {
        return CableBuilder.builder()
                .from(from)
                .to(to)
                .length(Si.quantity(metres, "m", Length.class))
                .conductor(ConductorBuilder.builder()
                        .area(Si.quantity(4, "mm²", Area.class))
                        .build())
                .build();
    }

    private static boolean has(Design design, Cable run) {
        return design.cables().contains(run);
    }

    /** Holds where there is a run; its way out adds it behind those that are there. */
    private static Rule wants(String id, Cable run, Predicate<Design> from) {
        return rule(id).judge(j -> j.at("/battery").holds(!from.test(j.design()) || has(j.design(), run)))
                .wayOut("add", "Lay it for " + id + ".", (j, failure) -> {
                    List<Cable> more = new ArrayList<>(j.design().cables());
                    more.add(run);
                    return Stream.of(Change.of("/cables", more));
                })
                .build();
    }

    private static List<String> told(Overview overview) {
        return overview.plan().steps().stream()
                .map(step -> step.of().rule() + " " + step.way().message().id())
                .toList();
    }

    @Test
    void what_two_changes_add_to_a_list_is_told_twice_and_carried_out_together() {
        Cable leads = run(Place.ALTERNATOR, Place.RECTIFIER, 3);
        Cable bus = run(Place.RECTIFIER, Place.BATTERY, 2);
        Found found = found(wants("a/one", leads, d -> true), wants("a/two", bus, d -> true));
        Plan plan = found.overview().plan();
        assertThat(plan.result()).isEqualTo(Plan.Result.FOUND);
        assertThat(told(found.overview())).containsExactly("a/one add", "a/two add");
        assertThat(found.anew().failures(Level.ERROR)).isZero();
        assertThat(edits(plan)).last().satisfies(e -> assertThat(e.value()).isEqualTo(List.of(leads, bus)));
        assertThat(found.overview().causes())
                .extracting(c ->
                        c.clears().stream().map(g -> g.worst().outcome().rule()).toList())
                .containsExactly(List.of("a/one"), List.of("a/two"));
    }

    /** Were the second told alone, whoever carries it out would leave the first away. */
    @Test
    void what_a_changed_design_wants_added_on_top_leaves_the_step_before_it_told() {
        Cable leads = run(Place.ALTERNATOR, Place.RECTIFIER, 3);
        Cable bus = run(Place.RECTIFIER, Place.BATTERY, 2);
        Found found = found(wants("a/one", leads, d -> true), wants("a/then", bus, d -> has(d, leads)));
        assertThat(found.overview().plan().result()).isEqualTo(Plan.Result.FOUND);
        assertThat(told(found.overview())).containsExactly("a/one add", "a/then add");
        assertThat(found.anew().failures(Level.ERROR)).isZero();
    }

    @Test
    void two_that_add_another_thing_in_the_same_place_do_not_go_together() {
        Cable thin = run(Place.ALTERNATOR, Place.RECTIFIER, 3);
        Cable other = run(Place.RECTIFIER, Place.ALTERNATOR, 4);
        Plan plan = found(wants("a/one", thin, d -> true), wants("a/two", other, d -> true))
                .overview()
                .plan();
        assertThat(plan.result()).isEqualTo(Plan.Result.SOME_STAY);
        assertThat(plan.steps()).hasSize(1);
    }
}
