package org.leat.plant.solve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.leat.arbitraries.Designs;
import org.leat.design.Design;
import org.leat.design.RegulatorKind;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.plant.solved.OperatingPoint;
import org.leat.plant.solved.OperatingPoint.Crossing;
import org.leat.plant.solved.OperatingPoint.Hold;
import org.leat.plant.solved.WaterSide;

/** Where runner and alternator meet. */
class OperatingPointTest {

    private static final String BATTERY = "";
    private static final String TRACKING =
            "regulator: { kind: tracking, tracking-window: { from: 30 V, to: 200 V }, efficiency: 95 % }";

    @Provide
    Arbitrary<Design> plants() {
        return Designs.plausible();
    }

    @Test
    void a_builder_who_knows_little_gets_an_operating_point_and_the_list_of_what_was_assumed() {
        Plant plant = Plant.of(Plants.least());
        OperatingPoint operatingPoint = plant.solve().running().get(0).operatingPoint();
        assertThat(operatingPoint.hold()).isEqualTo(Hold.HELD);
        assertThat(operatingPoint.batteryPower()).isBetween(100.0, 300.0);
        assertThat(plant.assumptions())
                .extracting(Assumption::path)
                .contains(
                        "/site/water-temperature",
                        "/runner/pitch-diameter",
                        "/alternator/pole-pairs",
                        "/alternator/winding/inductance-between-leads",
                        "/cables");
        assertThat(plant.assumptions()).allSatisfy(a -> assertThat(a.value()).isBetween(a.low(), a.high()));
    }

    @Test
    void an_assumption_can_be_moved() {
        String path = "/runner/pitch-diameter";
        Plant plant = Plant.of(Plants.least());
        double taken = plant.numbers().runner().pitchDiameter();
        Plant moved = Plant.of(Plants.least(), Map.of(path, 1.5 * taken));
        assertThat(moved.numbers().runner().pitchDiameter()).isEqualTo(1.5 * taken);
        assertThat(moved.solve().running().get(0).operatingPoint().speedRatio())
                .isGreaterThan(plant.solve().running().get(0).operatingPoint().speedRatio());
    }

    /**
     * By hand: 30 m of head, one 12 mm nozzle, 100 m of 60 mm bore. With f = 0.0222 (Colebrook-White at Re 42 000, k/D
     * 0.00017) the penstock takes (0.0222 · 100/0.06 + 0.5) V²/2g and the nozzle (60/12)⁴/0.97² V²/2g, so V²/2g = 30/(37.5
     * + 664.3) m, V = 0.916 m/s, Q = 2.59 L/s, H = 28.4 m, Vj = 22.9 m/s, jet 678 W.
     */
    @Test
    void the_water_side_of_a_worked_example() {
        WaterSide water = stated(BATTERY).solve().running().get(0).water();
        assertThat(water.flow()).isCloseTo(2.59e-3, within(0.005e-3));
        assertThat(water.netHead()).isCloseTo(28.4, within(0.05));
        assertThat(water.jetVelocity()).isCloseTo(22.9, within(0.05));
        assertThat(water.jetPower()).isCloseTo(678, within(2.0));
    }

    /** At the point found, powers computed apart from the solver balance. */
    @Test
    void the_electric_side_of_a_worked_example_balances() {
        Plant plant = stated(BATTERY);
        Running running = plant.solve().running().get(0);
        OperatingPoint o = running.operatingPoint();
        AlternatorNumbers a = plant.numbers().alternator();
        double emfConstant = 22 * Math.sqrt(2) / (1000 * Math.PI / 30);
        assertThat(a.peakLineVoltage(1)).isCloseTo(emfConstant, within(1e-12));
        double idle = 10 / (1000 * Math.PI / 30);
        EnergyAccount energy = o.energy();
        assertThat(energy.lostBefore(Stage.AIR_GAP)).isCloseTo(idle * o.speed(), within(1e-6));
        assertThat(energy.lostBefore(Stage.TERMINALS))
                .isCloseTo(3 * 0.1 * o.phaseCurrent() * o.phaseCurrent(), within(1e-6));
        double resting = o.bus().batteryResting();
        assertThat(energy.at(Stage.STORED)).isCloseTo(resting * o.directCurrent(), within(1e-6));
        double best = 0.75 * running.water().jetPower();
        assertThat(energy.at(Stage.SHAFT)).isLessThanOrEqualTo(best * (1 + 1e-9));
        assertThat(energy.at(Stage.SHAFT)).isCloseTo(o.torque() * o.speed(), within(1e-9));
    }

