package org.leat.catalogue.tables;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.hydraulics.Filling;
import org.leat.hydraulics.FrazilIce;
import org.leat.hydraulics.RecurringPressure;
import org.leat.hydraulics.Submergence;
import org.leat.hydraulics.VinsonCycles;
import org.leat.law.Answer;
import org.leat.published.PublishedCase;

/** Plastic pipe under heat, cycles and its own weight, and what an intake must stand, against published values. */
class PlasticsPublishedTest {

    private static final double CELSIUS = 273.15;

    static Stream<PublishedCase> cases() {
        return Stream.of("hydraulics-plastics", "hydraulics-intake").flatMap(PublishedCase::of);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void plastics_and_intakes_agree_with_what_is_published(PublishedCase c) {
        String name = c.id().substring(c.id().indexOf('-') + 1);
        c.assertMatches(
                switch (c.family()) {
                    case "cp" -> name.equals("range") ? RecurringPressure.RANGE : RecurringPressure.HIGHEST;
                    case "cprange" -> RecurringPressure.withstands(c.in("p_max"), c.in("p_min"), c.in("PN")) ? 1 : 0;
                    case "pecycle" -> RecurringPressure.POLYETHYLENE;
                    case "pvcus" -> factor(TemperatureTradition.PVC_UNITED_STATES, (c.in("T") - 32) / 1.8);
                    case "pvceu" -> factor(TemperatureTradition.PVC_U_FITTINGS, c.in("T"));
                    case "peen" -> factor(TemperatureTradition.POLYETHYLENE_ISO, c.in("T"));
                    case "peas" -> factor(TemperatureTradition.POLYETHYLENE_AUSTRALIAN, c.in("T"));
                    case "peus" ->
                        name.equals("recurring")
                                ? SurgeAllowance.recurring(PipeMaterial.PE100)
                                : SurgeAllowance.occasional(PipeMaterial.PE100);
                    case "sub" -> Submergence.hydraulicInstitute(c.in("V"), c.in("D"));
                    case "frazil" -> name.equals("air") ? FrazilIce.AIR - CELSIUS : FrazilIce.SUPERCOOLING;
                    case "fill" -> Filling.VELOCITY;
                    case "spanpe" ->
                        SupportSpan.byMaker((int) c.in("sdr"), c.in("dn") / 1000)
                                .get(c.text("maker").equals("a") ? 0 : 1);
                    case "spanpvc" ->
                        SupportSpan.polyvinylChloride(c.in("size") / 1000, c.in("T") + CELSIUS)
                                .orThrow();
                    default -> throw new AssertionError(c.id());
                });
    }

    @Test
    void every_case_of_the_files_is_bound() {
        assertThat(cases()).hasSize(31 + 45);
    }

    private static double factor(TemperatureTradition tradition, double celsius) {
        return TemperatureReduction.factor(tradition, celsius + CELSIUS).orThrow();
    }

    @Test
    void of_two_traditions_the_lower_holds_and_where_one_ends_both_do() {
        List<TemperatureTradition> both =
                List.of(TemperatureTradition.POLYETHYLENE_AUSTRALIAN, TemperatureTradition.POLYETHYLENE_ISO);
        assertThat(TemperatureReduction.lowest(both, 30 + CELSIUS)).isEqualTo(Answer.of(0.87));
        assertThat(TemperatureReduction.lowest(both, 45 + CELSIUS)).isInstanceOf(Answer.Outside.class);
        assertThat(TemperatureReduction.lowest(List.of(), 45 + CELSIUS)).isEqualTo(Answer.of(1));
    }

    @Test
    void joints_lose_strength_as_their_material_does() {
        assertThat(joints(PipeMaterial.PE100, 40)).isCloseTo(0.74, within(1e-9));
        assertThat(joints(PipeMaterial.PE80, 30)).isCloseTo(0.87, within(1e-9));
        assertThat(joints(PipeMaterial.PVC_U, 40)).isCloseTo(0.575, within(1e-9));
        assertThat(joints(PipeMaterial.STEEL, 60)).isEqualTo(1);
        assertThat(TemperatureReduction.joints(PipeMaterial.PVC_U, 60.1 + CELSIUS))
                .isInstanceOf(Answer.Outside.class);
        for (int celsius = 20; celsius <= 45; celsius++) {
            assertThat(joints(PipeMaterial.PVC_U, celsius))
                    .as("fittings govern")
                    .isLessThanOrEqualTo(factor(TemperatureTradition.PVC_U, celsius));
        }
    }

    private static double joints(PipeMaterial material, double celsius) {
        return TemperatureReduction.joints(material, celsius + CELSIUS).orThrow();
    }

    @ParameterizedTest
    @EnumSource(TemperatureTradition.class)
    void no_tradition_gives_a_hot_pipe_more_than_a_cold_one(TemperatureTradition tradition) {
        double before = 1;
        for (double celsius = 0; ; celsius += 0.5) {
            if (!(TemperatureReduction.factor(tradition, celsius + CELSIUS) instanceof Answer.Value v)) {
                assertThat(celsius).isBetween(40.0, 61.0);
                return;
            }
            assertThat(v.value()).isLessThanOrEqualTo(before).isPositive();
            before = v.value();
        }
    }

    @Test
    void a_recurring_pressure_is_judged_by_its_range_and_its_top() {
        assertThat(RecurringPressure.rangeShare(8, 3, 10)).isEqualTo(1);
        assertThat(RecurringPressure.withstands(10, 6, 10)).isTrue();
        assertThat(RecurringPressure.withstands(10.01, 6, 10)).isFalse();
        assertThat(RecurringPressure.withstands(4.2, -0.9, 10)).isFalse();
    }

    @Test
    void fewer_stops_and_less_pressure_lengthen_the_life_of_a_pvc_pipe() {
        double year = 365.25 * 86400;
        double life = VinsonCycles.life(1e6, 21, 100).orThrow();
        assertThat(life / year).isCloseTo(VinsonCycles.toFailure(10e6).orThrow() / 100, within(1e-6 * life / year));
        assertThat(VinsonCycles.life(1e6, 21, 1000).orThrow()).isCloseTo(life / 10, within(1e-6 * life));
        assertThat(VinsonCycles.life(2e6, 21, 100).orThrow() / life).isCloseTo(Math.pow(2, -4.906), within(1e-9));
        assertThat(VinsonCycles.toFailure(35e6).isValue()).isTrue();
        assertThat(VinsonCycles.life(3.6e6, 21, 1)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void of_two_makers_spans_the_shorter_holds_and_between_sizes_the_smaller() {
        assertThat(SupportSpan.polyethylene(11, 0.110)).isEqualTo(Answer.of(1.7));
        assertThat(SupportSpan.polyethylene(11, 0.075)).isEqualTo(SupportSpan.polyethylene(11, 0.063));
        assertThat(SupportSpan.polyethylene(11, 0.031)).isInstanceOf(Answer.Outside.class);
        assertThat(SupportSpan.polyethylene(11, 0.111)).isInstanceOf(Answer.Outside.class);
        assertThat(SupportSpan.polyethylene(17, 0.050)).isInstanceOf(Answer.Outside.class);
        assertThat(SupportSpan.polyethylene(26, 0.063)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void warm_pipe_has_the_span_of_the_next_warmer_column_and_hot_pipe_none() {
        assertThat(SupportSpan.polyvinylChloride(0.05, 20 + CELSIUS))
                .isEqualTo(SupportSpan.polyvinylChloride(0.05, 27 + CELSIUS));
        assertThat(SupportSpan.polyvinylChloride(0.05, -20 + CELSIUS)).isEqualTo(Answer.of(2.1));
        assertThat(SupportSpan.polyvinylChloride(0.05, 38.1 + CELSIUS)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void filling_is_slow_and_frazil_needs_hard_frost() {
        assertThat(Filling.leastTime(300)).isCloseTo(1000, within(1e-9));
        assertThat(Filling.greatestFlow(0.1)).isCloseTo(0.3 * Math.PI / 400, within(1e-12));
        assertThat(FrazilIce.possible(267)).isTrue();
        assertThat(FrazilIce.possible(267.15)).isTrue();
        assertThat(FrazilIce.possible(267.2)).isFalse();
    }
}
