package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Edit;
import org.leat.design.ChargeRegulator;
import org.leat.design.Design;
import org.leat.design.RegulatorKind;
import org.leat.design.VoltageRange;
import org.leat.quantity.Si;

/** Edits that put a tracking regulator in place of what is there. */
public final class TrackingRegulator {

    private TrackingRegulator() {}

    /** {@return the edits} Window in V; what else the regulator does stays as it is. */
    public static List<Edit> edits(Design design, double from, double to) {
        VoltageRange window = new VoltageRange(volts(from), volts(to));
        ChargeRegulator now = design.regulator();
        if (now == null) {
            return List.of(new Edit(
                    "/regulator",
                    new ChargeRegulator(
                            RegulatorKind.TRACKING,
                            volts(to),
                            null,
                            window,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null,
                            null)));
        }
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/regulator/kind", RegulatorKind.TRACKING));
        edits.add(new Edit("/regulator/tracking-window", window));
        if (now.inputVoltageLimit() == null || Si.of(now.inputVoltageLimit()) < to) {
            edits.add(new Edit("/regulator/input-voltage-limit", volts(to)));
        }
        return edits;
    }

    private static javax.measure.Quantity<ElectricPotential> volts(double volts) {
        return Si.quantity(Math.round(volts * 10) / 10.0, "V", ElectricPotential.class);
    }
}
