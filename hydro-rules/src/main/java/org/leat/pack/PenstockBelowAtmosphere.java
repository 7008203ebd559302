package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
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
import org.leat.law.Gravity;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Points of the penstock that lie above the hydraulic grade line while running. */
final class PenstockBelowAtmosphere implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/below-atmosphere", Level.WARNING)
            .title("points above the hydraulic grade line")
            .why(
                    "Where the running pipe lies above its grade line the water is under suction. Air comes out of it and in"
                            + " at every joint, gathers there and breaks the flow. Only a siphon that is built as one works.")
            .formula("p = ρ g (intake level − losses so far − V²/(2g) − elevation) ≥ 0 at every point")
            .judged("running on each nozzle set, at the point of lowest pressure")
            .source("energy equation, any text")
            .source(RuleCard.COMMON_PRACTICE)
            .message("above-all", "place")
            .message("suction", "place")
            .message("siphon", "place")
            .message("lower", "place", "elevation")
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
        if (sections.get(0).fromElevation() == null) {
            String path = PipeSizes.path(j.design(), 0);
            return List.of(j.at(path).notGiven(path + "/from-elevation"));
        }
        LowestPoint lowest = LowestPoint.of(j);
        int above = lowest.node() - 1;
        Spot spot = j.at(PipeSizes.path(j.design(), above)).during(lowest.running());
        Arg place = Arg.of("place", lowest.point().at());
        double pressure = lowest.point().pressure();
        if (pressure < 0 && Boolean.TRUE.equals(sections.get(above).siphon())) {
            return List.of(spot.pass("siphon", place));
        }
        return List.of(
                spot.compare(Comparison.atLeast(pressure, 0, QuantityKind.PRESSURE), "above-all", "suction", place));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        LowestPoint lowest = LowestPoint.of(j);
        PlantNumbers numbers = j.plant().numbers();
        double lift = -lowest.point().pressure() / (numbers.water().density() * Gravity.STANDARD);
        double elevation = Math.rint(Math.floor((lowest.point().elevation() - lift) * 10) - 1) / 10;
        if (!reaches(numbers.penstock().sections(), lowest.node(), elevation)) {
            return List.of(); // the pipe is too short to be laid so low there
        }
        Candidate lower = Candidate.of(
                "lower",
                new Edit("/penstock/sections", laidAt(j.design().penstock().sections(), lowest.node(), elevation)),
                Arg.of("place", lowest.point().at()),
                Arg.of("elevation", elevation, QuantityKind.LENGTH));
        return Search.first(this, j, failure, Stream.of(lower)).stream().toList();
    }

    private static boolean reaches(List<SectionNumbers> sections, int node, double elevation) {
        SectionNumbers above = sections.get(node - 1);
        boolean down = Math.abs(above.fromElevation() - elevation) <= above.length();
        return down
                && (node == sections.size()
                        || Math.abs(elevation - sections.get(node).toElevation())
                                <= sections.get(node).length());
    }

    /** The sections with one point between them moved. */
    private static List<Section> laidAt(List<Section> sections, int node, double elevation) {
        Quantity<Length> to = Si.quantity(elevation, "m", Length.class);
        List<Section> laid = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            Section s = sections.get(i);
            laid.add(new Section(
                    s.name(),
                    s.pipe(),
                    s.length(),
                    i == node && s.fromElevation() != null ? to : s.fromElevation(),
                    i == node - 1 ? to : s.toElevation(),
                    s.fittings(),
                    s.ventedHighPoint(),
                    s.siphon()));
        }
        return laid;
    }
}
