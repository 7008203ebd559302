package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Change.Changes;

/** How the changes of a way out are tried. */
class DeclaredWayTest {

    private static final String CELLS = "/battery/cells-in-series";

    private static long cells(Judgement j) {
        return Objects.requireNonNull(j.design().battery()).cellsInSeries();
    }

    private static Change to(int cells) {
        return Change.of(CELLS, cells).with("cells", cells);
    }

    /** From eight cells on: nine, ten and so on. */
    private static Stream<Change> more(int count) {
        return IntStream.rangeClosed(9, 8 + count).mapToObj(DeclaredWayTest::to);
    }

    private static List<WayOut> ways(Rule rule) {
        Judgement j = Judgement.of(rule, Samples.design());
        Outcome.Fail failure = (Outcome.Fail) rule.judge(j).get(0);
        return rule.waysOut(j, failure);
    }

    private static RuleBuilder rule(Function<Judgement, List<Outcome>> judging) {
        return MadeRule.card("made/way", Level.WARNING, Level.WARNING).judgeAll(judging);
    }

    private static RuleBuilder atLeast(long cells) {
        return rule(j -> List.of(j.at("/battery").holds(cells(j) >= cells)));
    }

    private static List<Object> said(List<WayOut> ways) {
        return ways.stream().map(way -> way.edits().get(0).value()).toList();
    }

    @ParameterizedTest
    @CsvSource({"1, 9", "1, 1", "2, 9", "2, 10", "3, 9", "3, 10", "3, 11", "4, 12", "7, 9", "7, 13", "7, 15"})
    void the_least_of_any_number_of_changes_that_helps_is_found(int count, int needed) {
        int wanted = Math.max(9, needed);
        List<WayOut> ways = ways(atLeast(wanted)
                .leastWayOut("more", "More: {cells}.", (j, failure) -> more(count))
                .build());
        assertThat(said(ways)).containsExactly(wanted);
        assertThat(ways.get(0).message().args()).containsExactly(Arg.of("cells", wanted));
    }

    @Test
    void where_the_greatest_does_not_help_there_is_none_and_what_is_instead_is_tried() {
        assertThat(ways(atLeast(20)
                        .leastWayOut("more", "More: {cells}.", (j, failure) -> more(7))
                        .build()))
                .isEmpty();
        assertThat(ways(atLeast(20)
                        .leastWayOut("more", "More: {cells}.", (j, failure) -> Stream.of())
                        .build()))
                .isEmpty();
        assertThat(said(ways(atLeast(20)
                        .leastWayOut("more", "More: {cells}.", (j, failure) -> more(7), (j, failure) -> more(14))
                        .build())))
                .containsExactly(20);
    }

    @Test
    void a_way_out_that_is_sized_by_what_is_not_told_is_none_and_the_others_stand() {
        assertThat(said(ways(atLeast(9)
                        .leastWayOut(
                                "asked",
                                "As many as strings: {cells}.",
                                (j, failure) -> Stream.of(to(j.at("/battery")
                                        .given(
                                                "/battery/strings",
                                                j.design().battery().strings()))))
                        .leastWayOut("more", "More: {cells}.", (j, failure) -> more(3))
                        .build())))
                .containsExactly(9);
    }

    @Test
    void halving_judges_no_more_than_it_must() {
        List<Long> judged = new ArrayList<>();
        Rule rule = rule(j -> {
                    judged.add(cells(j));
                    return List.of(j.at("/battery").holds(cells(j) >= 11));
                })
                .leastWayOut("more", "More: {cells}.", (j, failure) -> more(64))
                .build();
        Judgement j = Judgement.of(rule, Samples.design());
        Outcome.Fail failure = (Outcome.Fail) rule.judge(j).get(0);
        judged.clear();
        assertThat(said(rule.waysOut(j, failure))).containsExactly(11);
        assertThat(judged.stream().filter(cells -> cells != 8)).hasSizeLessThanOrEqualTo(7);
    }

    @Test
    void of_ways_in_a_row_the_first_that_helps_is_offered() {
        assertThat(said(ways(atLeast(10)
                        .wayOut("other", "Other.", (j, failure) -> Stream.of(to(9), to(12), to(10)))
                        .build())))
                .containsExactly(12);
    }

    @Test
    void what_changes_nothing_or_can_never_be_or_is_of_no_use_is_no_way_out() {
        assertThat(said(ways(atLeast(10)
                        .wayOut(
                                "other",
                                "Other.",
                                (j, failure) -> Stream.of(
                                        Change.advice(), to(-3), to(11).onlyIf(changed -> cells(changed) > 11), to(12)))
                        .build())))
                .containsExactly(12);
    }

    @Test
    void a_change_that_makes_the_rule_fail_elsewhere_does_not_help_and_one_that_leaves_a_known_failure_does() {
        Function<Judgement, List<Outcome>> elsewhere = j ->
                List.of(j.at("/battery").holds(cells(j) >= 10), j.at("/nozzles").holds(cells(j) != 12));
        assertThat(said(ways(rule(elsewhere)
                        .wayOut("other", "Other.", (j, failure) -> Stream.of(to(12), to(13)))
                        .build())))
                .containsExactly(13);
        Function<Judgement, List<Outcome>> known = j ->
                List.of(j.at("/battery").holds(cells(j) >= 10), j.at("/nozzles").holds(false));
        assertThat(said(ways(rule(known)
                        .wayOut("other", "Other.", (j, failure) -> Stream.of(to(9), to(12)))
                        .build())))
                .containsExactly(12);
    }

    @Test
    void a_change_after_which_nobody_can_say_does_not_help() {
        Function<Judgement, List<Outcome>> open = j -> List.of(
                cells(j) == 12
                        ? j.at("/battery").notGiven("/battery/capacity")
                        : j.at("/battery").holds(cells(j) >= 10));
        assertThat(said(ways(rule(open)
                        .wayOut("other", "Other.", (j, failure) -> Stream.of(to(12), to(13)))
                        .build())))
                .containsExactly(13);
    }

    @Test
    void last_advice_is_given_where_nothing_helped_and_advice_always() {
        Changes helps = (j, failure) -> Stream.of(to(10));
        Changes doesNot = (j, failure) -> Stream.of(to(9));
        Changes advice = (j, failure) -> Stream.of(Change.advice());
        assertThat(texts(ways(atLeast(10)
                        .wayOut("other", "Other.", helps)
                        .advice("always", "Always.", advice)
                        .lastAdvice("last", "Last.", advice)
                        .build())))
                .containsExactly("other", "always");
        assertThat(texts(ways(atLeast(10)
                        .wayOut("other", "Other.", doesNot)
                        .lastAdvice("last", "Last.", advice)
                        .build())))
                .containsExactly("last");
        assertThat(ways(atLeast(10)
                        .advice("always", "Always.", (j, failure) -> Stream.of())
                        .build()))
                .isEmpty();
    }

    private static List<String> texts(List<WayOut> ways) {
        return ways.stream().map(way -> way.message().id()).toList();
    }
}
