package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.law.Answer;
import org.leat.published.PublishedCase;

/** Air that must enter a pipe, against published values. */
class AirPublishedTest {

    private static final double PRESSURE = 101_325;
    private static final double DENSITY = 1.204;

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-air");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void air_agrees_with_what_is_published(PublishedCase c) {
        c.assertMatches(
                switch (c.family()) {
                    case "airu" ->
                        AirInflow.perArea(c.in("dp"), c.in("C"), c.in("p"), c.in("rho"))
                                .orThrow();
                    case "aird" ->
                        AirInflow.leastBore(c.in("Q") / 1000, c.in("dp"), c.in("C"), PRESSURE, DENSITY)
                                        .orThrow()
                                * 1000;
                    case "airdp" ->
                        (c.id().endsWith("fill") ? AirInflow.FILLING_DROP : AirInflow.DRAINING_DROP) / 6894.757293168;
                    case "burst" -> BurstFlow.of(c.in("C"), c.in("S"), c.in("D") * 0.0254) * 1000;
                    default -> throw new AssertionError(c.id());
                });
    }

    @Test
    void every_case_of_the_file_is_bound() {
        assertThat(cases()).hasSize(17);
    }

    @Property
    void a_small_drop_is_that_of_water_and_no_drop_is_kinder_than_that(
            @ForAll @DoubleRange(min = 1, max = 48_000) double drop) {
        double incompressible = AirInflow.SHARP * Math.sqrt(2 * drop / DENSITY);
        Answer air = AirInflow.perArea(drop, AirInflow.SHARP, PRESSURE, DENSITY);
        if (air instanceof Answer.Value v) {
            assertThat(v.value()).isLessThanOrEqualTo(incompressible * (1 + 1e-9));
            assertThat(v.value()).isGreaterThan(incompressible * (1 - drop / PRESSURE));
        } else {
            assertThat(drop).isGreaterThan(47_500);
        }
    }

    @Test
    void a_choked_vent_has_no_answer() {
        double critical = PRESSURE * (1 - Math.pow(2 / 2.4, 3.5));
        assertThat(AirInflow.perArea(critical * 0.9999, 0.6, PRESSURE, DENSITY).isValue())
                .isTrue();
        assertThat(AirInflow.perArea(critical * 1.0001, 0.6, PRESSURE, DENSITY)).isInstanceOf(Answer.Outside.class);
        assertThat(AirInflow.leastBore(0.005, critical * 1.0001, 0.6, PRESSURE, DENSITY))
                .isInstanceOf(Answer.Outside.class);
        assertThat(AirInflow.leastBore(0.005, 0, 0.6, PRESSURE, DENSITY)).isInstanceOf(Answer.Outside.class);
        assertThat(AirInflow.perArea(0, 0.6, PRESSURE, DENSITY)).isEqualTo(Answer.of(0));
        assertThat(AirInflow.drop(0.005, 0.001, 0.6, PRESSURE, DENSITY)).isInstanceOf(Answer.Outside.class);
    }

    @Property
    void the_bore_for_a_drop_has_that_drop(
            @ForAll @DoubleRange(min = 0.1, max = 30) double litres,
            @ForAll @DoubleRange(min = 100, max = 40_000) double drop) {
        double bore =
                AirInflow.leastBore(litres / 1000, drop, 0.6, PRESSURE, DENSITY).orThrow();
        assertThat(AirInflow.drop(litres / 1000, bore, 0.6, PRESSURE, DENSITY).orThrow())
                .isCloseTo(drop, within(1e-3));
    }

    @Test
    void vents_are_bought_in_sizes() {
        assertThat(VentSizes.all()).isSorted().hasSize(13);
        assertThat(VentSizes.atLeast(0.0261)).isEqualTo(Answer.of(0.032));
        assertThat(VentSizes.atLeast(0.025)).isEqualTo(Answer.of(0.025));
        assertThat(VentSizes.atLeast(0)).isEqualTo(Answer.of(0.008));
        assertThat(VentSizes.atLeast(0.1501)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void a_burst_line_runs_about_as_darcy_says() {
        double bore = 0.1016;
        double darcy = Math.PI / 4 * bore * bore * Math.sqrt(2 * 9.80665 * bore * 0.1 / 0.02);
        assertThat(BurstFlow.of(BurstFlow.USUAL, 0.1, bore)).isBetween(0.95 * darcy, darcy);
        assertThatThrownBy(() -> BurstFlow.of(110, 0, bore)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> BurstFlow.of(110, 1.01, bore)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void a_cone_between_a_step_and_nothing() {
        double sudden = LossCoefficient.gradualEnlargement(0.05, 0.08, Math.PI).orThrow();
        assertThat(sudden).isEqualTo(LossCoefficient.suddenEnlargement(0.05 * 0.05 / (0.08 * 0.08), 1));
        assertThat(LossCoefficient.gradualEnlargement(0.05, 0.08, Math.toRadians(45))
                        .orThrow())
                .isCloseTo(2.6 * Math.sin(Math.toRadians(22.5)) * sudden, within(1e-12))
                .isLessThan(sudden);
        assertThat(LossCoefficient.gradualEnlargement(0.05, 0.08, Math.toRadians(45.1))
                        .orThrow())
                .isEqualTo(sudden);
        assertThat(LossCoefficient.gradualEnlargement(0.05, 0.08, 0)).isEqualTo(Answer.of(0));
        assertThat(LossCoefficient.gradualEnlargement(0.05, 0.05, 1).orThrow()).isZero();
        assertThat(LossCoefficient.gradualEnlargement(0.05, 0.08, -0.01)).isInstanceOf(Answer.Outside.class);
        assertThat(LossCoefficient.gradualEnlargement(0.05, 0.08, 3.15)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void two_ways_of_adding_verticals_differ_by_a_ninth_on_four_and_agree_on_many() {
        assertThat(MeanSection.flow(
                        new double[] {0, 1, 2, 3}, new double[] {0, 0.3, 0.3, 0}, new double[] {0, 0.5, 0.5, 0}))
                .isCloseTo((0.15 * 0.25) * 2 + 0.3 * 0.5, within(1e-12));
        double[] difference = new double[2];
        for (int round = 0; round < 2; round++) {
            int n = round == 0 ? 4 : 21;
            double[] x = new double[n];
            double[] d = new double[n];
            double[] v = new double[n];
            for (int i = 0; i < n; i++) {
                x[i] = 3.0 * i / (n - 1);
                d[i] = 0.4 * (1 - Math.pow(2 * x[i] / 3 - 1, 2));
                v[i] = d[i];
            }
            difference[round] = 1 - MeanSection.flow(x, d, v) / MidSection.flow(x, d, v);
        }
        assertThat(difference[0]).isBetween(0.1, 0.3);
        assertThat(difference[1]).isBetween(0.0, 0.01);
        assertThatThrownBy(() -> MeanSection.flow(new double[1], new double[1], new double[1]))
                .hasMessageContaining("at least two");
        assertThatThrownBy(() -> MeanSection.flow(new double[2], new double[3], new double[2]))
                .hasMessageContaining("at least two");
        assertThatThrownBy(() -> MeanSection.flow(new double[2], new double[2], new double[3]))
                .hasMessageContaining("at least two");
    }
}
