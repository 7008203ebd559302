package org.leat.turbine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.tables.PlausibleRange;
import org.leat.catalogue.tables.SpecificSpeedRange;
import org.leat.law.Gravity;
import org.leat.published.PublishedCase;

/** Specific speeds, their units and usual ranges against published values; what a number may be at all. */
class PublishedSpecificSpeedTest {

    private static final double RPM = Math.PI / 30;

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-specific-speed");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void specific_speed_agrees_with_what_is_published(PublishedCase c) {
        switch (c.family()) {
            case "nshp" -> c.assertMatches(SpecificSpeed.METRIC_HORSEPOWER);
            case "nsjet" ->
                c.assertMatches(SpecificSpeed.ofProportions(c.in("D_over_d"), 1) * SpecificSpeed.METRIC_HORSEPOWER);
            case "nsus" -> range(c, "impulse", "ns-us");
            case "nqe" -> range(c, c.text("kind"), "nQE");
            case "nskw" -> range(c, c.text("kind"), "ns");
            case "specns" -> c.assertMatches(SpecificSpeed.ofPower(speed(c), c.in("P") * 1000, c.in("H")));
            case "specnq" -> c.assertMatches(SpecificSpeed.ofFlow(speed(c), c.in("Q") / 1000, c.in("H")));
            case "specnqe" -> c.assertMatches(SpecificSpeed.dimensionless(speed(c), c.in("Q") / 1000, c.in("H")));
            default -> throw new AssertionError(c.id());
        }
    }

    @Test
    void every_case_of_the_file_is_bound() {
        assertThat(cases()).hasSize(24);
    }

    private static double speed(PublishedCase c) {
        return c.in("n") * RPM;
    }

    private static void range(PublishedCase c, String kind, String measure) {
        SpecificSpeedRange range = SpecificSpeedRange.find(kind, measure).orElseThrow();
        c.assertMatches("low", range.low());
        c.assertMatches("high", range.high());
        assertThat(range.holds(range.low()) && range.holds(range.high())).isTrue();
        assertThat(range.holds(range.low() * 0.99) || range.holds(range.high() * 1.01))
                .isFalse();
    }

    @Test
    void units_of_specific_speed_turn_into_each_other() {
        double nq = SpecificSpeed.ofFlow(157, 0.003, 50);
        assertThat(nq / SpecificSpeed.dimensionless(157, 0.003, 50))
                .isCloseTo(60 * Math.pow(Gravity.STANDARD, 0.75), within(1e-6));
        assertThat(SpecificSpeed.UNITED_STATES).isCloseTo(3.81, within(0.01));
        assertThat(SpecificSpeed.ofProportions(10, 4)).isCloseTo(2 * SpecificSpeed.ofProportions(10, 1), within(1e-9));
    }

    @ParameterizedTest
    @EnumSource(RunnerType.class)
    void the_range_of_a_runner_lies_near_that_of_the_tables(RunnerType type) {
        // nq of one jet; the table's nQE is of one jet too, in 1/s: 332.5 nQE = nq
        double low =
                332.5 * SpecificSpeedRange.find("pelton-1", "nQE").orElseThrow().low();
        assertThat(type.specificSpeed().low()).isGreaterThanOrEqualTo(low);
    }

    @Test
    void every_plausible_range_lies_within_what_can_be_meant_and_names_its_source() {
        assertThat(PlausibleRange.all()).hasSizeGreaterThan(20).allSatisfy(r -> {
            assertThat(r.absurdLow()).isLessThanOrEqualTo(r.oddLow());
            assertThat(r.oddLow()).isLessThan(r.oddHigh());
            assertThat(r.oddHigh()).isLessThanOrEqualTo(r.absurdHigh());
            assertThat(r.source()).isNotBlank();
            assertThat(r.of(r.oddLow())).isEqualTo(PlausibleRange.Verdict.USUAL);
            assertThat(r.of(r.oddHigh())).isEqualTo(PlausibleRange.Verdict.USUAL);
            assertThat(r.of(Math.nextDown(r.absurdLow()))).isEqualTo(PlausibleRange.Verdict.ABSURD);
            assertThat(r.of(Math.nextUp(r.absurdHigh()))).isEqualTo(PlausibleRange.Verdict.ABSURD);
            assertThat(r.of(Double.NaN)).isEqualTo(PlausibleRange.Verdict.ABSURD);
        });
        assertThat(PlausibleRange.all()).extracting(PlausibleRange::quantity).doesNotHaveDuplicates();
    }

    @Test
    void what_cannot_be_meant_is_told() {
        assertThat(verdict("pitch diameter", 140)).isEqualTo(PlausibleRange.Verdict.ABSURD);
        assertThat(verdict("penstock bore", 0.005)).isEqualTo(PlausibleRange.Verdict.ABSURD);
        assertThat(verdict("gauge pressure", 9653)).as("1.4 psi").isEqualTo(PlausibleRange.Verdict.ODD);
        assertThat(verdict("cells in series", 80)).isEqualTo(PlausibleRange.Verdict.ODD);
        assertThat(verdict("penstock length over gross head", 0.9)).isEqualTo(PlausibleRange.Verdict.ABSURD);
        assertThat(PlausibleRange.find("colour")).isEmpty();
    }

    private static PlausibleRange.Verdict verdict(String quantity, double value) {
        return PlausibleRange.find(quantity).orElseThrow().of(value);
    }
}
