package org.leat.pack.regulator;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.ChargeRegulator;
import org.leat.design.ChargeRegulatorBuilder;
import org.leat.design.RegulatorKind;
import org.leat.pack.kit.BridgeElement;
import org.leat.pack.kit.StandardSizes;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;

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
        double ohms = StandardSizes.resistance(volts / (1.2 * current));
        double power = Math.ceil(1.5 * volts * volts / ohms / 50) * 50;
        BridgeElement element = new BridgeElement(Math.round(volts * 10) / 10.0, ohms, power);
        return element.told(switched(j, Change.of("/dump-load", element.alone())));
    }

    /** With a regulator that switches it on, where there is none that does. */
    private static Change switched(Judgement j, Change change) {
        ChargeRegulator regulator = j.design().regulator();
        if (regulator == null) {
            return change.and(
                    "/regulator",
                    ChargeRegulatorBuilder.builder().kind(RegulatorKind.SHUNT).build());
        }
        return regulator.kind() == RegulatorKind.SHUNT ? change : change.and("/regulator/kind", RegulatorKind.SHUNT);
    }
}
