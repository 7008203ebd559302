package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.hydraulics.SurgeLine;
import org.leat.hydraulics.SurgeResult;
import org.leat.hydraulics.SurgeSection;
import org.leat.hydraulics.SurgeStudy;

/** What docs/physics/transients.md says of a valve whose area falls evenly, against the closed form beside it. */
class SlowClosingTest {

    private static final double HEAD = 20;
    private static final double WAVE_SPEED = 1200;
    private static final double BORE = 0.08;

    /** Rise over that of the closed form, for a number a V0/(2 g H) and a closing time in return times. */
    private static double rise(double number, double returnTimes, double frictionFactor) {
        double velocity = number * 2 * 9.80665 * HEAD / WAVE_SPEED;
        SurgeSection pipe = new SurgeSection(60, BORE, WAVE_SPEED, frictionFactor, 15, 0);
        SurgeLine line = new SurgeLine(List.of(pipe), HEAD);
        SurgeResult shut = SurgeStudy.shut(line, velocity * pipe.area(), returnTimes * line.returnTime());
        return (shut.highestHead() - HEAD) / (shut.closedFormHead() - HEAD);
    }

    @Property(tries = 60)
    void slow_water_in_a_soft_pipe_stays_below_the_closed_form(
            @ForAll @DoubleRange(min = 0.2, max = 1) double number,
            @ForAll @DoubleRange(min = 1.01, max = 10) double returnTimes,
            @ForAll @DoubleRange(min = 0, max = 0.03) double frictionFactor) {
        assertThat(rise(number, returnTimes, frictionFactor)).isBetween(0.0, 1.0);
    }

    @Test
    void fast_water_in_a_stiff_pipe_exceeds_it() {
        assertThat(rise(3, 1.5, 0.02)).isBetween(1.12, 1.15);
        assertThat(rise(5, 2, 0.02)).isBetween(1.34, 1.38);
        assertThat(rise(5, 5, 0.02)).isLessThan(1);
    }
}