    @Property(tries = 120, shrinking = ShrinkingMode.OFF)
    void every_crossing_of_a_fine_scan_is_found(@ForAll("plants") Design design) {
        Plant plant = Plant.of(design);
        if (plant.numbers().regulator().kind() == RegulatorKind.TRACKING
                || plant.solve().running().isEmpty()) {
            return;
        }
        Running running = plant.solve().running().get(0);
        RunnerCharacteristic wheel = new RunnerCharacteristic(
                plant.numbers().runner(), plant.numbers().water().density(), running.water());
        TorqueCurve curve = new ElectricSide(plant.numbers())
                .warmedTo(running.operatingPoint().windingTemperature())
                .onBattery();
        List<Crossing> found = running.operatingPoint().crossings();
        List<Double> scanned = new ArrayList<>();
        int steps = 4000;
        double runaway = wheel.runawaySpeed();
        double last = wheel.torque(0) - curve.torqueAt(0);
        if (!(last > 0)) {
            assertThat(found).isEmpty();
            return;
        }
        for (int i = 1; i <= steps; i++) {
            double speed = runaway * i / steps;
            double here = i == steps
                    ? Math.min(0, wheel.torque(speed) - curve.torqueAt(speed))
                    : wheel.torque(speed) - curve.torqueAt(speed);
            if ((here > 0) != (last > 0)) {
                scanned.add(speed);
            }
            last = here;
        }
        assertThat(found).hasSameSizeAs(scanned);
        for (int i = 0; i < scanned.size(); i++) {
            assertThat(found.get(i).speed()).isCloseTo(scanned.get(i), within(1.01 * runaway / steps));
            assertThat(found.get(i).stable()).isEqualTo(i % 2 == 0);
        }
    }

    /** A little more inductance than that at which the torques just touch far beyond the peak: two crossings close together. */
    @Test
    void two_crossings_between_samples_beyond_the_sampled_torque_are_found() {
        double one = 4e-3;
        double three = 8e-3;
        for (int n = 0; n < 14; n++) {
            double middle = 0.5 * (one + three);
            if (turns(tooFast(middle)) == 1) {
                one = middle;
            } else {
                three = middle;
            }
        }
        for (double more : new double[] {1.0005, 1.002, 1.005, 1.01, 1.02, 1.05}) {
            Plant plant = tooFast(three * more);
            assertThat(turns(plant)).isEqualTo(3);
            OperatingPoint o = plant.solve().running().get(0).operatingPoint();
            assertThat(o.crossings()).as("%s times the inductance", more).hasSize(3);
            assertThat(o.otherSpeeds()).hasSize(1);
        }
    }

    private static Plant tooFast(double inductance) {
        return Plant.of(Plants.read(Plants.statedText("32 m", "11 mm", "60 mm", "")
                .replace("voltage: 22 V", "voltage: 45 V")
                .replace(
                        "inductance-between-leads: 0.4 mH",
                        String.format(java.util.Locale.ROOT, "inductance-between-leads: %.7f mH", 1000 * inductance))));
    }

    /** Changes of sign of the difference of the torques on a fine scan. */
    private static int turns(Plant plant) {
        Running running = plant.solve().running().get(0);
        RunnerCharacteristic wheel = new RunnerCharacteristic(
                plant.numbers().runner(), plant.numbers().water().density(), running.water());
        TorqueCurve curve = new ElectricSide(plant.numbers()).onBattery();
        int turns = 0;
        boolean faster = true;
        for (int i = 1; i <= 4000; i++) {
            double speed = wheel.runawaySpeed() * i / 4000;
            boolean here = i < 4000 && wheel.torque(speed) > curve.torqueAt(speed);
            turns += here == faster ? 0 : 1;
            faster = here;
        }
        return turns;
    }

    @Test
    void at_its_other_speed_the_alternator_gives_what_the_bus_says_there() {
        Plant plant = Plant.of(Plants.read(Plants.statedText("32 m", "11 mm", "60 mm", "")
                .replace("voltage: 22 V", "voltage: 45 V")
                .replace("inductance-between-leads: 0.4 mH", "inductance-between-leads: 8 mH")));
        OperatingPoint o = plant.solve().running().get(0).operatingPoint();
        assertThat(o.otherSpeeds()).hasSize(1);
        OperatingPoint.StableSpeed fast = o.otherSpeeds().get(0);
        assertThat(fast.phaseCurrent()).isGreaterThan(1.5 * o.phaseCurrent());
        double volts = plant.numbers().battery().restingVoltage();
        assertThat(fast.directPower()).isGreaterThan(volts * fast.directCurrent());
        assertThat(fast.copperLoss())
                .isCloseTo(
                        3 * plant.numbers().alternator().phaseResistance() * fast.phaseCurrent() * fast.phaseCurrent(),
                        within(1e-6));
        Crossing last = o.crossings().get(o.crossings().size() - 1);
        assertThat(fast.directPower() + fast.idleLoss())
                .as("no more than the shaft's")
                .isLessThan(last.torque() * fast.speed());
    }

