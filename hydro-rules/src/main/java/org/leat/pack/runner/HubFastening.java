package org.leat.pack.runner;

import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TORQUE;

import javax.measure.quantity.Length;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Hub;
import org.leat.design.Runner;
import org.leat.pack.kit.FieldChanges;
import org.leat.plant.duties.HubTorque;

/** The bolts that hold the wheel to its hub against the greatest torque of a moment. */
final class HubFastening {

    private static final String PATH = "/runner/hub";

    static final Rule RULE = Rule.of("runner/hub", WARNING, "bolts between wheel and shaft")
            .warningsHurt()
            .why(
                    "A log in the wheel, or leads that are shorted at speed, put many times the torque of every day on what holds the"
                            + " wheel to its shaft. When that shears the wheel runs away beside an alternator that no longer holds it.")
            .formula(
                    "shear T/(n R A_s) ≤ share · R_m/factor; T the greater of all jets on the jammed wheel and 1.5 p ψ²/L of leads"
                            + " shorted all at once; n bolts on the radius R, A_s 0.69 of their nominal area, R_m that of class 4.6")
            .judged("the wheel jammed, on the nozzle set with the strongest jets; the leads shorted at speed")
            .source("ISO 898-1: class 4.6 has 400 MPa, the weakest that is sold (from memory)")
            .source("VDI 2230-1: shear strength of bolts some 0.6 to 0.7 of the tensile strength (from memory)")
            .source(COMMON_PRACTICE)
            .limit("strength", PRESSURE, 400, "MPa", "ISO 898-1, class 4.6 (from memory)", LOWER)
            .limit("share", RATIO, 0.6, "", "VDI 2230-1 (from memory)", LOWER)
            .limit("factor", RATIO, 3, "", COMMON_PRACTICE, HIGHER)
            .either("holds", "shears", "With {torque} on the hub its bolts see {value:MPa}; they may see {limit:MPa}.")
            .judge(HubFastening::judge)
            .leastWayOut(
                    "thicker",
                    "Bolts of {bolt:mm}.",
                    FieldChanges.sizes(
                            PATH + "/bolt-diameter", "bolt", "mm", Length.class, 4, 5, 6, 8, 10, 12, 16, 20, 24))
            .advice("key", "A key or a taper that carries the torque, the bolts only to hold it together.")
            .build();

    private HubFastening() {}

    private static Outcome judge(Judgement j) {
        Runner runner = j.design().runner();
        Hub hub = j.at("/runner").given(PATH, runner == null ? null : runner.hub());
        Spot spot = j.at(PATH);
        int bolts = spot.given(PATH + "/bolts", hub.bolts());
        double diameter = spot.si(PATH + "/bolt-diameter", hub.boltDiameter());
        double circle = spot.si(PATH + "/bolt-circle", hub.boltCircle());
        HubTorque.Greatest torque = HubTorque.greatest(j.solved());
        double may = j.limit("share").value()
                * j.limit("strength").value()
                / j.limit("factor").value();
        return spot.during(torque.during())
                .with("torque", torque.torque(), TORQUE)
                .atMost(HubTorque.shear(torque.torque(), bolts, diameter, circle), may, PRESSURE);
    }
}
