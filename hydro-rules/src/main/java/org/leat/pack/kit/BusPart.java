package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.leat.design.BatteryManagement;
import org.leat.design.Design;
import org.leat.design.RegulatorKind;

/**
 * A part on the bus and what it stands.
 *
 * @param part that it is
 * @param path of the field that says what it stands
 * @param node that it hangs on
 * @param rating null where it is not stated
 */
public record BusPart(
        PartWord part, String path, BusNode node, @Nullable Quantity<ElectricPotential> rating) {

    /** {@return every part on the bus, the battery's management among them} */
    public static List<BusPart> all(Design design) {
        List<BusPart> parts = new ArrayList<>(withoutBattery(design));
        BatteryManagement management = design.battery().management();
        if (management != null) {
            parts.add(new BusPart(
                    PartWord.MANAGEMENT,
                    "/battery/management/voltage-rating",
                    BusNode.BATTERY,
                    management.voltageRating()));
        }
        return parts;
    }

    /** {@return the parts that stay on the bus when the battery is lost} */
    public static List<BusPart> withoutBattery(Design design) {
        List<BusPart> parts = new ArrayList<>();
        if (design.regulator() != null && design.regulator().kind() != RegulatorKind.NONE) {
            parts.add(new BusPart(
                    PartWord.REGULATOR,
                    "/regulator/input-voltage-limit",
                    BusNode.BRIDGE,
                    design.regulator().inputVoltageLimit()));
        }
        if (design.inverter() != null) {
            parts.add(new BusPart(
                    PartWord.INVERTER,
                    "/inverter/input-voltage-limit",
                    BusNode.BATTERY,
                    design.inverter().inputVoltageLimit()));
        }
        return parts;
    }
}