    @Test
    void a_jet_too_weak_to_start_the_wheel_says_so() {
        Plant plant = Plant.of(Plants.read(Plants.statedText("24 m", "3 mm", "60 mm", "")
                .replace("no-load-loss: { power: 10 W", "no-load-loss: { power: 60 W")));
        OperatingPoint o = plant.solve().running().get(0).operatingPoint();
        assertThat(o.hold()).isEqualTo(Hold.DOES_NOT_START);
        assertThat(o.loaded()).isFalse();
        assertThat(o.crossings()).isEmpty();
        assertThat(o.directCurrent()).isZero();
    }

    /** With a window that reaches everywhere, more head gives a tracking plant no less power: it may always brake more. */
    @Property(tries = 60)
    void more_head_never_gives_a_tracking_plant_less_power(@ForAll @DoubleRange(min = 15, max = 60) double head) {
        double low = Plant.of(Plants.stated(head + " m", "12 mm", "200 mm", TRACKING))
                .solve()
                .running()
                .get(0)
                .operatingPoint()
                .energy()
                .at(Stage.REGULATOR);
        double high = Plant.of(Plants.stated(1.05 * head + " m", "12 mm", "200 mm", TRACKING))
                .solve()
                .running()
                .get(0)
                .operatingPoint()
                .energy()
                .at(Stage.REGULATOR);
        assertThat(high).isGreaterThanOrEqualTo(low * (1 - 1e-3));
    }

    @Test
    void a_tracking_regulator_gets_at_least_what_any_voltage_of_its_window_gives() {
        Plant plant = stated(TRACKING);
        Running running = plant.solve().running().get(0);
        double tracked = running.operatingPoint().energy().at(Stage.REGULATOR);
        ElectricSide machine = new ElectricSide(plant.numbers());
        RunnerCharacteristic wheel = new RunnerCharacteristic(
                plant.numbers().runner(), plant.numbers().water().density(), running.water());
        double best = 0;
        for (double v = 30; v <= 60; v += 0.25) {
            TorqueCurve curve =
                    machine.curve(machine.bus(v, plant.numbers().busResistance().bridgeToRegulator()));
            best = Math.max(
                    best,
                    OperatingPointSolver.of(plant.numbers(), running.water(), wheel, curve, null)
                            .energy()
                            .at(Stage.REGULATOR));
        }
        assertThat(tracked).isGreaterThanOrEqualTo(best * (1 - 1e-4));
    }

    @Test
    void units_do_not_matter() {
        Running metric = Plant.of(Plants.stated("30.48 m", "12.7 mm", "203.2 mm", BATTERY))
                .solve()
                .running()
                .get(0);
        Running inches = Plant.of(Plants.stated("100 ft", "0.5 in", "8 in", BATTERY))
                .solve()
                .running()
                .get(0);
        assertThat(inches.water().flow()).isCloseTo(metric.water().flow(), within(1e-14));
        assertThat(inches.operatingPoint().speed())
                .isCloseTo(metric.operatingPoint().speed(), within(1e-9));
        assertThat(inches.operatingPoint().batteryPower())
                .isCloseTo(metric.operatingPoint().batteryPower(), within(1e-7));
    }

    @Property(tries = 40, shrinking = ShrinkingMode.OFF)
    void solving_twice_gives_the_same_numbers(@ForAll("plants") Design design) {
        Plant plant = Plant.of(design);
        Plant again = Plant.of(design);
        Cases one = plant.solve();
        Cases other = again.solve();
        assertThat(other.running()).isEqualTo(one.running());
        assertThat(other.batteryFull()).isEqualTo(one.batteryFull());
        assertThat(again.assumptions()).isEqualTo(plant.assumptions());
    }

    @Test
    void a_changed_part_is_solved_as_if_designed_so() {
        Plant wide =
                stated(BATTERY).withRunner(stated(BATTERY).numbers().runner().withPitchDiameter(0.25));
        Plant designed = Plant.of(Plants.stated("30 m", "12 mm", "250 mm", BATTERY));
        assertThat(wide.solve().running()).isEqualTo(designed.solve().running());
    }

    private static Plant stated(String regulator) {
        return Plant.of(Plants.stated("30 m", "12 mm", "200 mm", regulator));
    }
}
