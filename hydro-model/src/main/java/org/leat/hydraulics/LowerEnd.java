package org.leat.hydraulics;

import org.leat.law.Physical;

/** What the lower end of a line does during a surge. */
public sealed interface LowerEnd {

    /**
     * Nozzles into air whose open area changes: {@code Q = τ Q0 √(H/H0)}. Where no head is left while they are open, air
     * enters and H is 0.
     *
     * @param opening τ against time
     */
    record Nozzles(NozzleOpening opening) implements LowerEnd {}

    /**
     * The flow itself falls linearly to nothing.
     *
     * @param time s; 0 for at once
     */
    record FallingFlow(double time) implements LowerEnd {
        public FallingFlow {
            Physical.notNegative("time", time);
        }
    }

    /**
     * Nozzles opened evenly from rest to the area that passes the steady flow.
     *
     * @param time s; 0 for at once
     */
    record OpeningNozzles(double time) implements LowerEnd {
        public OpeningNozzles {
            Physical.notNegative("time", time);
        }
    }
}
