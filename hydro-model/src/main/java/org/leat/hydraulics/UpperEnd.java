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

    /**
     * Is shut below a vent: the flow in falls linearly to nothing, but where the pressure at the upper end would fall below the
     * atmosphere's, the vent lets in as much air as it takes to hold it there. Void once air fills a good part of the pipe; a vent
     * of at least a third of the bore is common practice.
     *
     * @param time s; 0 for at once
     */
    record ShuttingVented(double time) implements UpperEnd {
        public ShuttingVented {
            Physical.notNegative("time", time);
        }
    }
}
