package org.leat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;
import org.leat.readings.MotorBench.Cannot;
import org.leat.readings.MotorBench.Kind;
import org.leat.readings.MotorBench.Why;

/**
 * The readings of a bench as numbers, each with its uncertainty; what cannot be is left out and told. Of a meter's uncertainty 0.8 is
 * the same in all its readings and 0.6 each reading's own. Usual meters and the spread of sound windings are common practice.
 */
final class BenchTerms {

    static final double SHARED = 0.8;
    private static final double OWN = 0.6;

    /** Standard uncertainties of usual meters, shares. */
    private static final double VOLTS = 0.008;

    private static final double AMPS = 0.015;
    private static final double SPEED = 0.005;
    private static final double OHMS = 0.01;
    private static final double HERTZ = 0.002;
    private static final double BRIDGE = 0.01;

    /** What sound pairs differ by, standard. */
    private static final double UNLIKE_VOLTS = 0.006;

    private static final double UNLIKE_OHMS = 0.012;
    /** What sine and one inductance leave out, standard. */
    private static final double SHORTED = 0.015;
    /** Of a room whose temperature nobody read, and of one that was read, standard, share of the resistance. */
    private static final double ROOM = 0.03;

    private static final double ROOM_READ = 0.004;
    /** Of the live pair, what a meter may still show across a lead that carries nothing. */
    private static final double NEARLY_DEAD = 0.15;

    /** Frequency over speed beyond which there is no such machine, unless somebody counted as many. Common practice. */
    private static final double MOST_POLE_PAIRS = 100;
    /** Volts between leads at an angular speed, V·s: five volts a turn in a minute. Common practice: slow ring generators make four. */
    private static final double MOST_VOLTS = 5 * 30 / Math.PI;

    private static final double LEAST_VOLTS = 0.02;
    private static final double LEAST_AMPS = 0.02;
    private static final double LEAST_OHMS = 1e-4;

    private final BenchReadings file;
    private final List<BenchTerm> terms = new ArrayList<>();
    private final List<Cannot> cannot = new ArrayList<>();
    private final double volts;
    private final double amps;
    private final double speed;
    private final double ohms;
    private final @Nullable Integer counted;

    BenchTerms(BenchReadings file, @Nullable Integer counted) {
        this.file = file;
        this.counted = counted;
        BenchReadings.Meters meters = file.meters();
        this.volts = share(meters == null ? null : meters.volts(), VOLTS);
        this.amps = share(meters == null ? null : meters.amps(), AMPS);
        this.speed = share(meters == null ? null : meters.speed(), SPEED);
        this.ohms = share(meters == null ? null : meters.resistance(), OHMS);
        List<double[]> rows =
                file.readings().stream().map(BenchReadings.Row::volts).toList();
        long voltRows =
                rows.stream().filter(v -> v.length == 3 && present(v) > 1).count();
        long ohmRows =
                file.readings().stream().filter(r -> present(r.ohms()) > 1).count();
        for (int i = 0; i < file.readings().size(); i++) {
            row(file.readings().get(i), "/readings[" + i + "]", Math.max(1, voltRows), Math.max(1, ohmRows));
        }
    }

    private static double share(@Nullable Quantity<?> told, double usual) {
        return told == null ? usual : Si.of(told) / 2;
    }

    List<BenchTerm> terms() {
        return terms;
    }

    List<Cannot> cannot() {
        return cannot;
    }

    double voltmeter() {
        return SHARED * volts;
    }

    double counter() {
        return SHARED * speed;
    }

    double clamp() {
        return SHARED * amps;
    }

    double ohmmeter() {
        return Math.hypot(SHARED * ohms, room());
    }

    double speedShare() {
        return speed;
    }

    private double room() {
        boolean read = file.temperature() != null
                || file.readings().stream().allMatch(r -> present(r.ohms()) == 0 || r.temperature() != null);
        return read ? ROOM_READ : ROOM;
    }

    private static int present(double[] values) {
        return (int) Arrays.stream(values).filter(v -> !Double.isNaN(v)).count();
    }

    /** Own uncertainty of a reading, a share of it. */
    private static double own(@Nullable Measured<?> read, double usual) {
        return OWN
                * (read == null || read.plusMinusSi() <= 0 || read.si() <= 0
                        ? usual
                        : read.plusMinusSi() / 2 / read.si());
    }

    private double warmer(BenchReadings.Row row) {
        Quantity<?> told = row.temperature() == null ? file.temperature() : row.temperature();
        return told == null
                ? 1
                : AlternatorNumbers.copper(Si.of(told)) / AlternatorNumbers.copper(Celsius.toKelvin(20));
    }

