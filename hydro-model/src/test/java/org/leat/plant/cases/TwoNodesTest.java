package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.CircuitSimulator;
import org.leat.electrics.DcLoad;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;

/** Bridge and battery as two nodes where a tracking or series regulator stands between them. */
class TwoNodesTest {

    private static final String TRACKING =
            "regulator: { kind: tracking, tracking-window: { from: 30 V, to: 90 V }, efficiency: 95 %, absorption-voltage: 28.4 V }";

    private static Cases cases(String parts) {
        // the simulator's diode has 0.8135 V at a few amperes
        return Plant.of(Plants.read(Plants.statedText("24 m", "9 mm", "160 mm", parts)
                        .replace("drop-per-diode: 0.8 V", "drop-per-diode: 0.8135 V")))
                .solve();
    }

    private static Cases clamped(String ohms, String trigger, String side) {
        return cases(TRACKING + "\n"
                + String.format(
                        Locale.ROOT,
                        "dump-load: { resistance: %s, resistance-hot: %s, power-rating: 2 kW, trigger-voltage: %s, side: %s }",
                        ohms,
                        ohms,
                        trigger,
                        side));
    }

    @Test
    void behind_a_tracking_regulator_the_battery_sees_its_set_point_while_the_bridge_runs_away() {
        Cases cases = cases(TRACKING);
        Running running = cases.running().get(0);
        assertThat(running.batteryVoltage())
                .isEqualTo(running.operatingPoint().bus().battery())
                .isLessThan(28);
        assertThat(running.lastingVoltage()).isGreaterThan(30);
        double open = cases.loadLost().get(0).directVoltage();
        for (BusSituation situation :
                List.of(cases.batteryFull().get(0), cases.batteryRemoved().get(0))) {
            assertThat(situation.lastingVoltage()).isEqualTo(open);
            assertThat(situation.batteryVoltage()).isEqualTo(28.4, within(1e-9));
            assertThat(situation.batteryMoment()).isEqualTo(Amount.of(28.4));
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "regulator: { kind: shunt, absorption-voltage: 28.4 V }"})
    void without_a_regulator_between_them_bridge_and_battery_are_one_node(String regulator) {
        Cases cases = cases(regulator);
        assertThat(cases.onTheBus())
                .isNotEmpty()
                .allSatisfy(situation -> assertThat(situation.batteryVoltage()).isEqualTo(situation.lastingVoltage()));
        assertThat(cases.regulatorFailedShort()).isEmpty();
    }

    @Test
    void a_series_regulator_is_closed_when_the_battery_opens_under_load_and_open_after_it() {
        Cases cases = Plant.of(Plants.read(Plants.statedText(
                                "24 m", "9 mm", "160 mm", "regulator: { kind: series, absorption-voltage: 28.4 V }")
                        .replace("drop-per-diode: 0.8 V", "drop-per-diode: 0.8 V, capacitance: 4700 µF")))
                .solve();
        BatteryRemoved removed = cases.batteryRemoved().get(0);
        assertThat(removed.batteryMoment()).isEqualTo(removed.momentVoltage());
        assertThat(removed.batteryMoment().or(0)).isGreaterThan(28.4);
        assertThat(removed.batteryVoltage()).isEqualTo(28.4, within(1e-9));
    }

    @Test
    void a_clamp_at_the_bridge_holds_it_at_its_own_trigger() {
        Cases cases = clamped("6 ohm", "60 V", "bridge");
        BatteryFull full = cases.batteryFull().get(0);
        assertThat(full.answer()).isEqualTo(BatteryFull.Answer.DIVERTED);
        assertThat(full.lastingVoltage()).isEqualTo(60, within(0.5));
        assertThat(full.batteryVoltage()).isEqualTo(28.4, within(1e-9));
        assertThat(full.elementPower())
                .as("a regulator lets no power of the battery into the element")
                .isEqualTo(full.turbinePower(), within(1e-9))
                .isLessThan(60 * 60 / 6.0);
        assertThat(cases.batteryRemoved().get(0).holder()).isEqualTo(BusHolder.DUMP_LOAD);
        assertThat(cases.batteryRemoved().get(0).lastingVoltage()).isEqualTo(full.lastingVoltage());
    }

    @Test
    void a_clamp_at_the_bridge_too_small_stands_where_it_takes_all() {
        BatteryFull full = clamped("60 ohm", "45 V", "bridge").batteryFull().get(0);
        assertThat(full.answer()).isEqualTo(BatteryFull.Answer.DUMP_TOO_SMALL);
        assertThat(full.lastingVoltage()).isGreaterThan(50).isEqualTo(full.dumpVoltage());
        assertThat(full.elementPower())
                .isEqualTo(full.dumpVoltage() * full.dumpVoltage() / 60, within(0.01 * full.elementPower()));
    }

