package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import org.leat.design.RegulatorKind;
import org.leat.law.Answer;

class BatteryAndLoadsTest {

    private static final double HOUR = 3600;

    @Property
    void a_load_of_the_sized_resistance_takes_its_margin_and_a_hot_one_takes_less(
            @ForAll @DoubleRange(min = 10, max = 60) double voltage,
            @ForAll @DoubleRange(min = 1, max = 100) double current,
            @ForAll @DoubleRange(min = 1, max = 2) double margin,
            @ForAll @DoubleRange(min = 0, max = 500) double warming) {
        double resistance = DumpSizing.greatestResistance(voltage, current, margin);
        assertThat(DumpSizing.share(voltage, resistance, current)).isCloseTo(margin, within(1e-9));
        assertThat(DumpElement.power(resistance, voltage))
                .isCloseTo(DumpSizing.leastPower(voltage, current, margin), within(1e-6));
        assertThat(DumpElement.current(DumpElement.hot(resistance, 0.0002, warming), voltage))
                .isLessThanOrEqualTo(DumpElement.current(resistance, voltage));
    }

    @Property
    void a_heavier_current_empties_sooner_and_never_finds_more_than_the_label(
            @ForAll @DoubleRange(min = 1, max = 100) double current,
            @ForAll @DoubleRange(min = 1, max = 50) double more,
            @ForAll @DoubleRange(min = 1, max = 1.6) double exponent) {
        double capacity = 200 * HOUR;
        assertThat(Peukert.time(capacity, 20 * HOUR, current + more, exponent))
                .isLessThan(Peukert.time(capacity, 20 * HOUR, current, exponent));
        assertThat(Peukert.usableCharge(capacity, 20 * HOUR, current, exponent)).isLessThanOrEqualTo(capacity);
        assertThat(Peukert.usableCharge(capacity, 20 * HOUR, current + more, exponent))
                .isLessThanOrEqualTo(Peukert.usableCharge(capacity, 20 * HOUR, current, exponent) * (1 + 1e-12));
    }

    @Property
    void the_two_forms_of_peukert_agree_where_the_capacity_is_that_of_one_ampere(
            @ForAll @DoubleRange(min = 1, max = 100) double current,
            @ForAll @DoubleRange(min = 1, max = 1.6) double exponent) {
        double atOneAmpere = 100 * HOUR;
        assertThat(Peukert.timeFromCapacityAtOneAmpere(atOneAmpere, current, exponent))
                .isCloseTo(Peukert.time(atOneAmpere, atOneAmpere, current, exponent), within(1e-6));
    }

    @Property
    void stepping_through_the_taper_takes_the_time_of_the_closed_form(
            @ForAll @DoubleRange(min = 5, max = 60) double offered,
            @ForAll @DoubleRange(min = 20, max = 100) double missing,
            @ForAll @DoubleRange(min = 1, max = 15) double rest) {
        double charge = missing * HOUR;
        double time = 0;
        while (charge > rest * HOUR) {
            charge -= 2 * ChargeAcceptance.current(offered, charge, ChargeAcceptance.LEAD);
            time += 2;
        }
        assertThat(ChargeAcceptance.time(offered, missing * HOUR, rest * HOUR, ChargeAcceptance.LEAD))
                .isCloseTo(time, within(20.0));
    }

    @Property
    void autonomy_goes_there_and_back(
            @ForAll @DoubleRange(min = 10, max = 500) double power,
            @ForAll @DoubleRange(min = 1, max = 100) double hours) {
        double capacity = Autonomy.capacity(power * hours * HOUR, 0.5, 0.9, 24);
        assertThat(Autonomy.time(capacity, 0.5, 0.9, 24, power) / HOUR).isCloseTo(hours, within(1e-9));
    }

