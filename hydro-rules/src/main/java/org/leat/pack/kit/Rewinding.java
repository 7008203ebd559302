package org.leat.pack.kit;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.leat.check.Edit;
import org.leat.design.Alternator;
import org.leat.design.Connection;
import org.leat.design.Design;
import org.leat.design.OpenCircuit;
import org.leat.design.Winding;
import org.leat.quantity.Measured;

/** Edits that wind the alternator with other turns or join its windings otherwise. */
public final class Rewinding {

    private Rewinding() {}

    /**
     * {@return the edits} Voltage goes with the turns, resistance and inductance with their square, the current limit
     * against them: the copper space stays full.
     */
    public static List<Edit> edits(Design design, double turns) {
        Alternator a = design.alternator();
        Winding w = a.winding();
        List<Edit> edits = new ArrayList<>();
        if (a.openCircuit() instanceof OpenCircuit.VoltsAtSpeed volts) {
            edits.add(new Edit("/alternator/open-circuit/voltage", times(volts.voltage(), turns)));
        } else if (a.openCircuit() instanceof OpenCircuit.SpeedPerVolt marked) {
            edits.add(new Edit("/alternator/open-circuit/speed-per-volt", times(marked.speedPerVolt(), 1 / turns)));
        }
        double square = turns * turns;
        edits.add(new Edit("/alternator/winding/resistance-between-leads", times(w.resistanceBetweenLeads(), square)));
        if (w.inductanceBetweenLeads() != null) {
            edits.add(new Edit(
                    "/alternator/winding/inductance-between-leads", times(w.inductanceBetweenLeads(), square)));
        }
        if (w.shortCircuitCurrent() != null) {
            edits.add(new Edit("/alternator/winding/short-circuit-current", times(w.shortCircuitCurrent(), 1 / turns)));
        }
        if (a.currentLimit() != null) {
            edits.add(new Edit("/alternator/current-limit", times(a.currentLimit(), 1 / turns)));
        }
        return edits;
    }

    /** {@return the edits that join in delta what is in star: as wound with 1/√3 of the turns, seen from outside} */
    public static List<Edit> toDelta(Design design) {
        return joined(design, Connection.DELTA, 1 / Math.sqrt(3));
    }

    /** {@return the edits that join in star what is in delta} */
    public static List<Edit> toStar(Design design) {
        return joined(design, Connection.STAR, Math.sqrt(3));
    }

    private static List<Edit> joined(Design design, Connection connection, double turns) {
        List<Edit> edits = new ArrayList<>(edits(design, turns));
        edits.add(new Edit("/alternator/winding/connection", connection));
        return edits;
    }

    private static <Q extends Quantity<Q>> Quantity<Q> times(Measured<Q> measured, double factor) {
        return times(measured.value(), factor);
    }

    /** Rounded to four digits: nobody winds or measures closer. */
    private static <Q extends Quantity<Q>> Quantity<Q> times(Quantity<Q> quantity, double factor) {
        double value = quantity.getValue().doubleValue() * factor;
        double rounded = new java.math.BigDecimal(value)
                .round(new java.math.MathContext(4))
                .doubleValue();
        return tech.units.indriya.quantity.Quantities.getQuantity(
                java.math.BigDecimal.valueOf(rounded), quantity.getUnit());
    }
}
