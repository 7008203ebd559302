package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * The surges a penstock must stand, each by {@link Characteristics}, and beside it a closed form to
 * follow by hand, which is a bound only where that is said. Grid: up to
 * 200 reaches, fewer where a slow change takes many steps; run until three return times after the change.
 */
public final class SurgeStudy {

    private static final int MOST_REACHES = 200;
    private static final int FEWEST_REACHES = 24;
    private static final double MOST_NODE_STEPS = 4e6;
    private static final double RETURNS_AFTER = 3;

    private SurgeStudy() {}

    /**
     * {@return the surge of a valve or needle at the nozzles whose open area falls evenly to nothing}
     *
     * <p>Closed form: {@link LinePacking} within the return time 2 L/a; beyond it {@link Michaud} for a flow that falls linearly,
     * above the tank level, which an area that falls linearly may exceed.
     *
     * @param flow steady, m³/s
     * @param closingTime s, 0 for at once
     */
    public static SurgeResult shut(SurgeLine line, double flow, double closingTime) {
        Physical.notNegative("closingTime", closingTime);
        return run(
                line,
                flow,
                NozzleOpening.linear(1, 0, closingTime),
                line.tankHead() + closedForm(line, flow, closingTime));
    }

    /**
     * {@return the surge of a valve before the nozzles, its travel even in time}
     *
     * <p>Closed form: {@link LinePacking} where the whole flow can stop within the return time 2 L/a; beyond, {@link Michaud} with
     * {@link ValveClosing#effectiveTime}, above the tank level.
     *
     * @param flow steady, m³/s
     * @param bore of the valve, m; of no account for a needle
     * @param closingTime of the whole travel, s, 0 for at once
     */
    public static SurgeResult shutBy(ValveKind kind, SurgeLine line, double flow, double bore, double closingTime) {
        double gross = ValveClosing.headShare(kind, flow, bore, line.workingHead(flow), line.tankHead());
        double effective = ValveClosing.effectiveTime(kind, gross, closingTime, line.returnTime());
        double net = ValveClosing.headShare(kind, flow, bore, line.workingHead(flow), line.workingHead(flow));
        return run(
                line,
                flow,
                ValveClosing.opening(kind, net, closingTime, 0),
                line.tankHead() + closedForm(line, flow, effective));
    }

    /** Rise of a stop that takes a time, m: {@link LinePacking} within the return time, {@link Michaud} beyond. */
    private static double closedForm(SurgeLine line, double flow, double time) {
        double joukowsky = line.joukowskyHead(flow);
        return time <= line.returnTime() ? joukowsky : Math.min(joukowsky, 2 * line.inertia() * flow / time);
    }

    /**
     * {@return the surge of part of the nozzle area lost at once: one of several nozzles plugs}
     *
     * <p>Closed form: {@link PartialStop} above the tank level.
     *
     * @param flow steady through all nozzles, m³/s
     * @param shareLeft open area after over before, 0 to 1; {@code (n − 1)/n} for one of n equal nozzles
     */
    public static SurgeResult plugged(SurgeLine line, double flow, double shareLeft) {
        SurgeSection last = line.sections().get(line.sections().size() - 1);
        double working = line.workingHead(flow);
        double rise = PartialStop.head(working, last.waveSpeed(), flow / last.area(), shareLeft);
        return run(line, flow, NozzleOpening.step(shareLeft), line.tankHead() + rise);
    }

    /**
     * {@return the surge of part of the nozzle area shut evenly over a time: one of several nozzles is closed} Closed form: that
     * of {@link #plugged}, which bounds it.
     */
    public static SurgeResult partlyShut(SurgeLine line, double flow, double shareLeft, double closingTime) {
        double bound = plugged(line, flow, shareLeft).closedFormHead();
        return run(line, flow, NozzleOpening.linear(1, shareLeft, closingTime), bound);
    }

    /**
     * {@return the surge of an inlet shut or blocked while the nozzles stay open} The column drains and pulls the upper line below
     * the atmosphere; run until the column has had time to come to rest. Closed form: the tank level, which is never exceeded.
     *
     * @param time in which the flow in falls linearly to nothing, s; 0 for at once
     */
    public static SurgeResult inletShut(SurgeLine line, double flow, double time) {
        return drained(line, flow, time, new UpperEnd.Shutting(time));
    }

    /** {@return the same with a vent below the inlet valve, which holds the upper end at the atmosphere's pressure} */
    public static SurgeResult inletShutVented(SurgeLine line, double flow, double time) {
        return drained(line, flow, time, new UpperEnd.ShuttingVented(time));
    }

    private static SurgeResult drained(SurgeLine line, double flow, double time, UpperEnd upperEnd) {
        double drain = line.inertia() * flow / line.workingHead(flow);
        double duration = time + 10 * drain + 2 * RETURNS_AFTER * line.returnTime();
        HeadEnvelope envelope = Characteristics.run(
                line,
                flow,
                upperEnd,
                new LowerEnd.Nozzles(NozzleOpening.unchanged()),
                reaches(line, duration),
                duration);
        return new SurgeResult(line.tankHead(), envelope);
    }

    /**
     * {@return the surge of nozzles opened evenly from rest} The head falls first and swings back. Closed form: the tank level and
     * the whole of {@link Joukowsky}, which bounds it.
     */
    public static SurgeResult opened(SurgeLine line, double flow, double openingTime) {
        double duration = duration(line, openingTime);
        HeadEnvelope envelope = Characteristics.run(
                line,
                flow,
                new UpperEnd.Open(),
                new LowerEnd.OpeningNozzles(openingTime),
                reaches(line, duration),
                duration);
        return new SurgeResult(line.tankHead() + line.joukowskyHead(flow), envelope);
    }

    private static SurgeResult run(SurgeLine line, double flow, NozzleOpening opening, double closedForm) {
        return new SurgeResult(closedForm, envelope(line, flow, opening));
    }

    /** {@return heads along the line while the nozzles are shut by a law} */
    static HeadEnvelope envelope(SurgeLine line, double flow, NozzleOpening opening) {
        double duration = duration(line, opening.lastChange());
        return Characteristics.run(
                line, flow, new UpperEnd.Open(), new LowerEnd.Nozzles(opening), reaches(line, duration), duration);
    }

    private static double duration(SurgeLine line, double change) {
        return change + RETURNS_AFTER * line.returnTime();
    }

    private static int reaches(SurgeLine line, double duration) {
        double affordable = Math.sqrt(MOST_NODE_STEPS * line.returnTime() / (2 * duration));
        return (int) Math.max(FEWEST_REACHES, Math.min(MOST_REACHES, affordable));
    }
}
