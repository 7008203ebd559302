package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.law.Answer;

class CableAndProtectionTest {

    @Property
    void loss_is_drop_times_current(
            @ForAll @DoubleRange(min = 0, max = 5) double core,
            @ForAll @DoubleRange(min = 0, max = 200) double current) {
        assertThat(VoltageDrop.directLoss(core, current))
                .isCloseTo(VoltageDrop.direct(core, current) * current, within(1e-6));
        assertThat(VoltageDrop.threePhaseLoss(core, current))
                .isCloseTo(Math.sqrt(3) * VoltageDrop.threePhase(core, current) * current, within(1e-6));
    }

    @Property
    void halving_the_run_or_doubling_its_cores_halves_the_drop(@ForAll @DoubleRange(min = 1, max = 500) double length) {
        double whole = VoltageDrop.direct(VoltageDrop.core(length, 0.00308, 1), 10);
        assertThat(2 * VoltageDrop.direct(VoltageDrop.core(length / 2, 0.00308, 1), 10))
                .isCloseTo(whole, within(1e-9));
        assertThat(2 * VoltageDrop.direct(VoltageDrop.core(length, 0.00308, 2), 10))
                .isCloseTo(whole, within(1e-9));
    }

    @Property
    void the_two_published_temperature_rules_differ_by_less_than_a_half_per_cent(
            @ForAll @DoubleRange(min = 273.15, max = 363.15) double temperature) {
        double here = ConductorTemperature.resistance(1, ConductorTemperature.COPPER, temperature);
        assertThat(here * ConductorTemperature.measuringFactor(temperature)).isCloseTo(1, within(0.005));
    }

    @Property
    void a_stronger_cable_never_loses_its_protection_and_a_heavier_load_never_gains_it(
            @ForAll @DoubleRange(min = 1, max = 300) double load,
            @ForAll @DoubleRange(min = 2, max = 400) double rated,
            @ForAll @DoubleRange(min = 2, max = 400) double capacity,
            @ForAll @DoubleRange(min = 0, max = 100) double more) {
        double ratio = ProtectiveDeviceCoordination.fuse(rated);
        boolean now =
                ProtectiveDeviceCoordination.of(load, rated, capacity, ratio).holds();
        if (now) {
            assertThat(ProtectiveDeviceCoordination.of(load, rated, capacity + more, ratio)
                            .holds())
                    .isTrue();
        } else {
            assertThat(ProtectiveDeviceCoordination.of(load + more, rated, capacity, ratio)
                            .holds())
                    .isFalse();
        }
    }

    @Property
    void every_standard_fuse_that_is_offered_holds_and_every_other_does_not(
            @ForAll @DoubleRange(min = 0, max = 200) double load,
            @ForAll @DoubleRange(min = 1, max = 500) double capacity) {
        List<Double> offered = StandardFuseRatings.protecting(load, capacity);
        for (double rating : StandardFuseRatings.all()) {
            boolean fits = load <= rating && ProtectiveDeviceCoordination.fuse(rating) * rating <= 1.45 * capacity;
            assertThat(offered.contains(rating)).as("%s A", rating).isEqualTo(fits);
        }
    }

    @Test
    void fuse_ratings_follow_the_tenth_root_of_ten() {
        for (double rating : StandardFuseRatings.all()) {
            if (rating >= 10 && rating != 12) {
                double step = Math.round(10 * Math.log10(rating));
                assertThat(rating).isCloseTo(Math.pow(10, step / 10), within(0.025 * rating));
            }
        }
        assertThat(StandardFuseRatings.atLeast(33).orThrow()).isEqualTo(40);
        assertThat(StandardFuseRatings.atLeast(1300)).isInstanceOf(Answer.Outside.class);
    }

    @Property
    void the_least_area_stands_its_current_for_just_its_time(
            @ForAll @DoubleRange(min = 100, max = 20_000) double current,
            @ForAll @DoubleRange(min = 0.01, max = 4.9) double time) {
        double area = AdiabaticHeating.leastArea(current, time, AdiabaticHeating.COPPER_PVC)
                .orThrow();
        assertThat(AdiabaticHeating.longestTime(current, area, AdiabaticHeating.COPPER_PVC)
                        .orThrow())
                .isCloseTo(time, within(1e-9));
        assertThat(AdiabaticHeating.leastArea(current, time, AdiabaticHeating.COPPER_XLPE)
                        .orThrow())
                .isLessThan(area);
    }

    @Test
    void a_fault_that_lasts_longer_than_five_seconds_has_no_answer() {
        assertThat(AdiabaticHeating.leastArea(1000, 5.1, AdiabaticHeating.COPPER_PVC))
                .isInstanceOf(Answer.Outside.class);
    }

    @Property
    void a_longer_loop_or_a_shorter_bank_gives_less_fault_current(
            @ForAll @DoubleRange(min = 1, max = 100) double bankMilliohms,
            @ForAll @DoubleRange(min = 0, max = 100) double loopMilliohms) {
        double bank = bankMilliohms / 1000;
        double loop = loopMilliohms / 1000;
        assertThat(BatteryFaultCurrent.at(25, bank, loop)).isLessThanOrEqualTo(BatteryFaultCurrent.at(25, bank, 0));
        assertThat(BatteryFaultCurrent.bankResistance(bank, 12, 2)).isCloseTo(6 * bank, within(1e-12));
    }

    @Test
    void a_forty_eight_volt_plant_that_runs_away_is_to_be_covered_and_a_larger_one_is_no_longer_extra_low() {
        assertThat(TouchVoltageLimits.ofDirect(OpenCircuitBus.voltage(40, 1.9)))
                .isEqualTo(TouchVoltageLimits.Band.COVERED);
        assertThat(TouchVoltageLimits.ofDirect(OpenCircuitBus.voltage(50, 1.9)))
                .isEqualTo(TouchVoltageLimits.Band.LOW_VOLTAGE);
        assertThat(TouchVoltageLimits.ofDirect(29)).isEqualTo(TouchVoltageLimits.Band.BARE_WET);
        assertThat(TouchVoltageLimits.ofAlternating(13)).isEqualTo(TouchVoltageLimits.Band.BARE_DRY);
    }

    @Test
    void impossible_arguments_are_refused() {
        assertThatThrownBy(() -> VoltageDrop.core(-1, 0.001, 1)).isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ConductorTemperature.resistance(1, ConductorTemperature.COPPER, Double.NaN))
                .isInstanceOf(IllegalArgumentException.class);
        assertThatThrownBy(() -> ProtectiveDeviceCoordination.of(1, 0, 1, 1.45))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /** IEC 60898-2, from memory: a breaker of curve C trips at once from 15 times its rating on direct current, B from 7. */
    @Test
    void a_breaker_surely_opens_from_the_multiple_of_its_curve() {
        assertThat(BreakerTrip.surely(239, 16, BreakerTrip.C)).isFalse();
        assertThat(BreakerTrip.surely(240, 16, BreakerTrip.C)).isTrue();
        assertThat(BreakerTrip.surely(112, 16, BreakerTrip.B)).isTrue();
        assertThat(BreakerTrip.Z).isLessThan(BreakerTrip.B);
        assertThat(BreakerTrip.D).isGreaterThan(BreakerTrip.C);
    }
}
