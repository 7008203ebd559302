package org.leat.pack.regulator;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.ChargeRegulator;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.pack.kit.BridgeElement;
import org.leat.pack.kit.Sold;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** A dump load for all the turbine gives, on the bridge's side of the battery's fuse; told with resistance and power. */
final class AddedDumpLoad {

    private AddedDumpLoad() {}

    static Stream<Change> changes(Judgement j, Outcome.Fail failure) {
        List<BatteryFull> full = j.solved().batteryFull();
        double current = full.isEmpty()
                ? 0
                : Worst.most(full, BatteryFull::turbineCurrent).turbineCurrent();
        if (j.numbers().regulator().kind() == RegulatorKind.TRACKING) {
            // the bridge has voltages of its own there
            return BridgeElement.in(j.solved()).stream()
                    .map(element -> element.told(Change.of("/dump-load", element.alone())));
        }
        return current > 0 ? Stream.of(change(j, current)) : Stream.empty();
    }

    private static Change change(Judgement j, double current) {
        double volts = j.numbers().battery().absorptionVoltage();
        double wanted = volts / (1.2 * current);
        double power = Math.ceil(1.5 * volts * volts / Sold.resistance(wanted) / 50) * 50;
        double ohms = Sold.resistance(wanted);
        DumpLoad dump = new DumpLoad(
                Si.quantity(ohms, "ohm", ElectricResistance.class),
                null,
                Si.quantity(power, "W", Power.class),
                null,
                Si.quantity(Math.round(volts * 10) / 10.0, "V", ElectricPotential.class),
                null,
                DumpSide.BRIDGE,
                null,
                null,
                null,
                null);
        Change change = switched(j, Change.of("/dump-load", dump));
        return change.with("trigger", volts, QuantityKind.VOLTAGE)
                .with("switch", Sold.switchRating(volts / ohms), QuantityKind.CURRENT)
                .with("resistance", ohms, QuantityKind.RESISTANCE)
                .with("power", power, QuantityKind.POWER);
    }

    /** With a regulator that switches it on, where there is none that does. */
    private static Change switched(Judgement j, Change change) {
        ChargeRegulator regulator = j.design().regulator();
        if (regulator == null) {
            return change.and(
                    "/regulator",
                    new ChargeRegulator(
                            RegulatorKind.SHUNT, null, null, null, null, null, null, null, null, null, null));
        }
        return regulator.kind() == RegulatorKind.SHUNT ? change : change.and("/regulator/kind", RegulatorKind.SHUNT);
    }
}
