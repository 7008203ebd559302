package org.leat.hydraulics;

import org.leat.law.Physical;

/** What the upper end of a line does during a surge. */
public sealed interface UpperEnd {

    /** Stays open to the tank. */
    record Open() implements UpperEnd {}

    /**
     * Is shut: the flow in falls linearly to nothing.
     *
     * @param time s; 0 for at once, as when the intake is blocked
     */
    record Shutting(double time) implements UpperEnd {
        public Shutting {
            Physical.notNegative("time", time);
        }
    }
}