    private void row(BenchReadings.Row row, String path, long voltRows, long ohmRows) {
        if (row.time() != null) {
            return;
        }
        double[] resistances = row.ohms();
        if (present(resistances) > 0) {
            resistances(row, path, ohmRows);
            return;
        }
        Measured<?> read = row.speed();
        Measured<?> periods = row.frequency();
        if (read == null && counted == null) {
            cannot.add(new Cannot(path + "/frequency", Why.NO_POLE_PAIRS, periods == null ? 0 : periods.si()));
            return;
        }
        if (read != null && noSuchMachine(row, read.si(), path)) {
            return;
        }
        ToDoubleFunction<FaultyMotor> at;
        double ownSpeed;
        if (read != null) {
            at = m -> m.speed(read.si());
            ownSpeed = own(read, speed);
            if (periods != null) {
                terms.add(new BenchTerm(
                        Kind.FREQUENCY,
                        -1,
                        path + "/frequency",
                        periods.si(),
                        periods.si() * Math.hypot(ownSpeed, told(periods, HERTZ)),
                        m -> m.frequency(m.speed(read.si()))));
            }
        } else {
            double hertz = periods == null ? 0 : periods.si();
            at = m -> m.speedAt(hertz);
            ownSpeed = told(periods, HERTZ);
        }
        volts(row, path, at, ownSpeed, voltRows);
        Measured<?> bridge = row.bridgeVolts();
        if (bridge != null) {
            double share = Math.hypot(told(bridge, BRIDGE), ownSpeed);
            terms.add(new BenchTerm(
                    Kind.BRIDGE_VOLTS,
                    -1,
                    path + "/bridge-volts",
                    bridge.si(),
                    Math.hypot(share * bridge.si(), 0.2),
                    m -> m.bridgeVolts(at.applyAsDouble(m))));
        }
        double[] shorted = row.amps();
        slips(shorted, path + "/amps-");
        if (present(shorted) == 3 && noTriangle(shorted, false)) {
            int most = largest(shorted);
            cannot.add(new Cannot(path + "/amps-" + "abc".charAt(most), Why.NO_SUCH_AMPS, shorted[most]));
            return;
        }
        for (int x = 0; x < 3; x++) {
            if (!Double.isNaN(shorted[x])) {
                int lead = x;
                double share = Math.hypot(
                        Math.hypot(own(new Measured<?>[] {row.ampsA(), row.ampsB(), row.ampsC()}[x], amps), SHORTED),
                        ownSpeed);
                terms.add(new BenchTerm(
                        Kind.AMPS,
                        x,
                        path + "/amps-" + "abc".charAt(x),
                        shorted[x],
                        Math.hypot(share * shorted[x], LEAST_AMPS),
                        m -> m.amps(at.applyAsDouble(m), 1)[lead]));
            }
        }
    }

    /** Columns changed with each other give hundreds of pole pairs, or thousands of volts: neither speed nor reading is to be believed. */
    private boolean noSuchMachine(BenchReadings.Row row, double speed, String path) {
        Measured<?> periods = row.frequency();
        double pairs = periods == null ? 0 : 2 * Math.PI * periods.si() / speed;
        if (pairs > MOST_POLE_PAIRS && (counted == null || pairs > 2.0 * counted)) {
            cannot.add(new Cannot(path + "/frequency", Why.NO_SUCH_POLE_PAIRS, pairs));
            return true;
        }
        double[] read = row.volts();
        int most = largest(read);
        if (read[most] > MOST_VOLTS * speed) {
            cannot.add(new Cannot(path + "/volts-" + pair(most), Why.NO_SUCH_VOLTS_AT_SPEED, read[most]));
            return true;
        }
        Measured<?> bridge = row.bridgeVolts();
        if (bridge != null && bridge.si() > Math.sqrt(2) * MOST_VOLTS * speed) {
            cannot.add(new Cannot(path + "/bridge-volts", Why.NO_SUCH_VOLTS_AT_SPEED, bridge.si()));
            return true;
        }
        return false;
    }

    private static double told(@Nullable Measured<?> read, double usual) {
        return read == null || read.plusMinusSi() <= 0 || read.si() <= 0 ? usual : read.plusMinusSi() / 2 / read.si();
    }

    private static String pair(int pair) {
        return switch (pair) {
            case 0 -> "ab";
            case 1 -> "bc";
            default -> "ca";
        };
    }

    private void volts(
            BenchReadings.Row row, String path, ToDoubleFunction<FaultyMotor> at, double ownSpeed, long rows) {
        double[] read = row.volts();
        slips(read, path + "/volts-");
        if (present(read) > 0 && read[largest(read)] <= LEAST_VOLTS) {
            int first = largest(read);
            cannot.add(new Cannot(path + "/volts-" + pair(first), Why.NO_VOLTS, read[first]));
            return;
        }
        if (present(read) == 3 && noTriangle(read, true)) {
            cannot.add(new Cannot(path + "/volts-" + pair(largest(read)), Why.NO_SUCH_VOLTS, read[largest(read)]));
            return;
        }
        double most = read[largest(read)];
        Measured<?>[] told = {row.voltsAb(), row.voltsBc(), row.voltsCa()};
        double own = OWN * volts;
        for (Measured<?> one : told) {
            own = one == null || one.plusMinusSi() <= 0 ? own : own(one, volts);
        }
        spread(
                read,
                path + "/volts-",
                Kind.VOLTS,
                Kind.VOLTS_OF_PAIR,
                Math.hypot(Math.hypot(own / Math.sqrt(Math.max(1, present(read))), ownSpeed) * most, LEAST_VOLTS),
                Math.hypot(Math.hypot(own, UNLIKE_VOLTS * Math.sqrt((double) rows)) * most, LEAST_VOLTS),
                (m, pair) -> m.volts(pair, at.applyAsDouble(m)));
    }

