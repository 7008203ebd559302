package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.CircuitSimulator;
import org.leat.electrics.DcLoad;
import org.leat.electrics.ReverseVoltage;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solved.OperatingPoint;

/** What becomes of the bus when something goes: each case on one plant, and the simulated ones against the simulator. */
class BusCasesTest {

    private static final String DUMP =
            "dump-load: { resistance: 1.6 ohm, resistance-hot: 1.6 ohm, power-rating: 2 kW, trigger-voltage: %s, side: %s }";

    private static String regulator(String kind) {
        return switch (kind) {
            case "none" -> "";
            case "tracking" ->
                "regulator: { kind: tracking, tracking-window: { from: 30 V, to: 90 V }, efficiency: 95 %, absorption-voltage: 28.4 V }";
            default -> "regulator: { kind: " + kind + ", absorption-voltage: 28.4 V }";
        };
    }

    private static Cases cases(String parts) {
        return Plant.of(Plants.stated("24 m", "9 mm", "160 mm", parts)).solve();
    }

    private static Cases cases(String kind, String side) {
        String dump = side.equals("none") ? "" : String.format(java.util.Locale.ROOT, DUMP, "28.4 V", side);
        return cases(regulator(kind) + "\n" + dump);
    }

    @ParameterizedTest
    @CsvSource({
        "none,     none,    OVERCHARGED, NOTHING",
        "none,     bridge,  DIVERTED,    DUMP_LOAD",
        "none,     battery, DIVERTED,    NOTHING",
        "shunt,    none,    OVERCHARGED, NOTHING",
        "shunt,    bridge,  DIVERTED,    DUMP_LOAD",
        "shunt,    battery, DIVERTED,    NOTHING",
        "series,   none,    RUNAWAY,     NOTHING",
        "series,   bridge,  DIVERTED,    DUMP_LOAD",
        "series,   battery, RUNAWAY,     NOTHING",
        "tracking, none,    RUNAWAY,     NOTHING",
        "tracking, bridge,  DIVERTED,    DUMP_LOAD",
        "tracking, battery, RUNAWAY,     NOTHING"
    })
    void each_regulator_with_each_dump_load(String kind, String side, BatteryFull.Answer answer, BusHolder holder) {
        Cases cases = cases(kind, side);
        BatteryFull full = cases.batteryFull().get(0);
        BatteryRemoved removed = cases.batteryRemoved().get(0);
        LoadLost lost = cases.loadLost().get(0);
        assertThat(full.answer()).isEqualTo(answer);
        assertThat(removed.holder()).isEqualTo(holder);
        if (holder == BusHolder.NOTHING) {
            assertThat(removed.lastingVoltage()).isEqualTo(lost.directVoltage());
            assertThat(removed.runnerSpeed()).isEqualTo(lost.speed());
        } else {
            assertThat(removed.lastingVoltage()).isBetween(28.4, 0.8 * lost.directVoltage());
        }
        if (side.equals("none")) {
            assertThat(cases.dumpLost()).isEmpty();
        } else {
            assertThat(cases.dumpLost().get(0).lastingVoltage()).isEqualTo(lost.directVoltage());
        }
        if (answer == BatteryFull.Answer.OVERCHARGED) {
            assertThat(full.lastingVoltage())
                    .isEqualTo(lost.directVoltage())
                    .isGreaterThan(1.2 * cases.numbers().battery().absorptionVoltage());
        }
    }

    @Test
    void the_voltage_that_switches_the_dump_load_on_sets_the_bus() {
        Cases early = cases(regulator("shunt") + "\n" + String.format(java.util.Locale.ROOT, DUMP, "27.6 V", "bridge"));
        Cases late = cases(regulator("shunt") + "\n" + String.format(java.util.Locale.ROOT, DUMP, "31 V", "bridge"));
        assertThat(early.batteryFull().get(0).setVoltage()).isEqualTo(27.6, within(1e-9));
        assertThat(late.batteryFull().get(0).setVoltage()).isEqualTo(31, within(1e-9));
        assertThat(late.batteryFull().get(0).lastingVoltage()
                        - early.batteryFull().get(0).lastingVoltage())
                .isBetween(3.2, 3.5);
        assertThat(late.batteryRemoved().get(0).holder())
                .as("31 V is more than the battery may be charged with")
                .isEqualTo(BusHolder.NOTHING);
    }

