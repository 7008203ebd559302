package org.leat.electrics;

import java.util.function.DoubleConsumer;
import org.jspecify.annotations.Nullable;
import org.leat.law.Physical;

/**
 * Alternator and bridge stepped in time, for what the averaged model does not reach: faults, capacitors, chokes, a
 * battery that opens. State are three phase currents (their sum nil) and for each phase the rail it lies on. A
 * conducting phase obeys L di/dt = e + v_n − v − R i (trapezoidal rule), where v is P + V_F0 or −V_F0 and v_n follows from
 * the sum of the currents. A step in which a current passes zero is cut there and the phase let go; a free phase is taken
 * on when e + v_n leaves the rails. On a battery the steps in which no diode switches are taken by {@link WholeSteps} where nothing is
 * measured, or the torque alone.
 *
 * <p>Sine EMF, constant inductance, straight-line diodes, constant speed. The run begins with no current, phase a of the
 * EMF passing zero upwards. A mutable object for one thread. Source: circuit equations; held against ngspice in the tests.
 */
public final class BridgeTimeStepper {

    private static final double THIRD = 2 * Math.PI / 3;

    /** Of more steps a period no sines are kept. */
    private static final int MOST_KEPT = 1440;

    private final AlternatorConstants machine;
    private final double leadResistance;
    private final DiodeLine diode;
    private final double speed;
    private final DcLoad load;
    private final double stepsPerPeriod;
    private final double pace;
    private final double emf;
    private final double resistance;
    private final double step;
    private final BridgeFault fault;
    private final PhaseSet phases;
    private final DcNode node;
    private double time;

    /** Sines of the angles at which whole steps end; null where they are not kept. */
    private final @Nullable Sines sines;

    private final @Nullable WholeSteps whole;

    /** Whole steps begun, as long as each ended where it should. */
    private long begun;

    private boolean onGrid = true;

    /** EMFs of phases a and b at this time, V. */
    private double emfA;

    private double emfB;

    /** Of the last step: electrical angle in its middle, what flowed and stood at its beginning. */
    private double middle;

    private double currentBefore;
    private double voltageBefore;

    /**
     * Starts a run.
     *
     * @param machine the alternator at working temperature
     * @param leadResistance of one lead from alternator to bridge, Ω
     * @param diode of the bridge; its slope is counted once a phase
     * @param speed mechanical angular speed, above nil, rad/s
     * @param load on the d.c. side
     * @param fault in phase a or its positive diode
     * @param stepsPerPeriod 720 does for 1 %
     */
    public BridgeTimeStepper(
            AlternatorConstants machine,
            double leadResistance,
            DiodeLine diode,
            double speed,
            DcLoad load,
            BridgeFault fault,
            int stepsPerPeriod) {
        this(
                machine,
                leadResistance,
                diode,
                speed,
                load,
                fault,
                Physical.within("steps per period", stepsPerPeriod, 36, 1_000_000),
                stepsPerPeriod % 3 == 0 && stepsPerPeriod <= MOST_KEPT ? new Sines(stepsPerPeriod) : null);
    }

    private BridgeTimeStepper(
            AlternatorConstants machine,
            double leadResistance,
            DiodeLine diode,
            double speed,
            DcLoad load,
            BridgeFault fault,
            double stepsPerPeriod,
            @Nullable Sines sines) {
        this.machine = machine;
        this.speed = Physical.positive("speed", speed);
        this.pace = machine.electricalSpeed(speed);
        this.emf = machine.phaseEmf(speed);
        Physical.positive("phase inductance", machine.phaseInductance());
        this.resistance = machine.phaseResistance() + leadResistance + diode.slope();
        this.stepsPerPeriod = stepsPerPeriod;
        this.step = 2 * Math.PI / pace / stepsPerPeriod;
        this.fault = fault;
        this.leadResistance = leadResistance;
        this.diode = diode;
        this.load = load;
        this.node = new DcNode(load);
        this.sines = sines;
        this.whole = sines != null && load instanceof DcLoad.Battery battery
                ? new WholeSteps(sines, emf, step, battery)
                : null;
        this.emfB = emf * Math.sin(-THIRD);
        this.phases = new PhaseSet(
                machine.phaseInductance(), resistance, diode.threshold(), fault, load instanceof DcLoad.Choke);
    }

    /** {@return a run of the same machine that begins at another speed, above nil, rad/s} */
    public BridgeTimeStepper at(double otherSpeed) {
        return new BridgeTimeStepper(machine, leadResistance, diode, otherSpeed, load, fault, stepsPerPeriod, sines);
    }

