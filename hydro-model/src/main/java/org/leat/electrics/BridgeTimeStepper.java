package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Alternator and bridge stepped in time, for what the averaged model does not reach: faults, capacitors, chokes, a
 * battery that opens. State are three phase currents (their sum nil) and for each phase the rail it lies on. A
 * conducting phase obeys L di/dt = e + v_n − v − R i (trapezoidal rule), where v is P + V_F0 or −V_F0 and v_n follows from
 * the sum of the currents. A step in which a current passes zero is cut there and the phase let go; a free phase is taken
 * on when e + v_n leaves the rails.
 *
 * <p>Sine EMF, constant inductance, straight-line diodes, constant speed. The run begins with no current, phase a of the
 * EMF passing zero upwards. A mutable object for one thread. Source: circuit equations; held against ngspice in the tests.
 */
public final class BridgeTimeStepper {

    private static final double THIRD = 2 * Math.PI / 3;

    private final AlternatorConstants machine;
    private final double speed;
    private final double pace;
    private final double emf;
    private final double resistance;
    private final double step;
    private final BridgeFault fault;
    private final PhaseSet phases;
    private final DcNode node;
    private double time;

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
        this.machine = machine;
        this.speed = Physical.positive("speed", speed);
        this.pace = machine.electricalSpeed(speed);
        this.emf = machine.phaseEmf(speed);
        Physical.positive("phase inductance", machine.phaseInductance());
        this.resistance = machine.phaseResistance() + leadResistance + diode.slope();
        this.step = 2 * Math.PI / pace / Physical.within("steps per period", stepsPerPeriod, 36, 1_000_000);
        this.fault = fault;
        this.node = new DcNode(load);
        this.phases = new PhaseSet(
                machine.phaseInductance(), resistance, diode.threshold(), fault, load instanceof DcLoad.Choke);
    }

    /** Runs on without measuring, for a number of electrical periods. */
    public void run(double periods) {
        measure(periods);
    }

    /** {@return what happens over the next electrical periods} */
    public BridgeWaveform measure(double periods) {
        WaveformMeter meter = new WaveformMeter();
        long steps = Math.max(1, Math.round(periods * 2 * Math.PI / pace / step));
        for (long n = 0; n < steps; n++) {
            double left = step;
            for (int cuts = 0; left > 1e-9 * step && cuts < 8; cuts++) {
                left -= advance(left, meter);
            }
        }
        return meter.read(speed, machine.phaseResistance());
    }

    /** {@return the time that passed: h, or less where a current ended} */
    private double advance(double h, WaveformMeter meter) {
        double angle = pace * time;
        double a0 = emf * Math.sin(angle);
        double b0 = emf * Math.sin(angle - THIRD);
        double c0 = -a0 - b0;
        double before = node.current();
        double volts = node.voltage();
        double ia = phases.current(0);
        double ib = phases.current(1);
        double ic = phases.current(2);
        phases.switchOn(a0, b0, c0, volts);
        double h1 = h;
        for (int attempt = 0; attempt < 2; attempt++) {
            node.prepare(time + h1, h1);
            double end = angle + pace * h1;
            double a1 = emf * Math.sin(end);
            double b1 = emf * Math.sin(end - THIRD);
            phases.step(h1, a0, b0, c0, volts, a1, b1, -a1 - b1, node.alpha(), node.beta());
            double part = phases.partUntilZero();
            if (part >= 1 || attempt == 1) {
                break;
            }
            h1 *= Math.max(part, 1e-6);
        }
        phases.accept();
        node.accept(phases.directCurrent());
        time += h1;
        double ma = 0.5 * (ia + phases.current(0));
        double mb = 0.5 * (ib + phases.current(1));
        double mc = 0.5 * (ic + phases.current(2));
        double middle = angle + 0.5 * pace * h1;
        double power = emf * (Math.sin(middle) * ma + Math.sin(middle - THIRD) * mb + Math.sin(middle + THIRD) * mc);
        meter.add(h1, middle, 0.5 * (before + node.current()), 0.5 * (volts + node.voltage()), power, ma, mb, mc);
        return h1;
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
