package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.design.BatteryBank;
import org.leat.design.Cable;
import org.leat.design.ChargeRegulator;
import org.leat.design.Design;
import org.leat.design.DumpLoad;
import org.leat.design.Inverter;
import org.leat.design.ProtectiveDevice;
import org.leat.design.Rectifier;
import org.leat.quantity.Si;

/** Every voltage that a design states of what hangs on its bus. */
final class BusLimits {

    /**
     * One limit.
     *
     * @param name what it is of
     * @param volts V
     * @param path of the field that states it
     */
    record Limit(String name, double volts, String path) {}

    private final List<Limit> limits = new ArrayList<>();

    private BusLimits() {}

    static List<Limit> of(Design design) {
        BusLimits all = new BusLimits();
        all.add(design.rectifier());
        all.add(design.regulator());
        all.add(design.dumpLoad());
        all.add(design.battery());
        all.add(design.inverter());
        for (int i = 0; i < design.cables().size(); i++) {
            Cable cable = design.cables().get(i);
            all.add("cable to " + ShownText.word(cable.to()), cable.ratedVoltage(), "/cables[" + i + "]/rated-voltage");
        }
        for (ProtectiveDevice device : design.devices()) {
            all.add(device.name(), device.directVoltage(), "/protection[" + device.name() + "]/direct-voltage");
        }
        return List.copyOf(all.limits);
    }

    private void add(@Nullable Rectifier rectifier) {
        if (rectifier != null) {
            add(
                    "diodes, reverse",
                    rectifier.repetitivePeakReverseVoltage(),
                    "/rectifier/repetitive-peak-reverse-voltage");
            add("capacitor", rectifier.capacitorVoltage(), "/rectifier/capacitor-voltage");
        }
    }

    private void add(@Nullable ChargeRegulator regulator) {
        if (regulator != null) {
            add("regulator\u2019s input", regulator.inputVoltageLimit(), "/regulator/input-voltage-limit");
        }
    }

    private void add(@Nullable DumpLoad dump) {
        if (dump != null) {
            add("dump load", dump.ratedVoltage(), "/dump-load/rated-voltage");
            add("dump load\u2019s fuse", dump.fuseDirectVoltage(), "/dump-load/fuse-direct-voltage");
        }
    }

    private void add(BatteryBank battery) {
        add("battery, charging", battery.chargeVoltageLimit(), "/battery/charge-voltage-limit");
        if (battery.management() != null) {
            add("management opens", battery.management().opensAbove(), "/battery/management/opens-above");
            add("management stands", battery.management().voltageRating(), "/battery/management/voltage-rating");
        }
    }

    private void add(@Nullable Inverter inverter) {
        if (inverter != null) {
            add("inverter stands", inverter.inputVoltageLimit(), "/inverter/input-voltage-limit");
            if (inverter.inputVoltage() != null) {
                add("inverter works up to", inverter.inputVoltage().to(), "/inverter/input-voltage/to");
                add("inverter works from", inverter.inputVoltage().from(), "/inverter/input-voltage/from");
            }
        }
    }

    private void add(String name, @Nullable Quantity<?> stated, String path) {
        if (stated != null) {
            limits.add(new Limit(name, Si.of(stated), path));
        }
    }
}
