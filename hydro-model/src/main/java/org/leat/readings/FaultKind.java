package org.leat.readings;

import org.apiguardian.api.API;

/**
 * What can be wrong with a plant, each with how common it is against the others (common practice) and whether it can hurt someone
 * before it is looked at. The sizes are from hardly worth looking for to as bad as it gets; each size is as likely as another one
 * in proportion to it.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum FaultKind {
    /** All is as designed, within what building allows: five times as likely as the commonest fault. */
    NOTHING(10, false, 0, 0),
    /** Screen or inlet blocked; size: head lost there at the flow of a sound plant, over the gross head. */
    SCREEN_BLOCKED(2, false, 0.01, 3),
    /** Pipe pinched or partly shut below its middle; size: as for the screen. */
    PIPE_PINCHED(0.5, false, 0.01, 3),
    /** Air at a high point, which takes a head that does not depend on the flow; size: over the gross head. */
    AIR_IN_PIPE(1, false, 0.01, 0.5),
    /** Water lost on the way; size: lost flow over that of the nozzles as built. */
    LEAK(0.7, true, 0.03, 1.5),
    /** Less head than thought; size: what is missing over the gross head. */
    HEAD_LOWER(0.7, false, 0.015, 0.3),
    /** More head than thought; size: over the gross head. */
    HEAD_HIGHER(0.3, false, 0.015, 0.3),
    /** One nozzle wider than drilled; size: of its bore. */
    NOZZLE_WORN(1, false, 0.01, 0.3),
    /** Something sits in one nozzle; size: of its area. */
    NOZZLE_BLOCKED(1.5, false, 0.02, 0.9),
    /** Another nozzle of those on hand sits there. */
    NOZZLE_OTHER(0.7, false, 0, 0),
    /** Buckets worn, broken or clogged; size: of the torque they make. */
    WHEEL_WORN(1, false, 0.03, 0.6),
    /** Bearing or seal drags; size: of the torque of a sound plant. */
    BEARING_DRAG(1, true, 0.03, 0.8),
    /** Magnets weaker, or one loose; size: of their flux. */
    MAGNETS_WEAKER(0.5, true, 0.02, 0.5),
    /** Winding warmer than it should be; size: K. */
    WINDING_WARMER(0.7, true, 15, 150),
    /** One lead or winding open. */
    PHASE_OPEN(1, false, 0, 0),
    /** One diode does not conduct. */
    DIODE_OPEN(1, false, 0, 0),
    /** One diode conducts both ways. */
    DIODE_SHORTED(0.7, true, 0, 0),
    /** A joint between bridge and battery is bad; size: volts it takes at the current of a sound plant, over those of the bus. */
    JOINT_BAD(1.5, true, 0.008, 0.6),
    /** The dump load is on while the battery is not full; size: of its conductance. */
    DUMP_ON(1, false, 0.25, 1.05),
    /** The dump load takes nothing. */
    DUMP_DEAD(0.7, true, 0, 0),
    /** The regulator keeps the bridge from the voltage of most power; size: voltage above it, over it. */
    REGULATOR_HOLDS_BACK(1, false, 0.04, 1.2),
    /** The battery is full or does not take the current; size: of the current that does not go into it. */
    BATTERY_NOT_TAKING(1.5, false, 0.15, 1),
    /** A meter that shows the peak of alternating volts. */
    METER_SHOWS_PEAK(0.5, false, 0, 0),
    /** Volts to the star point taken for volts between leads. */
    METER_ON_PHASE(0.7, false, 0, 0);

    private final double weight;
    private final boolean dangerous;
    private final double least;
    private final double most;

    FaultKind(double weight, boolean dangerous, double least, double most) {
        this.weight = weight;
        this.dangerous = dangerous;
        this.least = least;
        this.most = most;
    }

    /** {@return how common it is against the others} */
    public double weight() {
        return weight;
    }

    /** {@return whether it can hurt someone before it is looked at} */
    public boolean dangerous() {
        return dangerous;
    }

    /** {@return whether it has a size} */
    public boolean sized() {
        return most > 0;
    }

    /** {@return the least size looked for} */
    public double least() {
        return least;
    }

    /** {@return the greatest size looked for} */
    public double most() {
        return most;
    }

    /** {@return whether it is the reading that is wrong, not the plant} */
    boolean ofMeter() {
        return this == METER_SHOWS_PEAK || this == METER_ON_PHASE;
    }

    /** {@return whether it can be in one nozzle alone, so that each set read may or may not have it} */
    boolean ofOneNozzle() {
        return this == NOZZLE_WORN || this == NOZZLE_BLOCKED || this == NOZZLE_OTHER;
    }
}
