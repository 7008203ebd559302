package org.leat.readings;

import java.util.Arrays;
import org.leat.electrics.ShortedLeads;
import org.leat.electrics.UnequalPhases;
import org.leat.readings.MotorBench.Fault;

/**
 * A motor on the bench with one fault, or none, and the meters it is read by: what each of them shows. Numbers by logarithm, so that
 * none of them ever falls below nil.
 */
final class FaultyMotor {

    /** Places of the parameters. */
    static final int VOLTS = 0;

    static final int RESISTANCE = 1;
    static final int INDUCTANCE = 2;
    static final int VOLTMETER = 3;
    static final int COUNTER = 4;
    static final int CLAMP = 5;
    static final int OHMMETER = 6;
    static final int WARMTH = 7;
    static final int DRAG = 8;
    static final int SIZE = 9;
    static final int PARAMETERS = 10;

    private static final double ROOT3 = Math.sqrt(3);
    /** Of a phase that is broken, times its own. */
    private static final double BROKEN = 1e6;
    /** Drop of one diode at the small current of a meter, V. */
    private static final double METER_DROP = 0.5;

    private final double[] at;
    private final Fault fault;
    private final int variant;
    private final double pairs;
    private final double highest;
    private final double[] emf = {1, 1, 1};
    private final double[] ohms = {1, 1, 1};

    /**
     * Reads the parameters.
     *
     * @param variant lead, or the way, of the fault
     * @param pairs of poles that there are
     * @param highest frequency read, Hz
     */
    FaultyMotor(double[] at, Fault fault, int variant, double pairs, double highest) {
        this.at = at;
        this.fault = fault;
        this.variant = variant;
        this.pairs = pairs;
        this.highest = highest;
        switch (fault) {
            case PHASE_WEAK -> emf[variant] = 1 - share();
            case SHORTED_TURNS -> {
                emf[variant] = 1 - share();
                ohms[variant] = 1 - share();
            }
            case PHASE_REVERSED -> emf[variant] = -1;
            case PHASE_OPEN -> ohms[variant] = BROKEN;
            case JOINT_BAD -> ohms[variant] = 1 + size();
            default -> {
                // all phases alike
            }
        }
    }

    double size() {
        return Math.exp(at[SIZE]);
    }

    /** A share that never reaches one. */
    private double share() {
        return share(size());
    }

    static double share(double size) {
        return -Math.expm1(-size);
    }

    private boolean is(Fault one) {
        return fault == one;
    }

    double perSpeed() {
        return Math.exp(at[VOLTS]);
    }

    double phaseResistance() {
        return Math.exp(at[RESISTANCE]);
    }

    double phaseInductance() {
        return Math.exp(at[INDUCTANCE]);
    }

    /** Periods of a turn of the shaft. */
    double periods() {
        return pairs * (is(Fault.GEAR_OR_SLIP) ? variant == 0 ? size() : 1 / size() : 1);
    }

    /** {@return true speed for one that was read, rad/s} */
    double speed(double read) {
        double factor = is(Fault.SPEED_TWICE_OR_HALF) ? variant == 0 ? 2 : 0.5 : 1;
        return read / factor / Math.exp(at[COUNTER]);
    }

    /** {@return speed of the shaft at a frequency, rad/s} */
    double speedAt(double frequency) {
        return 2 * Math.PI * frequency / periods();
    }

    /** {@return frequency at a true speed, Hz} */
    double frequency(double speed) {
        return periods() * speed / (2 * Math.PI);
    }

    private boolean open(int pair) {
        return is(Fault.PHASE_OPEN) && (pair == variant || (pair + 1) % 3 == variant);
    }

    /** True volts of a pair at a speed, rms. */
    private double between(int pair, double speed) {
        return open(pair) ? 0 : perSpeed() / ROOT3 * speed * UnequalPhases.between(emf[pair], emf[(pair + 1) % 3]);
    }

    /** {@return what the voltmeter shows of a pair} */
    double volts(int pair, double speed) {
        double shown = switch (fault) {
            case PEAK_FOR_RMS -> Math.sqrt(2);
            case STAR_POINT_FOR_LEADS -> 1 / ROOT3;
            case METER_LOSES_WITH_FREQUENCY -> {
                double of = frequency(speed) / highest;
                yield Math.max(0.05, 1 - share() * of * of);
            }
            default -> 1;
        };
        return between(pair, speed) * shown * Math.exp(at[VOLTMETER]);
    }

    /** {@return direct volts behind a bridge with a capacitor} */
    double bridgeVolts(double speed) {
        double most = Math.max(between(0, speed), Math.max(between(1, speed), between(2, speed)));
        return Math.max(0, Math.sqrt(2) * most - 2 * METER_DROP);
    }

    /** {@return what the ohmmeter shows of a pair, the winding at so many times its resistance at 20 °C} */
    double ohms(int pair, double warmer) {
        double added = is(Fault.TEST_LEADS_COUNTED) ? size() : 0;
        return (phaseResistance() * warmer * (ohms[pair] + ohms[(pair + 1) % 3]) + added) * Math.exp(at[OHMMETER]);
    }

    /** {@return resistance of a pair at 20 °C by four wires, its meter sound, Ω} */
    double fourWires(int pair) {
        return phaseResistance() * (ohms[pair] + ohms[(pair + 1) % 3]);
    }

    /** {@return what the clamp shows of the leads A, B, C, all shorted} */
    double[] amps(double speed, double warmer) {
        double each = perSpeed() / ROOT3 * speed;
        double resistance = phaseResistance() * warmer * Math.exp(at[WARMTH]);
        double[] emfs = new double[3];
        double[] resistances = new double[3];
        for (int x = 0; x < 3; x++) {
            emfs[x] = emf[x] * each;
            resistances[x] = ohms[x] * resistance;
        }
        double shown = (is(Fault.CLAMP_TWICE) ? 2 : 1) * Math.exp(at[CLAMP]);
        return Arrays.stream(
                        ShortedLeads.currents(emfs, resistances, 2 * Math.PI * frequency(speed) * phaseInductance()))
                .map(i -> i * shown)
                .toArray();
    }

    /** {@return volts over speed as one would have stated them before the fault, V·s} */
    double statedVolts() {
        return perSpeed()
                * switch (fault) {
                    case MAGNETS_WEAK -> 1 / (1 - share());
                    case STAR_FOR_DELTA -> variant == 0 ? ROOT3 : 1 / ROOT3;
                    default -> 1;
                };
    }

    /** What star or delta makes of resistance and inductance. */
    private double connected() {
        return is(Fault.STAR_FOR_DELTA) ? variant == 0 ? 3 : 1.0 / 3 : 1;
    }

    /** {@return resistance between leads at 20 °C as one would have stated it, Ω} */
    double statedResistance() {
        return 2 * phaseResistance() * connected();
    }

    /** {@return inductance between leads as one would have stated it, H} */
    double statedInductance() {
        return 2 * phaseInductance() * connected();
    }

    /** {@return torque of iron and friction over what is stated} */
    double drag() {
        return Math.exp(at[DRAG]) * (is(Fault.BEARING_DRAGS) ? 1 + size() : 1);
    }
}