    @Test
    void thirty_amperes_out_of_control_want_more_air_than_a_regulated_bank() {
        double regulated = HydrogenVentilation.airFlow(12, HydrogenVentilation.gasCurrent(0.020 / HOUR, 200 * HOUR));
        double failed = HydrogenVentilation.airFlow(12, 30);
        assertThat(regulated * HOUR).isCloseTo(2.4, within(1e-9));
        assertThat(failed * HOUR).isCloseTo(18, within(1e-9));
        assertThat(HydrogenVentilation.openingArea(failed)).isCloseTo(0.0504, within(1e-9));
        assertThat(HydrogenVentilation.safeDistance(4)).isCloseTo(28.8e-3 * Math.cbrt(20 * 200), within(1e-9));
        assertThat(HydrogenVentilation.airFlowUnrounded(12, 30)).isGreaterThan(failed);
    }

    @Property
    void the_sagging_inverter_gets_its_power_and_the_least_voltage_is_half(
            @ForAll @DoubleRange(min = 11, max = 55) double openCircuit,
            @ForAll @DoubleRange(min = 2, max = 100) double milliohms,
            @ForAll @DoubleRange(min = 1, max = 5000) double power) {
        double resistance = milliohms / 1000;
        if (VoltageSag.underPower(openCircuit, resistance, power) instanceof Answer.Value sagged) {
            double current = power / sagged.value();
            assertThat(VoltageSag.underCurrent(openCircuit, resistance, current))
                    .isCloseTo(sagged.value(), within(1e-6));
            assertThat(sagged.value()).isBetween(openCircuit / 2, openCircuit);
        } else {
            assertThat(power).isGreaterThan(openCircuit * openCircuit / 4 / resistance);
        }
    }

    @Property
    void the_power_needed_leaves_no_surplus_and_a_better_battery_needs_no_more(
            @ForAll @DoubleRange(min = 0, max = 2e7) double atBus,
            @ForAll @DoubleRange(min = 0, max = 2e7) double atInverter,
            @ForAll @DoubleRange(min = 0, max = 1) double stored,
            @ForAll @DoubleRange(min = 0.5, max = 1) double battery) {
        EnergyBalance.Use use = new EnergyBalance.Use(atBus, atInverter, 0.9, 15);
        double needed = EnergyBalance.ofDay(0, use, stored, battery).powerNeeded();
        assertThat(EnergyBalance.ofDay(needed, use, stored, battery).surplus()).isCloseTo(0, within(1e-3));
        assertThat(EnergyBalance.ofDay(0, use, stored, 1).powerNeeded()).isLessThanOrEqualTo(needed);
        assertThat(EnergyBalance.ofDay(needed, use, stored, battery).generated())
                .isGreaterThanOrEqualTo(atBus + atInverter + InverterIdleShare.daily(15) - 1e-3);
    }

    @Property
    void chargers_never_draw_more_than_can_be_spared_and_each_pack_has_its_turn(
            @ForAll @Size(min = 1, max = 8) List<@DoubleRange(min = 20, max = 400) Double> powers,
            @ForAll @DoubleRange(min = 50, max = 600) double spare) {
        List<VehicleChargingPlan.Pack> packs = new ArrayList<>();
        for (int i = 0; i < powers.size(); i++) {
            packs.add(new VehicleChargingPlan.Pack("pack " + i, powers.get(i), HOUR * (1 + i * 0.7)));
        }
        VehicleChargingPlan plan = VehicleChargingPlan.of(packs, spare);
        assertThat(plan.slots().size() + plan.tooStrong().size()).isEqualTo(packs.size());
        for (VehicleChargingPlan.Slot slot : plan.slots()) {
            assertThat(plan.powerAt(slot.start())).isLessThanOrEqualTo(spare);
        }
        double energy = plan.slots().stream()
                .mapToDouble(slot -> slot.pack().power() * slot.pack().time())
                .sum();
        assertThat(plan.length() * spare).isGreaterThanOrEqualTo(energy * (1 - 1e-9));
    }