    @Test
    void a_dump_load_at_the_battery_that_comes_on_before_the_regulator_lets_go_leaves_the_bridge_as_it_was() {
        Cases early = clamped("1.6 ohm", "28 V", "battery");
        BatteryFull full = early.batteryFull().get(0);
        assertThat(full.answer()).isEqualTo(BatteryFull.Answer.DIVERTED);
        assertThat(full.lastingVoltage()).isEqualTo(early.running().get(0).lastingVoltage());
        assertThat(full.batteryVoltage()).isEqualTo(28, within(1e-9));
        assertThat(early.batteryRemoved().get(0).holder())
                .as("it goes with the battery")
                .isEqualTo(BusHolder.NOTHING);
        assertThat(clamped("1.6 ohm", "28.4 V", "battery").batteryFull().get(0).answer())
                .as("it comes on when the regulator has let go")
                .isEqualTo(BatteryFull.Answer.RUNAWAY);
        assertThat(clamped("9 ohm", "28 V", "battery").batteryFull().get(0).answer())
                .as("it takes less than the regulator gives")
                .isEqualTo(BatteryFull.Answer.RUNAWAY);
    }

    @Test
    void a_regulator_that_has_failed_short_charges_as_if_there_were_none_and_joins_both_nodes() {
        Cases cases = cases(TRACKING);
        RegulatorFailedShort failed = cases.regulatorFailedShort().get(0);
        Running bare = cases("").running().get(0);
        assertThat(failed.chargingCurrent()).isEqualTo(bare.operatingPoint().directCurrent(), within(1e-6));
        assertThat(failed.phaseCurrent()).isEqualTo(bare.operatingPoint().phaseCurrent(), within(1e-6));
        assertThat(failed.holder()).isEqualTo(BusHolder.NOTHING);
        assertThat(failed.overcharges()).isTrue();
        assertThat(failed.batteryVoltage())
                .isEqualTo(failed.lastingVoltage())
                .isEqualTo(cases.loadLost().get(0).directVoltage());
        RegulatorFailedShort held =
                clamped("6 ohm", "60 V", "bridge").regulatorFailedShort().get(0);
        assertThat(held.holder()).isEqualTo(BusHolder.DUMP_LOAD);
        assertThat(held.batteryVoltage()).isEqualTo(60, within(0.5));
        RegulatorFailedShort atBattery =
                clamped("1.6 ohm", "28 V", "battery").regulatorFailedShort().get(0);
        assertThat(atBattery.holder()).isEqualTo(BusHolder.DUMP_LOAD);
        assertThat(atBattery.overcharges()).isFalse();
    }

    @Test
    void where_nothing_flows_nothing_is_switched_under_load() {
        Cases cases = Plant.of(Plants.stated("24 m", "9 mm", "400 mm", "")).solve();
        assertThat(cases.running().get(0).operatingPoint().directCurrent()).isZero();
        BatteryRemoved removed = cases.batteryRemoved().get(0);
        assertThat(removed.lastingVoltage()).isPositive();
        assertThat(removed.momentVoltage()).isEqualTo(Amount.of(removed.lastingVoltage()));
    }

    @Test
    void the_held_bridge_asks_of_the_runner_what_the_simulator_gives(@TempDir Path folder) {
        assumeTrue(CircuitSimulator.installed(), "ngspice is not installed");
        Cases cases = clamped("6 ohm", "60 V", "bridge");
        BatteryFull full = cases.batteryFull().get(0);
        Map<String, Double> run = simulated(
                cases, full.runnerSpeed(), 60, cases.numbers().busResistance().bridgeToRegulator(), folder);
        assertThat(full.turbineCurrent()).isEqualTo(run.get("idc_avg"), within(0.05 * run.get("idc_avg")));
        assertThat(run.get("pemf_avg") / full.runnerSpeed()
                        + cases.numbers().alternator().noLoad().at(full.runnerSpeed()))
                .isEqualTo(torque(cases, full.runnerSpeed()), within(0.05 * torque(cases, full.runnerSpeed())));
    }

    @Test
    void a_regulator_failed_short_charges_with_what_the_simulator_gives(@TempDir Path folder) {
        assumeTrue(CircuitSimulator.installed(), "ngspice is not installed");
        Cases cases = cases(TRACKING);
        double speed = cases("").running().get(0).runnerSpeed();
        PlantNumbers numbers = cases.numbers();
        Map<String, Double> run = simulated(
                cases,
                speed,
                numbers.battery().restingVoltage(),
                numbers.battery().internalResistance()
                        + numbers.busResistance().bridgeToRegulator()
                        + numbers.busResistance().regulatorToBattery(),
                folder);
        assertThat(cases.regulatorFailedShort().get(0).chargingCurrent())
                .isEqualTo(run.get("idc_avg"), within(0.05 * run.get("idc_avg")));
    }

    private static Map<String, Double> simulated(
            Cases cases, double speed, double volts, double resistance, Path folder) {
        var a = cases.numbers().alternator();
        AlternatorConstants machine =
                new AlternatorConstants(a.polePairs(), a.fluxLinkage(), a.phaseResistance(), a.phaseInductance());
        return CircuitSimulator.run(
                folder,
                CircuitSimulator.netlist(
                        machine, speed, new DcLoad.Battery(volts, resistance), BridgeFault.NONE, 0.1, 720));
    }

    private static double torque(Cases cases, double speed) {
        return new RunnerCharacteristic(
                        cases.numbers().runner(),
                        cases.numbers().water().density(),
                        cases.running().get(0).water())
                .torque(speed);
    }
}