    @Test
    void a_set_point_for_equalising_raises_the_bus_of_a_full_battery() {
        String dump = "dump-load: { resistance: 1.6 ohm, resistance-hot: 1.6 ohm, side: bridge }";
        Cases plain = cases("regulator: { kind: shunt, absorption-voltage: 28 V }\n" + dump);
        Cases equalises =
                cases("regulator: { kind: shunt, absorption-voltage: 28 V, equalising-voltage: 30 V }\n" + dump);
        assertThat(equalises.batteryFull().get(0).lastingVoltage())
                .isEqualTo(plain.batteryFull().get(0).lastingVoltage() + 2, within(1e-9));
    }

    @Test
    void a_dump_load_too_small_for_the_turbine_stands_above_its_trigger() {
        Cases cases = cases(
                regulator("shunt")
                        + "\ndump-load: { resistance: 40 ohm, resistance-hot: 40 ohm, power-rating: 2 kW, trigger-voltage: 28.4 V, side: bridge }");
        BatteryFull full = cases.batteryFull().get(0);
        assertThat(full.answer()).isEqualTo(BatteryFull.Answer.DUMP_TOO_SMALL);
        assertThat(full.dumpVoltage()).isGreaterThan(28.4 * 1.1).isEqualTo(full.lastingVoltage(), within(1e-9));
        assertThat(cases.batteryRemoved().get(0).holder()).isEqualTo(BusHolder.NOTHING);
    }

    @Test
    void a_trigger_that_even_a_runaway_does_not_reach_switches_nothing_on() {
        Cases cases =
                cases(regulator("tracking") + "\n" + String.format(java.util.Locale.ROOT, DUMP, "300 V", "bridge"));
        assertThat(cases.batteryFull().get(0).answer()).isEqualTo(BatteryFull.Answer.RUNAWAY);
    }

    @Test
    void the_moment_a_battery_opens_is_unknown_without_a_capacitor_and_by_the_simulated_factor_with_a_large_one() {
        Cases none = cases(regulator("shunt"));
        assertThat(none.batteryRemoved().get(0).momentVoltage()).isInstanceOf(Amount.Unknown.class);
        Cases large = withCapacitor("4700 µF");
        Running running = large.running().get(0);
        AlternatorNumbers alternator = large.numbers().alternator();
        double peak = alternator.coldMagnetFactor()
                * alternator.peakLineVoltage(running.operatingPoint().alternatorSpeed());
        assertThat(large.batteryRemoved().get(0).momentVoltage()).isEqualTo(Amount.of(ReverseVoltage.LOAD_DUMP * peak));
        double small =
                withCapacitor("47 µF").batteryRemoved().get(0).momentVoltage().or(0);
        double smaller =
                withCapacitor("10 µF").batteryRemoved().get(0).momentVoltage().or(0);
        assertThat(small).isGreaterThan(peak);
        assertThat(smaller).as("less capacitance, more voltage").isGreaterThan(small);
    }

    private static Cases withCapacitor(String capacitance) {
        return Plant.of(Plants.read(capacitorText(capacitance))).solve();
    }

    private static String capacitorText(String capacitance) {
        return Plants.statedText("24 m", "9 mm", "160 mm", regulator("shunt"))
                .replace(
                        "drop-per-diode: 0.8 V",
                        "drop-per-diode: 0.8135 V, capacitance: " + capacitance + ", capacitor-voltage: 200 V");
    }

