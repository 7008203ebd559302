package org.leat.pack;

import java.util.List;
import javax.measure.quantity.Force;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Fitting;
import org.leat.design.Penstock;
import org.leat.design.Section;
import org.leat.hydraulics.BendThrust;
import org.leat.hydraulics.EndThrust;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Thrust at bends and at the end against what the anchors hold. */
final class PenstockThrust implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/thrust", Level.WARNING)
            .title("thrust at bends and end against the anchors")
            .why(
                    "Water under pressure pushes every bend outward and the end off the pipe, hardest in the moment of a surge."
                            + " An anchor that gives lets joints slip out one by one.")
            .formula("end: p A; bend: 2 (p A + ρ Q²/A) sin(θ/2); A of the outside diameter, p of the worst stop")
            .judged("the worst stop of the water, at its highest pressure, wherever the bend lies in its section")
            .source("EN 805; momentum theorem")
            .message("held", "place")
            .message("not-held", "place")
            .message("anchor", "force")
            .build();

    private static final String PATH = "/penstock/anchors";

    @Override
    public RuleCard card() {
        return CARD;
    }

    /** The greatest thrust and where it acts. */
    private record Thrust(double force, String section, String during) {}

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().closing().isEmpty()) {
            return Open.unsolved(j);
        }
        Penstock penstock = j.design().penstock();
        if (penstock.anchors() == null) {
            return List.of(j.at("/penstock").notGiven(PATH));
        }
        Thrust worst = new Thrust(0, "", "");
        for (int i = 0; i < penstock.sections().size(); i++) {
            HighestPressure.Peak peak = HighestPressure.of(j, i);
            if (!(peak.pressure() instanceof Amount.Known known)) {
                return List.of(Open.because(j.at(PATH), peak.pressure()));
            }
            double force = force(j, i, Math.max(0, known.value()));
            if (force > worst.force()) {
                worst = new Thrust(force, penstock.sections().get(i).name(), peak.during());
            }
        }
        return List.of(j.at(PATH)
                .during(worst.during())
                .compare(
                        Comparison.atMost(worst.force(), Si.of(penstock.anchors()), QuantityKind.FORCE),
                        "held",
                        "not-held",
                        Arg.of("place", worst.section())));
    }

    private static double force(Judgement j, int index, double pressure) {
        SectionNumbers section = j.plant().numbers().penstock().sections().get(index);
        List<Section> sections = j.design().penstock().sections();
        double diameter = section.outsideDiameter();
        double flow = j.cases().running().get(0).water().flow();
        double density = j.plant().numbers().water().density();
        double force = index == sections.size() - 1 ? EndThrust.force(pressure, diameter) : 0;
        for (Fitting fitting : sections.get(index).fittings()) {
            double angle = angle(fitting);
            if (angle > 0) {
                force = Math.max(force, BendThrust.force(pressure, density, flow, diameter, Math.min(Math.PI, angle)));
            }
        }
        return force;
    }

    private static double angle(Fitting fitting) {
        return switch (fitting.kind()) {
            case BEND_90, ELBOW_90 -> Si.of(fitting.angle(), Math.PI / 2);
            case BEND_45, ELBOW_45 -> Si.of(fitting.angle(), Math.PI / 4);
            default -> 0;
        };
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        double newtons = Math.ceil(comparison.value() / 100) * 100;
        return List.of(j.wayOut(
                "anchor",
                List.of(new Edit(PATH, Si.quantity(newtons, "N", Force.class))),
                Arg.of("force", newtons, QuantityKind.FORCE)));
    }
}
