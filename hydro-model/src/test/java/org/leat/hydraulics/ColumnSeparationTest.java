package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.law.Answer;

/** The closed form of the blow of a parted column, against waves followed exactly by other means. */
class ColumnSeparationTest {

    /** Steps in which the wave returns. */
    private static final int RETURN = 400;

    /**
     * Heads at the closed end of a level pipe without friction, by what returns from the tank one return time later: heads above
     * boiling in units of tank level above boiling, flows in units of head. Exact but for the moment a cavity closes.
     *
     * @return highest head of the first blow after a cavity has closed, and of the whole run
     */
    private static double[] exact(double m, int periods) {
        double[] returning = new double[RETURN];
        Arrays.fill(returning, 1 + m);
        double cavity = 0;
        double highest = 0;
        double afterFirst = 0;
        int closed = 0;
        for (int step = 0; step < 2 * periods * RETURN; step++) {
            double arriving = returning[step % RETURN];
            boolean parted = cavity > 0 || arriving < 0;
            double rest = parted ? Math.max(0, cavity - arriving) : 0;
            boolean boils = parted && rest > 0;
            closed += cavity > 0 && !boils ? 1 : 0;
            cavity = rest;
            double head = boils ? 0 : arriving;
            double flow = boils ? arriving : 0;
            highest = Math.max(highest, head);
            afterFirst = closed == 1 ? Math.max(afterFirst, head) : afterFirst;
            returning[step % RETURN] = 2 - (head - flow);
        }
        return new double[] {afterFirst, highest};
    }

    @Property(tries = 200)
    void the_blow_after_the_first_cavity_is_that_of_exact_waves(@ForAll @DoubleRange(min = 1.02, max = 4.9) double m) {
        double ours = ColumnSeparation.afterFirstCavity(1, m, 0).orThrow();
        double nearInteger = Math.abs(m - Math.rint(m));
        if (nearInteger > 0.02) {
            assertThat(exact(m, (int) m + 3)[0]).isCloseTo(ours, within(1e-9));
        }
    }

    @Property(tries = 200)
    void no_blow_of_forty_periods_exceeds_the_bound(@ForAll @DoubleRange(min = 0, max = 2) double m) {
        assertThat(exact(m, 40)[1])
                .isLessThanOrEqualTo(ColumnSeparation.bound(1, m, 0).orThrow() + 1e-9);
    }

    @Test
    void above_twice_the_head_pulses_go_on_adding_so_there_is_no_bound() {
        assertThat(exact(2.5, 40)[1]).as("forty periods").isGreaterThan(10);
        assertThat(ColumnSeparation.bound(1, 2.5, 0))
                .isEqualTo(Answer.outside(
                        "bound of all blows of a parted column", "surge over least head", 2.5, 0, 2, "1"));
        assertThat(ColumnSeparation.bound(1, 2, 0)).isEqualTo(Answer.of(5));
    }

    @Test
    void a_column_that_does_not_part_has_no_second_blow() {
        assertThat(ColumnSeparation.afterFirstCavity(50, 60, -10).isValue()).isFalse();
        assertThat(ColumnSeparation.afterFirstCavity(50, 60.001, -10).isValue()).isTrue();
        assertThat(ColumnSeparation.bound(50, 60, -10)).isEqualTo(Answer.of(110));
    }

    @Test
    void on_a_slope_the_least_head_along_the_line_decides_whether_it_parts() {
        assertThat(ColumnSeparation.onSlope(50, 10, -10, 11)).isEqualTo(Answer.of(60));
        assertThat(ColumnSeparation.onSlope(50, 20, -10, 11)).isEqualTo(Answer.of(190));
        assertThat(ColumnSeparation.onSlope(50, 30, -10, 11).isValue()).isFalse();
    }

    @Property
    void the_unit_of_head_does_not_matter(
            @ForAll @DoubleRange(min = 0.5, max = 4) double m, @ForAll @DoubleRange(min = 0.1, max = 10) double unit) {
        double head = 47;
        double boiling = -9.8;
        double surge = m * (head - boiling);
        Answer plain = ColumnSeparation.afterFirstCavity(head, surge, boiling);
        Answer scaled = ColumnSeparation.afterFirstCavity(head * unit, surge * unit, boiling * unit);
        if (plain instanceof Answer.Value p && scaled instanceof Answer.Value s && m % 1 > 1e-6 && m % 1 < 1 - 1e-6) {
            assertThat(s.value() / unit).isCloseTo(p.value(), within(1e-9));
        }
    }
}
