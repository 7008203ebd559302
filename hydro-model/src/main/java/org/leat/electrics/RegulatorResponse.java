package org.leat.electrics;

/**
 * What each kind of charge regulator makes of the turbine when the battery takes no more, when the battery is lost, and when its
 * fuse opens. The water does not stop by itself: a turbine whose current is cut runs away, and the voltage behind the bridge rises
 * to what it makes at that speed for as long as water runs.
 *
 * <p>Source: common practice of stream-powered plants; the surge of a battery lost under load is tested by ISO 16750-2 in vehicles, where
 * it lasts milliseconds. Constants are named as in the design, so that {@code valueOf} finds them.
 */
public enum RegulatorResponse {
    /** nothing limits the battery. */
    NONE,
    /** disconnects or throttles the source. */
    SERIES,
    /** diverts the surplus into a dump load. */
    SHUNT,
    /** chooses its input voltage and throttles when full. */
    TRACKING;

    /** What becomes of the turbine. */
    public enum Outcome {
        /** it stays loaded and the voltage stays where it is regulated. */
        HELD,
        /** it stays loaded by a battery that is driven above its voltage. */
        OVERCHARGES,
        /** it loses its load: the voltage of the runaway speed comes upon everything behind the bridge. */
        RUNS_AWAY
    }

    /**
     * {@return what happens when the battery is full}
     *
     * @param dumpTakesAll a dump load of its own takes all the turbine gives at regulation voltage, and works
     */
    public Outcome batteryFull(boolean dumpTakesAll) {
        if (dumpTakesAll) {
            return Outcome.HELD;
        }
        return switch (this) {
            case NONE, SHUNT -> Outcome.OVERCHARGES;
            case SERIES, TRACKING -> Outcome.RUNS_AWAY;
        };
    }

    /**
     * {@return what happens when the battery is lost: removed, its fuse or its own management opens}
     *
     * @param dumpTakesAll a dump load takes all the turbine gives, and works
     * @param dumpOnBridgeSide it hangs on the bridge's side of what opened and is switched by voltage
     */
    public Outcome batteryLost(boolean dumpTakesAll, boolean dumpOnBridgeSide) {
        return dumpTakesAll && dumpOnBridgeSide ? Outcome.HELD : Outcome.RUNS_AWAY;
    }

    /** {@return what happens when all loads are switched off and the battery still takes what the turbine gives} */
    public Outcome loadsOff() {
        return Outcome.HELD;
    }

    /** {@return whether the kind itself unloads the turbine when the battery is full} */
    public boolean unloadsTurbine() {
        return this == SERIES || this == TRACKING;
    }
}
