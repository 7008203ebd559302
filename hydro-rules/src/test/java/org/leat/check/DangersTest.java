package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.file.Position;
import org.leat.quantity.QuantityKind;

/** What is worse after a change, case by case and level by level. */
class DangersTest {

    private static Outcome fail(String during, Level level, double value) {
        return new Outcome.Fail(
                new Identity("a/b", "/x", during),
                level,
                Comparison.atMost(value, 10, QuantityKind.PRESSURE),
                Message.of("no"));
    }

    private static Outcome pass(String during) {
        return new Outcome.Pass(new Identity("a/b", "/x", during), Level.ERROR, null, Message.of("yes"));
    }

    private static Outcome open(String during) {
        return new Outcome.Open(new Identity("a/b", "/x", during), Level.ERROR, null, Message.of("open"), null);
    }

    private static Report report(Outcome... outcomes) {
        List<Finding> findings = List.of(outcomes).stream()
                .map(o -> Finding.of(o, new Position("f", 1, 1, 1, 2))
                        .known(o.identity(), o.kind().needsAttention() && o.level() == Level.ERROR))
                .toList();
        return Report.of(new Report.Subject("f", "d", ""), findings, Report.SolvedPlant.NOTHING, List.of());
    }

    private static boolean worse(Report before, Report after) {
        return Dangers.worse(before, after).isPresent();
    }

    @Test
    void what_goes_further_beyond_its_limit_is_worse() {
        assertThat(worse(report(fail("c", Level.ERROR, 12)), report(fail("c", Level.ERROR, 14))))
                .isTrue();
        assertThat(worse(report(fail("c", Level.ERROR, 12)), report(fail("c", Level.ERROR, 12.05))))
                .isFalse();
        assertThat(worse(report(fail("c", Level.ERROR, 14)), report(fail("c", Level.ERROR, 12))))
                .isFalse();
    }

    @Test
    void what_begins_to_fail_or_can_no_longer_be_judged_is_worse() {
        assertThat(worse(report(pass("c")), report(fail("c", Level.ERROR, 12)))).isTrue();
        assertThat(worse(report(pass("c")), report(open("c")))).isTrue();
        assertThat(worse(report(open("c")), report(fail("c", Level.ERROR, 12)))).isTrue();
        assertThat(worse(report(fail("c", Level.ERROR, 12)), report(open("c")))).isFalse();
        assertThat(worse(report(pass("c")), report(fail("c", Level.WARNING, 12))))
                .isFalse();
    }

    @Test
    void two_new_errors_beside_an_old_one_are_worse_although_the_rule_failed_before() {
        Report after = report(fail("c", Level.ERROR, 12), fail("d", Level.ERROR, 12), fail("e", Level.ERROR, 12));
        assertThat(worse(report(fail("c", Level.ERROR, 12), pass("d"), pass("e")), after))
                .isTrue();
    }

    @Test
    void of_the_same_cases_each_is_compared_with_itself_and_renamed_ones_are_counted() {
        Failures before = Failures.of(List.of(fail("c", Level.ERROR, 12), pass("d")));
        Failures other = Failures.of(List.of(pass("c"), fail("d", Level.ERROR, 12)));
        assertThat(other.worseThan(before, Level.ERROR)).contains("a/b");
        Failures renamed = Failures.of(List.of(pass("g"), fail("h", Level.ERROR, 12)));
        assertThat(renamed.worseThan(before, Level.ERROR)).isEmpty();
    }

    @Test
    void a_failure_that_was_milder_before_is_worse() {
        Failures before = Failures.of(List.of(fail("c", Level.WARNING, 12)));
        Failures after = Failures.of(List.of(fail("c", Level.ERROR, 12)));
        assertThat(after.worseThan(before, Level.WARNING)).contains("a/b");
        assertThat(before.worseThan(after, Level.WARNING)).isEmpty();
    }
}
