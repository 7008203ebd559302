package org.leat.pack.kit;

import static org.leat.quantity.Quantities.volts;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricPotential;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.design.ChargeRegulator;
import org.leat.design.Design;
import org.leat.quantity.Si;

/** Edits that give the bank another number of cells in series, with the set points that go with it. */
public final class BankVoltage {

    private BankVoltage() {}

    public static List<Edit> edits(Design design, int cells) {
        double ratio = (double) cells / design.battery().cellsInSeries();
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/battery/cells-in-series", cells));
        scaled(edits, "/battery/charge-voltage-limit", design.battery().chargeVoltageLimit(), ratio);
        ChargeRegulator regulator = design.regulator();
        if (regulator != null) {
            scaled(edits, "/regulator/absorption-voltage", regulator.absorptionVoltage(), ratio);
            scaled(edits, "/regulator/float-voltage", regulator.floatVoltage(), ratio);
            scaled(edits, "/regulator/equalising-voltage", regulator.equalisingVoltage(), ratio);
            scaled(edits, "/regulator/cut-off-voltage", regulator.cutOffVoltage(), ratio);
        }
        return edits;
    }

    private static void scaled(List<Edit> edits, String path, @Nullable Quantity<ElectricPotential> now, double ratio) {
        if (now != null) {
            double volts = Math.round(Si.of(now) * ratio * 100) / 100.0;
            edits.add(new Edit(path, volts(volts)));
        }
    }
}
