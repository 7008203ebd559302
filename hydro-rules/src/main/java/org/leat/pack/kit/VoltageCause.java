package org.leat.pack.kit;

import java.util.Locale;
import org.leat.check.Arg.Worded;

/** What makes the highest voltage of the bus. */
public enum VoltageCause implements Worded {
    /** load lost. */
    RUNAWAY("load lost: the wheel has run away"),
    /** the battery opens under load, for a moment. */
    OPENED_UNDER_LOAD("the battery opens under load, for a moment"),
    /** battery removed or its fuse open. */
    BATTERY_REMOVED("battery removed or its fuse open: the wheel runs away"),
    /** while it charges. */
    CHARGING("while it charges"),
    /** battery full. */
    DIVERTED("battery full: the dump load takes all"),
    /** dump load lost, battery full. */
    DUMP_LOST("dump load lost, battery full: the wheel runs away"),
    /** battery full. */
    DUMP_TOO_SMALL("battery full: the dump load is too small and the voltage rises until it takes all"),
    /** an empty capacitor connected to the wheel that has run away. */
    EMPTY_CAPACITOR("an empty capacitor connected to the wheel that has run away"),
    /** equalising. */
    EQUALISING("equalising"),
    /** battery full. */
    FULL("battery full"),
    /** a regulator holds it. */
    HELD("the regulator holds its set point"),
    /** battery full. */
    LETS_GO("battery full: the regulator lets go and the wheel runs away"),
    /** the battery's management opens. */
    MANAGEMENT_OPENS("the battery's management opens: the wheel runs away"),
    /** battery full. */
    OVERCHARGED("battery full: nothing limits it, and when it gives up the wheel runs away"),
    /** while it runs. */
    RUNNING("while it runs");

    private final String text;

    VoltageCause(String text) {
        this.text = text;
    }

    @Override
    public String key() {
        return "cause." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public String text() {
        return text;
    }
}
