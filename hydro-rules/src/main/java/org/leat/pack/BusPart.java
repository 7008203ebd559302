package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.design.BatteryManagement;
import org.leat.design.Design;

/**
 * A part on the bus and what it stands.
 *
 * @param word key of the phrase that names it
 * @param path of the field that says what it stands
 * @param rating V; null where it is not stated
 */
record BusPart(String word, String path, @Nullable Double rating) {

    /** {@return every part on the bus, the battery's management among them} */
    static List<BusPart> all(Design design) {
        List<BusPart> parts = new ArrayList<>(withoutBattery(design));
        BatteryManagement management = design.battery().management();
        if (management != null) {
            parts.add(new BusPart(
                    "part.management", "/battery/management/voltage-rating", Rated.si(management.voltageRating())));
        }
        return parts;
    }

    /** {@return the parts that stay on the bus when the battery is lost} */
    static List<BusPart> withoutBattery(Design design) {
        List<BusPart> parts = new ArrayList<>();
        if (design.regulator() != null) {
            parts.add(new BusPart(
                    "part.regulator",
                    "/regulator/input-voltage-limit",
                    Rated.si(design.regulator().inputVoltageLimit())));
        }
        if (design.inverter() != null) {
            parts.add(new BusPart(
                    "part.inverter",
                    "/inverter/input-voltage-limit",
                    Rated.si(design.inverter().inputVoltageLimit())));
        }
        return parts;
    }
}
