package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.law.Gravity;

/** Laws that the rest of the model asks, and that had no test beside them, worked by hand. */
class UnaskedLawsTest {

    private static final double BORE = 0.08;

    /** Weibull: of nine flows rank m is exceeded in m/10 of the time. */
    @Test
    void a_flow_of_rank_m_of_n_is_exceeded_in_m_over_n_plus_one_of_the_time() {
        double[] falling = {90, 70, 50, 40, 30, 22, 14, 8, 2};
        for (int m = 1; m <= 9; m++) {
            assertThat(FlowDurationCurve.exceeded(falling, m / 10.0)).isCloseTo(falling[m - 1], within(1e-9));
        }
        assertThat(FlowDurationCurve.exceeded(falling, 0.175)).isCloseTo(75, within(1e-9));
        assertThat(FlowDurationCurve.exceeded(falling, 0.825)).isCloseTo(6.5, within(1e-9));
        assertThat(FlowDurationCurve.exceeded(falling, 0)).isEqualTo(90);
        assertThat(FlowDurationCurve.exceeded(falling, 0.05)).isEqualTo(90);
        assertThat(FlowDurationCurve.exceeded(falling, 0.97)).isEqualTo(2);
        assertThat(FlowDurationCurve.exceeded(falling, 1)).isEqualTo(2);
        assertThat(FlowDurationCurve.exceeded(new double[] {5}, 0.5)).isEqualTo(5);
    }

    @Test
    void no_flows_or_no_share_of_the_time_is_refused() {
        for (double share : new double[] {-1e-9, 1 + 1e-9, Double.NaN}) {
            assertThatThrownBy(() -> FlowDurationCurve.exceeded(new double[] {3, 2}, share))
                    .isInstanceOf(IllegalArgumentException.class);
        }
        assertThatThrownBy(() -> FlowDurationCurve.exceeded(new double[0], 0.5))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void openings_are_equal_by_times_and_areas() {
        NozzleOpening opening = NozzleOpening.linear(1, 0.5, 3);
        assertThat(opening)
                .isEqualTo(NozzleOpening.table(new double[] {0, 3}, new double[] {1, 0.5}))
                .hasSameHashCodeAs(NozzleOpening.table(new double[] {0, 3}, new double[] {1, 0.5}))
                .isNotEqualTo(NozzleOpening.linear(1, 0.5, 4))
                .isNotEqualTo(NozzleOpening.linear(1, 0.4, 3))
                .isNotEqualTo("1 to 0.5 in 3 s");
        assertThat(opening.hashCode())
                .isNotEqualTo(NozzleOpening.linear(1, 0.5, 4).hashCode());
    }

    @Test
    void a_quarter_turn_goes_from_open_to_shut() {
        assertThat(BallValveLoss.open(0, 45, 82.5, 90)).containsExactly(1, 0.5, 1 - 82.5 / 90, 0);
    }

    @Test
    void an_instant_opening_lowers_the_head_by_joukowsky() {
        assertThat(LinePacking.lowestHead(60, 1000, 0.5)).isCloseTo(60 - 1000 * 0.5 / Gravity.STANDARD, within(1e-9));
    }

    @Test
    void a_run_looked_at_early_is_the_run_that_ends_there() {
        SurgeLine line = new SurgeLine(List.of(new SurgeSection(400, BORE, 310, 0.02, 0, 0)), 60);
        LowerEnd end = new LowerEnd.Nozzles(NozzleOpening.linear(1, 0, 6));
        Characteristics.Runs runs = Characteristics.runs(line, 0.0035, new UpperEnd.Open(), end, 40, 1, 12);
        HeadEnvelope early = Characteristics.run(line, 0.0035, new UpperEnd.Open(), end, 40, 1);
        HeadEnvelope whole = Characteristics.run(line, 0.0035, new UpperEnd.Open(), end, 40, 12);
        assertThat(runs.whole().highestAt(0, 1)).isEqualTo(whole.highestAt(0, 1));
        assertThat(runs.whole().lowestAt(0, 1)).isEqualTo(whole.lowestAt(0, 1));
        assertThat(runs.early().highestAt(0, 1))
                .isEqualTo(early.highestAt(0, 1))
                .isLessThan(whole.highestAt(0, 1));
    }

    @Test
    void a_line_is_whole_where_every_end_of_every_section_stands_above_boiling() {
        SurgeSection down = new SurgeSection(50, BORE, 1000, 0.02, 5, 0);
        SurgeSection top = new SurgeSection(50, BORE, 1000, 0.02, 21, 5);
        SurgeSection rising = new SurgeSection(50, BORE, 1000, 0.02, 5, 21);
        assertThat(RejoiningColumn.wholeBefore(new SurgeLine(List.of(down), 10), 0.001, -10))
                .isTrue();
        assertThat(RejoiningColumn.wholeBefore(new SurgeLine(List.of(top, down), 10), 0.001, -10))
                .isFalse();
        assertThat(RejoiningColumn.wholeBefore(new SurgeLine(List.of(down, rising), 10), 0.001, -10))
                .isFalse();
        double lost = down.resistance() * 0.004 * 0.004;
        SurgeLine two = new SurgeLine(List.of(down, new SurgeSection(50, BORE, 1000, 0, 0, 19.9)), 10);
        assertThat(lost).isGreaterThan(0.11);
        assertThat(RejoiningColumn.wholeBefore(two, 1e-6, -10)).isTrue();
        assertThat(RejoiningColumn.wholeBefore(two, 0.004, -10))
                .as("after its loss")
                .isFalse();
    }

    /** Two readings 1 apart: s = 1/√2, t(0.975, 1) = 12.706 (tables of Student's distribution), half-width t/2. */
    @Test
    void the_half_width_of_a_mean_of_two_readings_is_student_s() {
        Estimate estimate = StudentT.mean(7, 8);
        assertThat(estimate.value()).isEqualTo(7.5);
        assertThat(estimate.plusMinus().orElseThrow()).isCloseTo(12.706 / 2, within(1e-3));
    }

    /** Readings 3, 5, 10 about their mean of 6: s² = (9 + 1 + 16)/2 = 13, t(0.975, 2) = 4.3027 (the same tables). */
    @Test
    void the_half_width_of_a_mean_of_three_readings_is_t_times_s_over_root_three() {
        Estimate estimate = StudentT.mean(3, 5, 10);
        assertThat(estimate.value()).isEqualTo(6);
        assertThat(estimate.plusMinus().orElseThrow()).isCloseTo(4.3027 * Math.sqrt(13.0 / 3), within(1e-3));
    }

    /** As the nozzle's Javadoc and handbooks have them: a sharp hole contracts, a tube that runs full does not. */
    @Test
    void a_sharp_hole_contracts_and_a_short_tube_runs_full() {
        assertThat(NozzleKind.SHARP_HOLE.contractionCoefficient()).isEqualTo(0.62);
        assertThat(NozzleKind.SHORT_TUBE.contractionCoefficient()).isEqualTo(1);
        assertThat(NozzleKind.SHORT_TUBE.dischargeCoefficient()).isEqualTo(0.82);
    }

    @Test
    void a_wall_is_at_most_half_the_outside_diameter() {
        assertThat(HeldThermalForce.greatest(800e6, 1.8e-4, 10, 0.06, 0.03))
                .as("a solid rod")
                .isCloseTo(800e6 * 1.8e-4 * 10 * Math.PI / 4 * 0.06 * 0.06, within(1e-6));
        assertThatThrownBy(() -> HeldThermalForce.greatest(800e6, 1.8e-4, 10, 0.06, 0.031))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("wall");
    }
}
