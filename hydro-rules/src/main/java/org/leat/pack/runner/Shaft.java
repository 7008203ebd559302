package org.leat.pack.runner;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.FORCE;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TORQUE;

import java.util.Objects;
import javax.measure.quantity.Length;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Bearings;
import org.leat.design.Hub;
import org.leat.design.Runner;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.RunnerParts;
import org.leat.plant.duties.HubTorque;
import org.leat.plant.duties.ShaftLoading;

/** The shaft that carries the wheel against the greatest torque of a moment and the pull of the jets. */
final class Shaft {

    private static final String PATH = "/runner/hub/shaft-diameter";

    static final Rule RULE = Rule.of("runner/shaft", ERROR, "stress in the shaft beside the wheel")
            .why(
                    "The shaft of a motor made for other work is seldom made for a wheel that hangs on it. It is bent to and fro at every"
                            + " turn, and a log in the wheel or shorted leads twist it as well; where it breaks, the wheel is loose at"
                            + " speed. Where only the safety factor is short this fails as a warning.")
            .formula(
                    "16 √(4 M² + 3 T²)/(π d³) ≤ R_e/factor; T the greater of all jets on the jammed wheel and 1.5 p ψ²/L of leads"
                            + " shorted all at once, M the force of all jets on the jammed wheel and its weight, at the near bearing")
            .judged(
                    "a solid shaft, one that is bored for leads holds less; the wheel jammed, on the nozzle set with the strongest jets; the leads shorted at speed")
            .source("Shigley, Mechanical Engineering Design: shafts by distortion energy (from memory)")
            .source("EN 10025-2: S235 yields at 235 MPa, the weakest steel that shafts are made of (from memory)")
            .source(COMMON_PRACTICE)
            .limit("yield", PRESSURE, 235, "MPa", "EN 10025-2, S235 (from memory)", LOWER)
            .limit("factor", RATIO, 3, "", COMMON_PRACTICE, HIGHER)
            .either(
                    "holds",
                    "yields",
                    "Under {torque} and a pull of {pull} the shaft sees {value:MPa}; it may see {limit:MPa}.")
            .judge(Shaft::judge)
            .leastWayOut(
                    "thicker",
                    "A shaft of {shaft:mm}.",
                    FieldChanges.sizes(
                            PATH, "shaft", "mm", Length.class, 8, 10, 12, 15, 17, 20, 25, 30, 35, 40, 45, 50))
            .advice(
                    "bearing-beyond",
                    "A bearing on the other side of the wheel too, in line with the first, or the wheel closer to the bearing.")
            .build();

    private Shaft() {}

    private static Outcome judge(Judgement j) {
        Runner runner = j.design().runner();
        Hub hub = j.at("/runner").given("/runner/hub", runner == null ? null : runner.hub());
        Spot spot = j.at(PATH);
        double diameter = spot.si(hub.shaftDiameter());
        Bearings bearings = j.at("/").given("/runner/bearings", RunnerParts.bearings(j));
        double mass = spot.si("/runner/mass", Objects.requireNonNull(runner).mass());
        double overhang = spot.si("/runner/bearings/overhang", bearings.overhang());
        HubTorque.Greatest torque = HubTorque.greatest(j.solved());
        ShaftLoading strain = ShaftLoading.of(j.numbers(), torque, mass, overhang);
        double factor = j.limit("factor").value();
        double may = j.limit("yield").value() / factor;
        double stress = strain.stress(diameter);
        return spot.as(stress > may * factor ? ERROR : WARNING)
                .during(torque.during())
                .with("torque", strain.torque(), TORQUE)
                .with("pull", strain.pull(), FORCE)
                .atMost(stress, may, PRESSURE);
    }
}