    private void resistances(BenchReadings.Row row, String path, long rows) {
        double[] read = row.ohms();
        slips(read, path + "/resistance-");
        if (present(read) == 3 && noTriangle(read, false)) {
            int odd = largest(read);
            cannot.add(new Cannot(path + "/resistance-" + pair(odd), Why.NO_SUCH_RESISTANCES, read[odd]));
            return;
        }
        double most = read[largest(read)];
        Measured<?>[] told = {row.resistanceAb(), row.resistanceBc(), row.resistanceCa()};
        double own = OWN * ohms;
        for (Measured<?> one : told) {
            own = one == null || one.plusMinusSi() <= 0 ? own : own(one, ohms);
        }
        double warmer = warmer(row);
        spread(
                read,
                path + "/resistance-",
                Kind.RESISTANCE,
                Kind.RESISTANCE,
                Math.hypot(own * most / Math.sqrt(Math.max(1, present(read))), LEAST_OHMS),
                Math.hypot(Math.hypot(own, UNLIKE_OHMS * Math.sqrt((double) rows)) * most, LEAST_OHMS),
                (m, pair) -> m.ohms(pair, warmer));
    }

    /** What a motor shows of a pair. */
    private interface OfPair {
        double of(FaultyMotor motor, int pair);
    }

    /** The mean of the pairs read, and how far each is from it. */
    private void spread(double[] read, String path, Kind mean, Kind each, double ofMean, double ofEach, OfPair shown) {
        int[] there = java.util.stream.IntStream.range(0, 3)
                .filter(p -> !Double.isNaN(read[p]))
                .toArray();
        if (there.length == 0) {
            return;
        }
        double middle = Arrays.stream(there).mapToDouble(p -> read[p]).average().orElse(0);
        ToDoubleFunction<FaultyMotor> ofAll = m ->
                Arrays.stream(there).mapToDouble(p -> shown.of(m, p)).average().orElse(0);
        terms.add(new BenchTerm(mean, there.length == 1 ? there[0] : -1, path + pair(there[0]), middle, ofMean, ofAll));
        if (there.length > 1) {
            for (int p : there) {
                terms.add(new BenchTerm(
                        each,
                        p,
                        path + pair(p),
                        read[p] - middle,
                        ofEach,
                        m -> shown.of(m, p) - ofAll.applyAsDouble(m)));
            }
        }
    }

    private static int largest(double[] values) {
        int largest = 0;
        for (int i = 1; i < values.length; i++) {
            largest = Double.isNaN(values[largest]) || values[i] > values[largest] ? i : largest;
        }
        return largest;
    }

    /** Whether one pair has more than the other two allow; a lead that carries nothing leaves two pairs near nil. */
    private static boolean noTriangle(double[] read, boolean nilAllowed) {
        int largest = largest(read);
        double one = read[(largest + 1) % 3];
        double other = read[(largest + 2) % 3];
        boolean open = nilAllowed && Math.max(one, other) < NEARLY_DEAD * read[largest];
        return !open && read[largest] > 1.05 * (one + other);
    }

    /** One pair ten or a thousand times the other two, which agree: it is left out. */
    private void slips(double[] read, String path) {
        for (int p = 0; p < 3; p++) {
            double one = read[(p + 1) % 3];
            double other = read[(p + 2) % 3];
            if (present(read) == 3 && Math.abs(one - other) < 0.1 * Math.max(one, other)) {
                Why why = slip(read[p] / one);
                if (why != Why.ALONE) {
                    String which = path.endsWith("amps-") ? "abc".substring(p, p + 1) : pair(p);
                    cannot.add(new Cannot(path + which, why, read[p]));
                    read[p] = Double.NaN;
                    return;
                }
            }
        }
    }

    /** {@return the slip that a factor tells; {@code ALONE} where none} */
    static Why slip(double factor) {
        if (Math.abs(factor / 10 - 1) < 0.15) {
            return Why.TEN_TIMES;
        }
        if (Math.abs(factor * 10 - 1) < 0.15) {
            return Why.A_TENTH;
        }
        if (Math.abs(factor / 1000 - 1) < 0.15) {
            return Why.THOUSAND_TIMES;
        }
        return Math.abs(factor * 1000 - 1) < 0.15 ? Why.A_THOUSANDTH : Why.ALONE;
    }
}
