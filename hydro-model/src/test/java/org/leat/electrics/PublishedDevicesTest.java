package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.electrics.FuseGates.Time;
import org.leat.law.Answer;
import org.leat.published.PublishedCase;

/** Fuses, breakers, gas and winding limits against published values. */
class PublishedDevicesTest {

    static Stream<PublishedCase> cases() {
        return Stream.of("electrical-fuse-gates", "electrical-breakers", "electrical-gas", "electrical-limits")
                .flatMap(PublishedCase::of);
    }

    @ParameterizedTest
    @MethodSource("cases")
    void devices_agree_with_what_is_published(PublishedCase c) {
        String name = c.id().substring(c.id().lastIndexOf('-') + 1);
        switch (c.family()) {
            case "gate10s" -> c.assertMatches(gate(Time.STANDS_10_S, c));
            case "gate5s" -> c.assertMatches(gate(Time.MELTS_5_S, c));
            case "gatehold" -> c.assertMatches(gate(Time.STANDS_0_1_S, c));
            case "gatemelt" -> c.assertMatches(gate(Time.MELTS_0_1_S, c));
            case "bs88" -> makersFuse(c);
            case "mcbac" -> {
                c.assertMatches("low", MagneticRelease.valueOf(name).holds());
                c.assertMatches("high", MagneticRelease.valueOf(name).trips());
            }
            case "mcbdc" -> {
                c.assertMatches("low", MagneticRelease.valueOf(name).holdsDirect());
                c.assertMatches("high", MagneticRelease.valueOf(name).tripsDirect());
            }
            case "mcbrise" -> c.assertMatches(MagneticRelease.DIRECT);
            case "mccb" -> c.assertMatches(MagneticRelease.SETTING * c.in("I_dc"));
            case "mcbf" ->
                c.assertMatches(MagneticRelease.atFrequency(c.in("f")).orThrow());
            case "cont" -> c.assertMatches(ContinuousLoad.leastRating(1));
            case "gas" -> c.assertMatches(gas(name));
            case "vent" ->
                c.assertMatches(
                        HydrogenVentilation.airFlow((int) c.in("n"), c.in("I_gas") / 1000 * c.in("C_rt")) * 3600);
            case "spark" ->
                c.assertMatches(
                        HydrogenVentilation.safeDistance((int) c.in("N"), c.in("I_gas") / 1000 * c.in("C_rt")) * 1000);
            case "insrise" -> c.assertMatches(ThermalClass.valueOf(name).temperatureRise());
            case "inshot", "insmargin" ->
                c.assertMatches(ThermalClass.valueOf(name).hotSpotAllowance());
            case "insgen" -> c.assertMatches(ThermalClass.valueOf(name).generatorAllowance());
            case "elv" ->
                c.assertMatches(
                        name.equals("ac")
                                ? TouchVoltageLimits.EXTRA_LOW_ALTERNATING
                                : TouchVoltageLimits.EXTRA_LOW_DIRECT);
            case "open" ->
                c.assertMatches(
                        switch (name) {
                            case "lead" -> OnePhaseOpen.LEAD_CURRENT;
                            case "heat" -> OnePhaseOpen.PHASE_HEAT;
                            default -> OnePhaseOpen.MEAN_VOLTAGE;
                        });
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    @Test
    void every_case_of_the_files_is_bound() {
        assertThat(cases()).hasSize(72 + 12 + 18 + 19);
    }

    private static double gate(Time time, PublishedCase c) {
        return FuseGates.current(time, c.in("I_n")).orThrow();
    }

    /** A maker's link melts at less than the gate allows, by up to 17 %: the gate is the safe side. */
    private static void makersFuse(PublishedCase c) {
        assertThat(c.in("U0") * c.in("scale") / c.in("Z_scaled")).isBetween(c.expected() * 0.99, c.expected() * 1.01);
        c.tell("value", gate(Time.MELTS_5_S, c));
        assertThat(gate(Time.MELTS_5_S, c)).isBetween(c.expected(), c.expected() / 0.82);
    }

    private static double gas(String name) {
        String[] parts = name.split("/", -1);
        boolean unlimited = parts[0].equals("nolimit");
        GasCurrent.Kind kind = switch (unlimited ? parts[1] : parts[0]) {
            case "vented" -> GasCurrent.Kind.VENTED;
            case "vrla" -> GasCurrent.Kind.VALVE_REGULATED;
            default -> GasCurrent.Kind.NICKEL_CADMIUM;
        };
        GasCurrent.Stage stage = unlimited
                ? GasCurrent.Stage.UNLIMITED
                : parts[1].equals("float") ? GasCurrent.Stage.FLOAT : GasCurrent.Stage.BOOST;
        return GasCurrent.specific(kind, stage).orThrow() * 3600 * 1000;
    }

    @Test
    void what_melts_a_fuse_in_a_tenth_of_a_second_is_what_two_sizes_up_stands() {
        List<Double> ratings = FuseGates.ratings();
        assertThat(ratings).hasSize(15).isSorted();
        for (int i = 0; i + 2 < ratings.size(); i++) {
            assertThat(FuseGates.current(Time.MELTS_0_1_S, ratings.get(i)))
                    .isEqualTo(FuseGates.current(Time.STANDS_0_1_S, ratings.get(i + 2)));
        }
    }

    @Test
    void a_fuse_outside_the_table_has_no_gate() {
        assertThat(FuseGates.current(Time.MELTS_5_S, 10)).isInstanceOf(Answer.Outside.class);
        assertThat(FuseGates.current(Time.MELTS_5_S, 500)).isInstanceOf(Answer.Outside.class);
        assertThat(FuseGates.greatestThatMelts(64.9)).isInstanceOf(Answer.Outside.class);
        assertThat(FuseGates.greatestThatMelts(65)).isEqualTo(Answer.of(16));
        assertThat(FuseGates.greatestThatMelts(579)).isEqualTo(Answer.of(80));
        assertThat(FuseGates.greatestThatMelts(1e5)).isEqualTo(Answer.of(400));
    }

    @Test
    void a_breaker_on_direct_current_trips_no_later_than_its_standard_asks() {
        assertThat(MagneticRelease.B.tripsDirect()).isLessThanOrEqualTo(BreakerTrip.B);
        assertThat(MagneticRelease.C.tripsDirect()).isLessThanOrEqualTo(BreakerTrip.C);
        assertThat(MagneticRelease.D.tripsDirect()).isLessThanOrEqualTo(BreakerTrip.D);
        for (MagneticRelease each : MagneticRelease.values()) {
            assertThat(each.tripsDirect() / each.trips())
                    .isBetween(0.98 * MagneticRelease.DIRECT, MagneticRelease.DIRECT);
            assertThat(each.holdsDirect() / each.holds())
                    .isBetween(0.94 * MagneticRelease.DIRECT, MagneticRelease.DIRECT);
        }
        assertThat(MagneticRelease.atFrequency(150)).isEqualTo(Answer.of(1.15));
        assertThat(MagneticRelease.atFrequency(16.7)).isEqualTo(Answer.of(1));
        assertThat(MagneticRelease.atFrequency(16.6)).isInstanceOf(Answer.Outside.class);
        assertThat(MagneticRelease.atFrequency(400)).isEqualTo(Answer.of(1.5));
        assertThat(MagneticRelease.atFrequency(400.1)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void a_device_of_a_stream_s_current_is_a_quarter_larger_and_made() {
        assertThat(ContinuousLoad.leastRating(40)).isEqualTo(50);
        assertThat(ContinuousLoad.leastMade(40)).isEqualTo(Answer.of(50));
        assertThat(ContinuousLoad.leastMade(40.1)).isEqualTo(Answer.of(63));
        assertThat(ContinuousLoad.leastMade(1001)).isInstanceOf(Answer.Outside.class);
        assertThat(ContinuousLoad.dumpBranch(56, 2)).isEqualTo(35);
        assertThat(DumpSizing.leastPower(56, 20, DumpSizing.CODE_MARGIN)).isEqualTo(1680);
    }

    @Test
    void a_back_up_link_does_not_break_what_a_full_range_link_does() {
        assertThat(FuseClass.GG.fullRange() && FuseClass.GPV.fullRange()).isTrue();
        assertThat(FuseClass.AM.fullRange() || FuseClass.AR.fullRange()).isFalse();
        assertThat(FuseClass.GG.breaks(160, 100)).isTrue();
        assertThat(FuseClass.GG.breaks(159, 100)).isFalse();
        assertThat(FuseClass.GPV.breaks(145, 100)).isTrue();
        assertThat(FuseClass.AM.breaks(600, 100)).isFalse();
        assertThat(FuseClass.AM.breaks(630, 100)).isTrue();
        assertThat(FuseClass.AR.breaks(400, 100)).isTrue();
        assertThat(FuseClass.AR.breaks(399, 100)).isFalse();
        assertThat(FuseClass.AR.leastBreaking()).isEqualTo(4);
    }

    @Test
    void equalising_makes_gas_by_the_charging_current_but_a_held_voltage_does_not() {
        double capacity = 200 * 3600;
        assertThat(gasOf(GasCurrent.Stage.UNLIMITED, capacity, 5)).isEqualTo(5);
        assertThat(gasOf(GasCurrent.Stage.UNLIMITED, capacity, 50)).isEqualTo(12);
        assertThat(gasOf(GasCurrent.Stage.BOOST, capacity, 1)).isEqualTo(4);
        assertThat(GasCurrent.ofString(GasCurrent.Kind.NICKEL_CADMIUM, GasCurrent.Stage.UNLIMITED, capacity, 5))
                .isInstanceOf(Answer.Outside.class);
    }

    private static double gasOf(GasCurrent.Stage stage, double capacity, double charging) {
        double gas = GasCurrent.ofString(GasCurrent.Kind.VENTED, stage, capacity, charging)
                .orThrow();
        return Math.round(gas * 1e9) / 1e9;
    }

    @Test
    void half_a_metre_from_sparks_covers_a_small_battery_only() {
        assertThat(HydrogenVentilation.safeDistance(1, 5.2)).isLessThan(0.5);
        assertThat(HydrogenVentilation.safeDistance(1, 5.3)).isGreaterThan(0.5);
        assertThat(HydrogenVentilation.safeDistance(6, 1)).isEqualTo(HydrogenVentilation.safeDistance(6));
    }

    @Test
    void one_phase_open_moves_the_same_heat_into_two_thirds_of_the_copper() {
        assertThat(2 * OnePhaseOpen.PHASE_HEAT).isEqualTo(3);
        assertThat(OnePhaseOpen.LEAD_CURRENT * OnePhaseOpen.LEAD_CURRENT).isBetween(1.4999, 1.5001);
        assertThat(OnePhaseOpen.RIPPLE * 3).isEqualTo(6);
    }

    @Test
    void the_hot_spot_of_a_winding_is_within_its_class_at_forty_degrees() {
        for (ThermalClass each : ThermalClass.values()) {
            assertThat(ThermalClass.AMBIENT + each.temperatureRise() + each.hotSpotAllowance())
                    .isEqualTo(each.limit());
        }
        assertThat(ThermalClass.E.hotSpotAllowance()).isEqualTo(5);
        assertThat(ThermalClass.E.generatorAllowance()).isEqualTo(5);
    }
}
