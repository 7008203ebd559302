package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Change;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.design.ChargeRegulator;
import org.leat.design.ChargeRegulatorBuilder;
import org.leat.design.Design;
import org.leat.design.RegulatorKind;
import org.leat.design.VoltageRange;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Edits that put a tracking regulator in place of what is there. */
public final class TrackingRegulator {

    private TrackingRegulator() {}

    /**
     * {@return one that stands at its input what any case of the plant so changed brings there} Window in V; what else the
     * regulator does stays as it is.
     *
     * @param name under which the volts that it stands are told
     */
    public static Change change(Judgement j, double from, double to, String name) {
        Judgement changed = j.with(edits(j.design(), from, to, to));
        double highest = changed.plant().unsolvable().isEmpty()
                ? HighestBusVoltage.of(changed.solved(), BusNode.BRIDGE).volts()
                : to;
        double stands = StandardSizes.volts(Math.max(to, highest)).orElse(to);
        return Change.of(edits(j.design(), from, to, stands)).with(name, stands, QuantityKind.VOLTAGE);
    }

    private static List<Edit> edits(Design design, double from, double to, double stands) {
        VoltageRange window = new VoltageRange(volts(from), volts(to));
        ChargeRegulator now = design.regulator();
        if (now == null) {
            return List.of(new Edit(
                    "/regulator",
                    ChargeRegulatorBuilder.builder()
                            .kind(RegulatorKind.TRACKING)
                            .inputVoltageLimit(volts(stands))
                            .trackingWindow(window)
                            .build()));
        }
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/regulator/kind", RegulatorKind.TRACKING));
        edits.add(new Edit("/regulator/tracking-window", window));
        if (now.inputVoltageLimit() == null || Si.of(now.inputVoltageLimit()) < stands) {
            edits.add(new Edit("/regulator/input-voltage-limit", volts(stands)));
        }
        return edits;
    }

    private static javax.measure.Quantity<ElectricPotential> volts(double volts) {
        return Si.quantity(Math.round(volts * 10) / 10.0, "V", ElectricPotential.class);
    }
}
