package org.leat.pack.kit;

import java.util.Locale;
import org.leat.check.Arg.Worded;

/** What makes the highest voltage of the bus. */
public enum VoltageCause implements Worded {
    RUNAWAY("load lost: the wheel has run away"),
    OPENED_UNDER_LOAD("the battery opens under load, for a moment"),
    BATTERY_REMOVED("battery removed or its fuse open: the wheel runs away"),
    CHARGING("while it charges"),
    DIVERTED("battery full: the dump load takes all"),
    DUMP_LOST("dump load lost, battery full: the wheel runs away"),
    DUMP_TOO_SMALL("battery full: the dump load is too small and the voltage rises until it takes all"),
    EMPTY_CAPACITOR("an empty capacitor connected to the wheel that has run away"),
    EQUALISING("equalising"),
    FULL("battery full"),
    HELD("the regulator holds its set point"),
    LETS_GO("battery full: the regulator lets go and the wheel runs away"),
    MANAGEMENT_OPENS("the battery's management opens: the wheel runs away"),
    OVERCHARGED("battery full: nothing limits it, and when it gives up the wheel runs away"),
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
