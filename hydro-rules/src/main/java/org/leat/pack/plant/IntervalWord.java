package org.leat.pack.plant;

import java.util.Locale;
import org.leat.check.Arg.Worded;

/** What is told in place of a time between two visits. */
enum IntervalWord implements Worded {
    YEARLY("yearly"),
    OVERLOADED("not known, loaded beyond what the life formula covers"),
    UNKNOWN("not known"),
    UNWORN("without limit"),
    AGE("shallow ones, its age decides"),
    GREASE("when grease or water has spoilt them, before the load does");

    private final String text;

    IntervalWord(String text) {
        this.text = text;
    }

    @Override
    public String key() {
        return "interval." + name().toLowerCase(Locale.ROOT);
    }

    @Override
    public String text() {
        return text;
    }
}