    /** {@return a run that goes on from where this one is, apart from it} */
    public BridgeTimeStepper copy() {
        BridgeTimeStepper copy = at(speed);
        copy.phases.set(phases);
        copy.node.set(node);
        copy.time = time;
        copy.begun = begun;
        copy.onGrid = onGrid;
        copy.emfA = emfA;
        copy.emfB = emfB;
        return copy;
    }

    /** Runs on without measuring, for a number of electrical periods. */
    public void run(double periods) {
        over(periods, (AirGapEnergy) null);
    }

    /** {@return the mean torque over the next electrical periods, N·m} That of {@link #measure}, for less work. */
    public double torque(double periods) {
        AirGapEnergy airGap = new AirGapEnergy();
        over(periods, airGap);
        return airGap.energy / airGap.time / speed;
    }

    /** {@return what happens over the next electrical periods} */
    public BridgeWaveform measure(double periods) {
        WaveformMeter meter = new WaveformMeter();
        over(periods, h -> {
            double power = airGapPower();
            meter.add(
                    h,
                    middle,
                    0.5 * (currentBefore + node.current()),
                    0.5 * (voltageBefore + node.voltage()),
                    power,
                    mean(0),
                    mean(1),
                    mean(2));
        });
        return meter.read(speed, machine.phaseResistance());
    }

    private void over(double periods, DoubleConsumer afterStep) {
        long steps = steps(periods);
        for (long n = 0; n < steps; n++) {
            step(afterStep);
        }
    }

    /** Measures what passes the air gap, or nothing. */
    private void over(double periods, @Nullable AirGapEnergy airGap) {
        DoubleConsumer afterStep = h -> {
            if (airGap != null) {
                airGap.time += h;
                airGap.energy += h * airGapPower();
            }
        };
        long steps = steps(periods);
        for (long n = 0; n < steps; n++) {
            if (whole != null && onGrid) {
                n += steady(whole, (int) Math.min(steps - n, Integer.MAX_VALUE), airGap);
                if (n >= steps) {
                    return;
                }
            }
            step(afterStep);
        }
    }

    private long steps(double periods) {
        return Math.max(1, Math.round(periods * 2 * Math.PI / pace / step));
    }

    /** {@return steps taken until a diode switches, most of them at most} */
    private int steady(WholeSteps by, int most, @Nullable AirGapEnergy airGap) {
        int taken = by.run(phases, node.current(), begun, most, airGap);
        if (taken > 0) {
            begun += taken;
            time += taken * step;
            node.prepare(time, step);
            node.accept(phases.directCurrent());
            end(pace * time, true);
        }
        return taken;
    }

    private void step(DoubleConsumer afterStep) {
        double left = step;
        begun++;
        for (int cuts = 0; left > 1e-9 * step && cuts < 8; cuts++) {
            double h = advance(left);
            afterStep.accept(h);
            left -= h;
        }
        onGrid &= left <= 1e-9 * step;
    }

    private double airGapPower() {
        return emf
                * (Math.sin(middle) * mean(0)
                        + Math.sin(middle - THIRD) * mean(1)
                        + Math.sin(middle + THIRD) * mean(2));
    }

    /** Mean current of a phase over the last step. */
    private double mean(int k) {
        return 0.5 * (phases.before(k) + phases.current(k));
    }

    /** {@return the time that passed: h, or less where a current ended} */
    private double advance(double h) {
        double angle = pace * time;
        double a0 = emfA;
        double b0 = emfB;
        double c0 = -a0 - b0;
        double volts = node.voltage();
        currentBefore = node.current();
        voltageBefore = volts;
        phases.switchOn(a0, b0, c0, volts);
        double h1 = h;
        for (int attempt = 0; attempt < 2; attempt++) {
            node.prepare(time + h1, h1);
            end(angle + pace * h1, attempt == 0);
            phases.step(h1, a0, b0, c0, volts, emfA, emfB, -emfA - emfB, node.alpha(), node.beta());
            double part = phases.partUntilZero();
            if (part >= 1 || attempt == 1) {
                break;
            }
            h1 *= Math.max(part, 1e-6);
        }
        phases.accept();
        node.accept(phases.directCurrent());
        time += h1;
        middle = angle + 0.5 * pace * h1;
        return h1;
    }

    /** Sets the EMFs at the end of a step; a step that is not cut ends where its whole step ends. */
    private void end(double angle, boolean uncut) {
        if (uncut && onGrid && sines != null) {
            int at = (int) (begun % sines.whole().length);
            emfA = emf * sines.whole()[at];
            emfB = emf * sines.whole()[sines.third(at)];
        } else {
            emfA = emf * Math.sin(angle);
            emfB = emf * Math.sin(angle - THIRD);
        }
    }

    /** {@return the fault of this run} */
    public BridgeFault fault() {
        return fault;
    }

    /** {@return time since the run began, s} */
    public double time() {
        return time;
    }
}