    @Test
    void the_moment_a_battery_opens_on_a_small_capacitor_is_that_of_the_simulator(@TempDir Path folder) {
        assumeTrue(CircuitSimulator.installed(), "ngspice is not installed");
        Cases cases = withCapacitor("47 µF");
        PlantNumbers numbers = cases.numbers();
        AlternatorConstants machine = machine(numbers, numbers.alternator().coldMagnetFactor());
        OperatingPoint operatingPoint = cases.running().get(0).operatingPoint();
        double f = machine.frequency(operatingPoint.alternatorSpeed());
        double worst = 0;
        for (int moment = 0; moment < 6; moment++) {
            double opens = (12 + moment / 36.0) / f;
            DcLoad load = new DcLoad.Capacitor(
                    47e-6,
                    1e6,
                    numbers.battery().restingVoltage(),
                    numbers.battery().restingVoltage(),
                    busResistance(numbers),
                    opens);
            Map<String, Double> run = CircuitSimulator.run(
                    folder,
                    CircuitSimulator.netlist(
                            machine, operatingPoint.alternatorSpeed(), load, BridgeFault.NONE, 11 / f, 720));
            worst = Math.max(worst, run.get("vdc_max"));
        }
        assertThat(cases.batteryRemoved().get(0).momentVoltage().or(0)).isEqualTo(worst, within(0.05 * worst));
    }

    @ParameterizedTest
    @EnumSource(
            value = BrokenBridge.Fault.class,
            names = {"PHASE_OPEN", "DIODE_OPEN", "DIODE_SHORT"})
    void a_broken_bridge_runs_where_the_simulator_gives_the_runners_torque(
            BrokenBridge.Fault fault, @TempDir Path folder) {
        assumeTrue(CircuitSimulator.installed(), "ngspice is not installed");
        Cases cases = Plant.of(Plants.read(capacitorText("4700 µF"))).solve();
        PlantNumbers numbers = cases.numbers();
        BrokenBridge broken = Stream.concat(cases.broken().stream(), cases.diodeShorted().stream())
                .filter(b -> b.fault() == fault)
                .findFirst()
                .orElseThrow();
        assertThat(broken.held()).isTrue();
        AlternatorConstants machine = machine(numbers, 1);
        Map<String, Double> run = CircuitSimulator.run(
                folder,
                CircuitSimulator.netlist(
                        machine,
                        broken.runnerSpeed(),
                        new DcLoad.Battery(numbers.battery().restingVoltage(), busResistance(numbers)),
                        BridgeFault.valueOf(fault.name()),
                        0.1,
                        720));
        double idle = numbers.alternator().noLoadTorque();
        double shaft = new RunnerCharacteristic(
                        numbers.runner(),
                        numbers.water().density(),
                        cases.running().get(0).water())
                .torque(broken.runnerSpeed());
        double torque = run.get("pemf_avg") / broken.runnerSpeed();
        assertThat(torque + idle).isEqualTo(shaft, within(0.05 * shaft));
        assertThat(broken.directCurrent())
                .isEqualTo(run.get("idc_avg"), within(0.05 * Math.abs(run.get("idc_avg")) + 0.02));
        double most = Math.max(run.get("ia2_avg"), Math.max(run.get("ib2_avg"), run.get("ic2_avg")));
        assertThat(broken.phaseCurrent()).isEqualTo(Math.sqrt(most), within(0.05 * Math.sqrt(most)));
    }

    @Test
    void a_shorted_diode_brakes_the_wheel_and_drives_through_the_lead_many_times_what_the_battery_gets() {
        Cases cases = cases(regulator("shunt"));
        BrokenBridge shorted = cases.diodeShorted().get(0);
        double working = cases.running().get(0).operatingPoint().phaseCurrent();
        assertThat(shorted.held()).isTrue();
        assertThat(shorted.runnerSpeed())
                .isLessThan(cases.running().get(0).operatingPoint().speed());
        assertThat(shorted.phaseCurrent()).isGreaterThan(1.5 * working);
        assertThat(shorted.currentLeft()).isLessThan(1);
        // one way round: no more than the lead's rms, and no less than a sixth of it
        assertThat(shorted.diodeCurrent()).isBetween(shorted.phaseCurrent() / 6, shorted.phaseCurrent());
    }

