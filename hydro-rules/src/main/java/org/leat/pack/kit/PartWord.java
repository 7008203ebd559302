package org.leat.pack.kit;

import java.util.Locale;
import org.leat.check.Arg.Worded;

/** Parts as texts name them. */
public enum PartWord implements Worded {
    /** regulator's input. */
    REGULATOR("regulator's input"),
    /** inverter. */
    INVERTER("inverter"),
    /** diodes. */
    DIODES("diodes"),
    /** capacitor. */
    CAPACITOR("capacitor"),
    /** winding. */
    WINDING("winding"),
    /** screen. */
    SCREEN("screen"),
    /** nozzles. */
    NOZZLES("nozzles"),
    /** necks of the printed wheel. */
    NECKS("necks of the printed wheel"),
    /** battery's management. */
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
