package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Report;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** How a plant runs, as properties of its suite. */
final class JUnitValues {

    private JUnitValues() {}

    /** One property. */
    record Value(String name, String text) {}

    static List<Value> of(Report report) {
        List<Value> values = new ArrayList<>();
        for (Running running : report.running()) {
            String set = running.nozzles().name() + (running.nozzles().asBuilt() ? " (open)" : "") + ": ";
            values.add(new Value(set + "flow", UsualUnits.show(running.water().flow(), QuantityKind.VOLUME_FLOW)));
            values.add(
                    new Value(set + "net head", UsualUnits.show(running.water().netHead(), QuantityKind.LENGTH)));
            values.add(new Value(
                    set + "speed", UsualUnits.show(running.operatingPoint().speed(), QuantityKind.ROTATIONAL_SPEED)));
            values.add(new Value(
                    set + "battery", UsualUnits.show(running.operatingPoint().batteryPower(), QuantityKind.POWER)));
        }
        return values;
    }
}
