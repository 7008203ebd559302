package org.leat.hydraulics;

/** Valves that shut a penstock or a nozzle, each with how its loss grows as it is shut. */
public enum ValveKind {
    /** needle in a nozzle; its loss is that of the nozzle itself, see {@link NeedleOpening}. */
    NEEDLE,
    /** {@link GateValveLoss}; also what stands for a valve of unknown kind: it stops the flow in the least of its travel. */
    GATE,
    /** {@link GlobeValveLoss}. */
    GLOBE,
    /** {@link ButterflyValveLoss}. */
    BUTTERFLY,
    /** {@link BallValveLoss}. */
    BALL;

    /** {@return share of the travel, from shut, that opens nothing} */
    public double idleTravel() {
        return this == BALL ? BallValveLoss.IDLE : 0;
    }

    /**
     * {@return loss coefficient at an opening; infinite where shut} Of a needle: on the head at the nozzle, 1 when open.
     *
     * @param opening share of the travel that is open, 0 to 1
     */
    public double lossCoefficient(double opening) {
        return switch (this) {
            case NEEDLE -> 1 / Math.pow(NeedleOpening.share(opening), 2);
            case GATE -> GateValveLoss.coefficient(opening);
            case GLOBE -> GlobeValveLoss.coefficient(opening);
            case BUTTERFLY -> ButterflyValveLoss.coefficient(opening);
            case BALL -> BallValveLoss.coefficient(opening);
        };
    }
}
