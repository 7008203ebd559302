package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Power;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.design.ChargeRegulator;
import org.leat.design.Design;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** A dump load to add, on the bridge's side of the battery's fuse. */
final class DumpLoads {

    private DumpLoads() {}

    /** {@return the candidate} Resistance in Ω, power in W, voltage in V; the rule says {@code message}. */
    static Candidate added(Design design, double resistance, double power, double voltage, String message) {
        double ohms = Math.floor(resistance * 100) / 100;
        DumpLoad dump = new DumpLoad(
                Si.quantity(ohms, "ohm", ElectricResistance.class),
                null,
                Si.quantity(power, "W", Power.class),
                null,
                Si.quantity(Math.round(voltage * 10) / 10.0, "V", ElectricPotential.class),
                null,
                DumpSide.BRIDGE,
                null,
                null,
                null);
        List<Edit> edits = new ArrayList<>();
        edits.add(new Edit("/dump-load", dump));
        ChargeRegulator regulator = design.regulator();
        if (regulator == null) {
            edits.add(new Edit(
                    "/regulator",
                    new ChargeRegulator(
                            RegulatorKind.SHUNT, null, null, null, null, null, null, null, null, null, null)));
        } else if (regulator.kind() != RegulatorKind.TRACKING && regulator.kind() != RegulatorKind.SHUNT) {
            edits.add(new Edit("/regulator/kind", RegulatorKind.SHUNT));
        }
        return new Candidate(
                message,
                edits,
                List.of(
                        Arg.of("resistance", ohms, QuantityKind.RESISTANCE),
                        Arg.of("power", power, QuantityKind.POWER)));
    }
}
