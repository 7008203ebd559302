package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Fresh points, drawn by a fixed seed, run on the circuit simulator itself. Skipped where it is not installed. */
class CircuitSimulatorTest {

    private static final DiodeLine DIODE = CircuitPoint.DIODE;

    @TempDir
    Path folder;

    @BeforeEach
    void the_simulator_is_installed() {
        assumeTrue(CircuitSimulator.installed(), "ngspice is not on the path: fresh points were NOT simulated");
    }

    /** A random machine at a random speed on a random load, its line EMF such that v = V'/(√3 E). */
    private record Draw(BatteryClamp bus, double speed, DcLoad load) {

        static Draw battery(Random random, double least, double most) {
            double v = least + (most - least) * random.nextDouble();
            double volts = new double[] {12.8, 25.6, 51.2}[random.nextInt(3)];
            double ohms = 0.06 * random.nextDouble();
            double emf = (volts + 2 * DIODE.threshold()) / Math.sqrt(3) / v;
            return machine(random, emf, volts, ohms, new DcLoad.Battery(volts, ohms));
        }

        static Draw resistor(Random random) {
            double ohms = 0.5 * Math.pow(20, random.nextDouble());
            return machine(random, 15 + 30 * random.nextDouble(), 0, ohms, new DcLoad.Resistor(ohms));
        }

        private static Draw machine(Random random, double emf, double volts, double ohms, DcLoad load) {
            int polePairs = 6 + random.nextInt(20);
            double speed = 20 + 90 * random.nextDouble();
            double inductance = 5e-5 * Math.pow(40, random.nextDouble());
            double resistance = 0.04 * Math.pow(20, random.nextDouble());
            AlternatorConstants machine =
                    new AlternatorConstants(polePairs, emf / (polePairs * speed), resistance, inductance);
            return new Draw(new BatteryClamp(machine, 0, DIODE, volts, ohms), speed, load);
        }

        Map<String, Double> simulate(Path folder, BridgeFault fault) {
            AlternatorConstants m = bus.alternator();
            double settle = Math.min(12 * m.phaseInductance() / m.phaseResistance(), 0.4);
            return CircuitSimulator.run(
                    folder,
                    CircuitSimulator.netlist(m, speed, load, fault, Math.max(settle, 4 / m.frequency(speed)), 1200));
        }
    }

    private static double phaseRms(Map<String, Double> s) {
        return Math.sqrt((s.get("ia2_avg") + s.get("ib2_avg") + s.get("ic2_avg")) / 3);
    }

    @Test
    void fresh_points_agree_with_the_averaged_model() {
        Random random = new Random(2031);
        StringBuilder out = new StringBuilder("fresh points against ngspice, deviation in %\n");
        double[] worst = new double[6];
        for (int n = 0; n < 14; n++) {
            Draw d = n % 4 == 3
                    ? Draw.resistor(random)
                    : n % 4 == 2 ? Draw.battery(random, 0.85, 0.975) : Draw.battery(random, 0.1, 0.9);
            Map<String, Double> s = d.simulate(folder, BridgeFault.NONE);
            BridgeOperatingPoint ours = d.bus().at(d.speed());
            double current = s.get("idc_avg");
            double[] off = {
                100 * (ours.directCurrent() / current - 1),
                100 * (ours.phaseCurrentRms() / phaseRms(s) - 1),
                100 * (ours.airGapPower() / s.get("pemf_avg") - 1)
            };
            out.append(String.format(
                    Locale.ROOT,
                    "%8.3f A  current %+5.2f  phase rms %+5.2f  torque %+5.2f  %s%n",
                    current,
                    off[0],
                    off[1],
                    off[2],
                    ours.mode()));
            // below 0.05 A the simulator's own leakage counts
            for (int k = 0; k < 3 && current > 0.05; k++) {
                int at = k + (current > 3 ? 0 : 3);
                worst[at] = Math.max(worst[at], Math.abs(off[k]));
            }
        }
        out.append(String.format(
                Locale.ROOT,
                "worst above 3 A: current %.2f  phase rms %.2f  torque %.2f; below: %.2f  %.2f  %.2f",
                worst[0],
                worst[1],
                worst[2],
                worst[3],
                worst[4],
                worst[5]));
        System.out.println(out);
        assertThat(worst[0]).isBetween(1e-6, 1.0);
        assertThat(worst[1]).isLessThan(2);
        assertThat(worst[2]).isLessThan(2);
        assertThat(worst[3]).isLessThan(3);
        assertThat(worst[4]).isLessThan(3);
        assertThat(worst[5]).isLessThan(3);
    }

    @Test
    void faults_agree_with_time_stepping() {
        Random random = new Random(77);
        StringBuilder out = new StringBuilder("faults, time stepping against ngspice, deviation in %\n");
        for (BridgeFault fault : new BridgeFault[] {
            BridgeFault.PHASE_OPEN, BridgeFault.DIODE_OPEN, BridgeFault.DIODE_SHORT, BridgeFault.DIODE_SHORT
        }) {
            Draw d = Draw.battery(random, 0.3, 0.75);
            Map<String, Double> s = d.simulate(folder, fault);
            BridgeTimeStepper stepper =
                    new BridgeTimeStepper(d.bus().alternator(), 0, DIODE, d.speed(), d.load(), fault, 1440);
            stepper.run(60);
            BridgeWaveform w = stepper.measure(6);
            double rms = Math.sqrt(Math.max(s.get("ia2_avg"), Math.max(s.get("ib2_avg"), s.get("ic2_avg"))));
            out.append(String.format(
                    Locale.ROOT,
                    "%-11s %8.3f A  current %+5.2f  phase rms %+5.2f  torque %+5.2f%n",
                    fault,
                    s.get("idc_avg"),
                    100 * (w.directCurrent() / s.get("idc_avg") - 1),
                    100 * (w.phaseCurrentRms() / rms - 1),
                    100 * (w.airGapPower() / s.get("pemf_avg") - 1)));
            assertThat(w.directCurrent() / s.get("idc_avg"))
                    .as("%s %s", fault, d)
                    .isCloseTo(1, within(0.05));
            assertThat(w.phaseCurrentRms() / rms).as("%s %s", fault, d).isCloseTo(1, within(0.05));
            assertThat(w.airGapPower() / s.get("pemf_avg"))
                    .as("%s %s", fault, d)
                    .isCloseTo(1, within(0.05));
        }
        System.out.print(out);
    }
}
