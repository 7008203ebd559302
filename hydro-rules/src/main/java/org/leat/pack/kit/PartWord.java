package org.leat.pack.kit;

import java.util.Locale;
import org.leat.check.Arg.Worded;

/** Parts as texts name them. */
public enum PartWord implements Worded {
    REGULATOR("regulator's input"),
    INVERTER("inverter"),
    DIODES("diodes"),
    CAPACITOR("capacitor"),
    WINDING("winding"),
    SCREEN("screen"),
    NOZZLES("nozzles"),
    NECKS("necks of the printed wheel"),
    MANAGEMENT("battery's management");

    private final String text;

    PartWord(String text) {
        this.text = text;
    }

    @Override
    public String key() {
        return "part." + name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @Override
    public String text() {
        return text;
    }
}
