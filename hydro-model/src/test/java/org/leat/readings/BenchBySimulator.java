package org.leat.readings;

import java.util.Locale;
import java.util.Random;
import org.jspecify.annotations.Nullable;
import org.leat.file.Filled;
import org.leat.file.RecordReader;

/**
 * A motor on a bench of our own making: readings by the phasors of its phases, written out here once more and not by the laws that are
 * fitted, with noise of its meters, as the text of a file.
 */
final class BenchBySimulator {

    static final double RPM = Math.PI / 30;

    final Random random;
    double perSpeed = 0.32;
    double phaseOhms = 0.21;
    double phaseHenry = 1.1e-3;
    int pairs = 15;

    @Nullable
    Integer told = 15;

    final double[] emf = {1, 1, 1};
    final double[] ohms = {1, 1, 1};
    double voltsShown = 1;
    double lostAtHundredHertz;
    double speedShown = 1;
    double ampsShown = 1;
    double testLeads;
    double gear = 1;
    double inertia = 0.04;
    double constant = 0.11;
    double growing = 0.0015;
    boolean noise = true;
    boolean shorted = true;
    boolean coasting = true;
    boolean bridge;

    BenchBySimulator(long seed) {
        this.random = new Random(seed);
    }

    private double meter(double share) {
        return noise ? 1 + share * random.nextGaussian() : 1;
    }

    private static String number(double value) {
        return String.format(Locale.ROOT, "%.5g", value);
    }

    private double pair(int p) {
        double a = emf[p];
        double b = emf[(p + 1) % 3];
        // e_a − e_b with e_b 120° behind
        double re = a - b * Math.cos(2 * Math.PI / 3);
        double im = b * Math.sin(2 * Math.PI / 3);
        return Math.hypot(re, im) / Math.sqrt(3) * perSpeed;
    }

    /** Of lead A: two loops, A to B and B to C, solved by determinants. */
    private double amps(double speed) {
        double x = pairs * gear * speed * phaseHenry;
        double[] r = {phaseOhms * 1.03 * ohms[0], phaseOhms * 1.03 * ohms[1], phaseOhms * 1.03 * ohms[2]};
        double each = perSpeed / Math.sqrt(3) * speed;
        double[][] e = new double[3][];
        for (int p = 0; p < 3; p++) {
            double angle = -2 * Math.PI / 3 * p;
            e[p] = new double[] {emf[p] * each * Math.cos(angle), emf[p] * each * Math.sin(angle)};
        }
        // (Za + Zb) i − Zb j = Ea − Eb; −Zb i + (Zb + Zc) j = Eb − Ec
        double[] ab = {e[0][0] - e[1][0], e[0][1] - e[1][1]};
        double[] bc = {e[1][0] - e[2][0], e[1][1] - e[2][1]};
        double[] zab = {r[0] + r[1], 2 * x};
        double[] zb = {r[1], x};
        double[] zbc = {r[1] + r[2], 2 * x};
        double[] above = plus(times(ab, zbc), times(bc, zb));
        double[] square = times(zb, zb);
        double[] below = plus(times(zab, zbc), new double[] {-square[0], -square[1]});
        return Math.hypot(above[0], above[1]) / Math.hypot(below[0], below[1]);
    }

    private static double[] times(double[] a, double[] b) {
        return new double[] {a[0] * b[0] - a[1] * b[1], a[0] * b[1] + a[1] * b[0]};
    }

    private static double[] plus(double[] a, double[] b) {
        return new double[] {a[0] + b[0], a[1] + b[1]};
    }

    String yaml() {
        StringBuilder out = new StringBuilder("format: 1\n");
        if (told != null) {
            out.append("pole-pairs: ").append(told).append('\n');
        }
        out.append("temperature: 20 °C\n");
        if (coasting) {
            out.append("inertia: 0.04 kg·m² ± 0.004 kg·m²\n");
        }
        out.append("readings:\n");
        double voltmeter = meter(0.0064);
        double counter = meter(0.004);
        double clamp = meter(0.012);
        double ohmmeter = meter(0.008);
        double[] unlike = {meter(0.005), meter(0.005), meter(0.005)};
        double[] unlikeOhms = {meter(0.01), meter(0.01), meter(0.01)};
        for (double rpm : new double[] {150, 300, 500}) {
            double speed = rpm * RPM;
            double hertz = pairs * gear * speed / (2 * Math.PI);
            double shown = voltsShown * (1 - lostAtHundredHertz * hertz * hertz / 1e4);
            out.append("  - { speed: ").append(number(rpm * speedShown * counter * meter(0.003)));
            out.append(" rpm, frequency: ").append(number(hertz * meter(0.001)));
            for (int p = 0; p < 3; p++) {
                out.append(" , volts-".replace(" ,", p == 0 ? " Hz," : " V,"))
                        .append(new String[] {"ab", "bc", "ca"}[p]);
                out.append(": ").append(number(pair(p) * speed * shown * voltmeter * unlike[p] * meter(0.003)));
            }
            out.append(" V }\n");
        }
        if (bridge) {
            double most = Math.max(pair(0), Math.max(pair(1), pair(2)));
            out.append("  - { speed: ")
                    .append(number(500 * speedShown * counter))
                    .append(" rpm, bridge-volts: ");
            out.append(number(Math.sqrt(2) * most * 500 * RPM - 1)).append(" V }\n");
        }
        out.append("  - { resistance-ab: ");
        for (int p = 0; p < 3; p++) {
            double value = phaseOhms * (ohms[p] + ohms[(p + 1) % 3]) + testLeads;
            out.append(p == 0 ? "" : p == 1 ? ", resistance-bc: " : ", resistance-ca: ");
            out.append(number(value * ohmmeter * unlikeOhms[p] * meter(0.003))).append(" Ω");
        }
        out.append(" }\n");
        if (shorted) {
            for (double rpm : new double[] {60, 300}) {
                out.append("  - { speed: ")
                        .append(number(rpm * speedShown * counter))
                        .append(" rpm, amps-a: ");
                out.append(number(amps(rpm * RPM) * ampsShown * clamp * meter(0.008)))
                        .append(" A }\n");
            }
        }
        if (coasting) {
            double speed = 500 * RPM;
            double kappa = growing / inertia;
            for (double time : new double[] {0, 3, 6, 9}) {
                double at = (speed + constant / growing) * Math.exp(-kappa * time) - constant / growing;
                out.append("  - { time: ").append(number(time)).append(" s, speed: ");
                out.append(number(at / RPM * speedShown * counter * meter(0.003)))
                        .append(" rpm }\n");
            }
        }
        return out.toString();
    }

    BenchReadings readings() {
        Filled<BenchReadings> read = RecordReader.read(BenchReadings.class, yaml(), "bench.yaml");
        BenchReadings record = read.record();
        if (record == null) {
            throw new AssertionError(read.problems() + "\n" + yaml());
        }
        return record;
    }

    MotorBench result() {
        return MotorBench.of(readings(), null);
    }
}
