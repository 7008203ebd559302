package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.m;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Section;
import org.leat.design.SectionBuilder;
import org.leat.plant.numbers.SectionNumbers;

/** Points of the penstock that lie above the hydraulic grade line while running. */
final class BelowAtmosphere {

    static final Rule RULE = Rule.of("penstock/below-atmosphere", WARNING, "points above the hydraulic grade line")
            .why(
                    "Where the running pipe lies above its grade line the water is under suction. Air comes out of it and in"
                            + " at every joint, gathers there and breaks the flow. Only a siphon that is built as one works.")
            .formula("p = ρ g (intake level − losses so far − V²/(2g) − elevation) ≥ 0 at every point")
            .judged("running on each nozzle set, at the point of lowest pressure")
            .source("energy equation, any text")
            .source(COMMON_PRACTICE)
            .passes(
                    "above-all",
                    "The running pipe lies below its grade line all the way; the least pressure, at {place},"
                            + " is {value}.")
            .fails(
                    "suction",
                    "At {place} the running water stands at {value}: the pipe lies above its grade line" + " there.")
            .passes("siphon", "At {place} the water runs under suction, as a siphon built for it.")
            .judge(BelowAtmosphere::judge)
            .wayOut("lower", "The pipe at {place} laid {elevation:m} above the nozzles.", BelowAtmosphere::lower)
            .build();

    private BelowAtmosphere() {}

    private static Outcome judge(Judgement j) {
        LowestPoint lowest = LowestPoint.of(j);
        Section above = j.design().penstock().sections().get(lowest.node() - 1);
        double pressure = lowest.point().pressure();
        return pressure < 0 && Boolean.TRUE.equals(above.siphon())
                ? lowest.spot(j).says("siphon")
                : lowest.spot(j).atLeast(pressure, 0, PRESSURE);
    }

    private static Stream<Change> lower(Judgement j, Outcome.Fail failure) {
        LowestPoint lowest = LowestPoint.of(j);
        double lift = -lowest.point().pressure() / j.numbers().water().specificWeight();
        double elevation = Math.rint(Math.floor((lowest.point().elevation() - lift) * 10) - 1) / 10;
        if (!reaches(j.numbers().penstock().sections(), lowest.node(), elevation)) {
            return Stream.empty(); // the pipe is too short to be laid so low there
        }
        List<Section> laid = laidAt(j.design().penstock().sections(), lowest.node(), elevation);
        return Stream.of(Change.of("/penstock/sections", laid)
                .with("place", lowest.point().at())
                .with("elevation", elevation, LENGTH));
    }

    private static boolean reaches(List<SectionNumbers> sections, int node, double elevation) {
        SectionNumbers above = sections.get(node - 1);
        SectionNumbers below = node == sections.size() ? null : sections.get(node);
        return Math.abs(above.fromElevation() - elevation) <= above.length()
                && (below == null || Math.abs(elevation - below.toElevation()) <= below.length());
    }

    /** The sections with one point between them moved. */
    private static List<Section> laidAt(List<Section> sections, int node, double elevation) {
        List<Section> laid = new ArrayList<>(sections);
        laid.set(
                node - 1,
                SectionBuilder.builder(sections.get(node - 1))
                        .toElevation(m(elevation))
                        .build());
        if (node < sections.size() && sections.get(node).fromElevation() != null) {
            laid.set(
                    node,
                    SectionBuilder.builder(sections.get(node))
                            .fromElevation(m(elevation))
                            .build());
        }
        return laid;
    }
}