    @Test
    void three_packs_on_a_small_plant_are_charged_one_after_another() {
        VehicleChargingPlan plan = VehicleChargingPlan.of(
                List.of(
                        new VehicleChargingPlan.Pack("bread bicycle", 120, 3 * HOUR),
                        new VehicleChargingPlan.Pack("mower", 90, 2 * HOUR),
                        new VehicleChargingPlan.Pack("drill", 60, HOUR),
                        new VehicleChargingPlan.Pack("cart", 900, 4 * HOUR)),
                160);
        assertThat(plan.tooStrong()).containsExactly("cart");
        assertThat(plan.slots())
                .extracting(slot -> slot.pack().name() + " at " + slot.start() / HOUR)
                .containsExactly("bread bicycle at 0.0", "drill at 3.0", "mower at 3.0");
        assertThat(plan.length()).isEqualTo(5 * HOUR);
    }

    @Test
    void life_of_lead_halves_by_ten_kelvin_and_cold_gives_nothing_back() {
        assertThat(CycleLife.leadTemperatureFactor(308.15)).isCloseTo(0.5, within(1e-12));
        assertThat(CycleLife.leadTemperatureFactor(278.15)).isEqualTo(1);
        assertThat(CycleLife.years(730.5, 1, 0.5)).isCloseTo(1, within(1e-12));
    }

    @Test
    void a_battery_outside_its_temperatures_has_no_charge_voltage() {
        assertThat(TemperatureCompensation.voltage(12, 2.4, -0.005, 250)).isInstanceOf(Answer.Outside.class);
        assertThat(TemperatureCompensation.voltage(12, 2.4, -0.005, 325)).isInstanceOf(Answer.Outside.class);
    }

    @Test
    void a_bank_adds_voltage_in_series_and_charge_in_parallel() {
        SeriesParallel bank = new SeriesParallel(SeriesParallel.cellsFor(24, 2), 3);
        assertThat(bank.series()).isEqualTo(12);
        assertThat(bank.voltage(2)).isEqualTo(24);
        assertThat(bank.capacity(100 * HOUR)).isEqualTo(300 * HOUR);
        assertThat(bank.energy(2, 100 * HOUR) / 3.6e6).isCloseTo(7.2, within(1e-12));
        assertThat(SeriesParallel.cellsFor(51.2, 3.2)).isEqualTo(16);
    }

    @Property
    void the_least_capacity_just_stands_its_current(@ForAll @DoubleRange(min = 1, max = 100) double current) {
        double capacity = ChargeCurrentLimit.leastCapacity(0.125 / HOUR, current);
        assertThat(ChargeCurrentLimit.greatest(0.125 / HOUR, capacity)).isCloseTo(current, within(1e-9));
        assertThat(ChargeCurrentLimit.leastMeanForLead(capacity)).isCloseTo(8 * current / 50, within(1e-9));
    }

    @Test
    void rms_of_an_inverters_pulses_is_that_of_the_raised_sine() {
        double sum = 0;
        int steps = 10_000;
        for (int i = 0; i < steps; i++) {
            double pulse = 1 - Math.cos(2 * Math.PI * i / steps);
            sum += pulse * pulse;
        }
        assertThat(InverterCurrent.singlePhaseRms(1)).isCloseTo(Math.sqrt(sum / steps), within(1e-9));
    }

    @Test
    void each_kind_of_regulator_of_a_design_has_its_response() {
        for (RegulatorKind kind : RegulatorKind.values()) {
            RegulatorResponse response = RegulatorResponse.valueOf(kind.name());
            assertThat(response.batteryFull(true)).isEqualTo(RegulatorResponse.Outcome.HELD);
            assertThat(response.batteryFull(false))
                    .isEqualTo(
                            response.unloadsTurbine()
                                    ? RegulatorResponse.Outcome.RUNS_AWAY
                                    : RegulatorResponse.Outcome.OVERCHARGES);
            assertThat(response.batteryLost(true, false)).isEqualTo(RegulatorResponse.Outcome.RUNS_AWAY);
            assertThat(response.batteryLost(true, true)).isEqualTo(RegulatorResponse.Outcome.HELD);
        }
    }
}
