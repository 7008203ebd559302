package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Section;
import org.leat.hydraulics.AirPocketFlushing;
import org.leat.law.Answer;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;

/** High points along the run: vented, or flushed by the water. */
final class PenstockAirPockets implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/air-pockets", Level.WARNING)
            .title("air at high points")
            .why(
                    "Air that gathers behind a high point narrows the pipe like a half-shut valve and comes through the nozzle"
                            + " in gulps. Fast water carries it down; slow water needs an air valve.")
            .formula("V ≥ 1.1 (0.56 √sin θ + 0.61) √(g D) in the pipe that falls behind the high point, θ its fall")
            .judged("running on the nozzle set open as built; a section is taken to slope evenly between its ends")
            .source("Escarameia, Air problems in pipelines, HR Wallingford SR 649, 2005 (from memory)")
            .message("no-high-point")
            .message("vented", "section")
            .message("flushed", "section", "below")
            .message("gathers", "section", "below")
            .message("add-vent", "section")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        List<Section> sections = j.design().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < sections.size() - 1; i++) {
            String path = PipeSizes.path(j.design(), i);
            if (sections.get(i).toElevation() == null && sections.get(i + 1).fromElevation() == null) {
                outcomes.add(j.at(path).notGiven(path + "/to-elevation"));
            } else if (rises(j, i) && !rises(j, i + 1)) {
                outcomes.add(judge(j, i, path));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/penstock").pass("no-high-point")) : outcomes;
    }

    private static boolean rises(Judgement j, int section) {
        SectionNumbers s = j.plant().numbers().penstock().sections().get(section);
        return s.toElevation() > s.fromElevation();
    }

    private static Outcome judge(Judgement j, int index, String path) {
        Section section = j.design().penstock().sections().get(index);
        SectionNumbers below = j.plant().numbers().penstock().sections().get(index + 1);
        Spot spot = j.at(path).during(j.cases().running().get(0));
        Arg name = Arg.of("section", section.name());
        if (Boolean.TRUE.equals(section.ventedHighPoint())) {
            return spot.pass("vented", name);
        }
        double fall = Math.asin(Math.min(1, (below.fromElevation() - below.toElevation()) / below.length()));
        Answer least = AirPocketFlushing.leastVelocity(below.bore(), fall);
        if (least instanceof Answer.Outside outside) {
            return section.ventedHighPoint() == null
                    ? spot.notGiven(path + "/vented-high-point")
                    : spot.outsideOf(outside);
        }
        double velocity =
                j.cases().running().get(0).water().sections().get(index + 1).velocity();
        Comparison comparison = Comparison.atLeast(velocity, least.orThrow(), QuantityKind.SPEED);
        if (!comparison.holds() && section.ventedHighPoint() == null) {
            return spot.notGiven(path + "/vented-high-point");
        }
        return spot.compare(comparison, "flushed", "gathers", name, Arg.of("below", below.name()));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<Section> sections = j.design().penstock().sections();
        for (int i = 0; i < sections.size(); i++) {
            if (failure.path().equals(PipeSizes.path(j.design(), i))) {
                Edit vent = new Edit(failure.path() + "/vented-high-point", true);
                return List.of(j.wayOut(
                        "add-vent",
                        List.of(vent),
                        Arg.of("section", sections.get(i).name())));
            }
        }
        return List.of();
    }
}
