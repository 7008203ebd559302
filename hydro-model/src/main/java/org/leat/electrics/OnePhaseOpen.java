package org.leat.electrics;

/**
 * A three-phase bridge with one phase open, at the same smooth direct current and speed as with all three: what is left is a
 * single-phase bridge between two leads.
 *
 * <p>Range: smooth direct current (a choke, or inductance enough), no overlap of the diodes, star winding. Against a stiff voltage
 * without choke other ratios hold, which the waveform decides: {@link ThreeModeBridge}, {@link BridgeTimeStepper}. Cut-in does not
 * move: it is where the peak between two leads meets the battery. Source: mean and rms of the six-pulse and the
 * two-pulse bridge.
 */
public final class OnePhaseOpen {

    /** Rms current of a live lead over that of a lead with all three: I against √(2/3) I. */
    public static final double LEAD_CURRENT = Math.sqrt(1.5);

    /** Copper heat of a live phase winding over that with all three: the heat of the whole, in two thirds of the copper. */
    public static final double PHASE_HEAT = 1.5;

    /** Ideal mean voltage over that with all three: 2/π against 3/π of the peak between leads. */
    public static final double MEAN_VOLTAGE = 2.0 / 3;

    /** Ripple frequency over the electrical frequency: two pulses in place of six. */
    public static final int RIPPLE = 2;

    private OnePhaseOpen() {}
}