    @Test
    void a_broken_bridge_lets_the_runner_go_faster_and_ripples_at_its_own_frequency() {
        Cases cases = cases(regulator("shunt"));
        double working = cases.running().get(0).operatingPoint().speed();
        assertThat(cases.broken()).hasSize(2).allSatisfy(broken -> {
            assertThat(broken.runnerSpeed())
                    .isBetween(working, cases.loadLost().get(0).speed() * (1 + 1e-9));
            assertThat(broken.lastingVoltage())
                    .isLessThan(cases.loadLost().get(0).directVoltage());
            double telling = broken.fault() == BrokenBridge.Fault.PHASE_OPEN
                    ? broken.rippleAtTwice()
                    : broken.rippleAtFrequency();
            double other = broken.fault() == BrokenBridge.Fault.PHASE_OPEN
                    ? broken.rippleAtFrequency()
                    : broken.rippleAtTwice();
            assertThat(telling).isGreaterThan(other);
        });
        BrokenBridge phase = cases.broken().get(0);
        assertThat(phase.runnerSpeed())
                .as("a lost phase loses more than a lost diode")
                .isGreaterThan(cases.broken().get(1).runnerSpeed());
    }

    @Test
    void the_coldest_and_the_hottest_day_move_magnets_copper_cables_and_limits() {
        String site = Plants.statedText("24 m", "9 mm", "160 mm", regulator("shunt"))
                .replace(
                        "water-temperature: { lowest: 10 °C, highest: 10 °C }",
                        "water-temperature: { lowest: 1 °C, highest: 18 °C }\n"
                                + "  air-temperature: { lowest: -15 °C, highest: 38 °C }")
                .replace("pole-pairs: 7", "pole-pairs: 7\n  magnet-grade: sh\n  thermal-resistance: 0.9 K/W")
                .replace(
                        "internal-resistance: 10 mohm",
                        "internal-resistance: 10 mohm, lowest-temperature: -4 °C,"
                                + " management: { opens-on-cold: true, voltage-rating: 100 V }");
        Cases cases = Plant.of(Plants.read(site)).solve();
        Day cold = cases.days().get(0);
        Day hot = cases.days().get(1);
        assertThat(cold.fluxFactor()).isEqualTo(1 + 0.0012 * 35, within(1e-9));
        assertThat(cold.runawayVoltage())
                .isEqualTo(cases.loadLost().get(0).directVoltage(), within(2e-3 * cold.runawayVoltage()));
        assertThat(hot.fluxFactor()).isLessThan(1);
        assertThat(hot.magnetTemperature()).isEqualTo(hot.windingTemperature().or(0), within(1.0));
        assertThat(hot.windingTemperature().or(0))
                .isGreaterThan(cold.windingTemperature().or(0) + 40);
        assertThat(hot.runawayVoltage()).isLessThan(cold.runawayVoltage());
        assertThat(cold.charging()).isEqualTo(Day.Charging.REFUSED);
        assertThat(cold.holder()).as("the management opens on cold").isEqualTo(BusHolder.NOTHING);
        assertThat(cold.lastingVoltage()).isEqualTo(cases.loadLost().get(0).directVoltage());
        assertThat(hot.charging()).isEqualTo(Day.Charging.ALLOWED);
        assertThat(hot.holder()).isEqualTo(BusHolder.BATTERY);
        assertThat(hot.running().operatingPoint().speed())
                .as("weak magnets and hot copper hold less")
                .isGreaterThan(cold.running().operatingPoint().speed());
    }

    private static AlternatorConstants machine(PlantNumbers numbers, double flux) {
        AlternatorNumbers a = numbers.alternator();
        return new AlternatorConstants(a.polePairs(), a.fluxLinkage() * flux, a.phaseResistance(), a.phaseInductance());
    }

    private static double busResistance(PlantNumbers numbers) {
        return numbers.battery().internalResistance()
                + numbers.busResistance().bridgeToRegulator()
                + numbers.busResistance().regulatorToBattery();
    }
}
