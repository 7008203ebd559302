package org.leat.pack.intake;

import static org.leat.check.Level.ERROR;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Vent;
import org.leat.pack.kit.OutsidePressure;
import org.leat.pack.kit.Vents;
import org.leat.pack.kit.Worst;
import org.leat.plant.duties.VentAir;
import org.leat.plant.numbers.SectionNumbers;

/** A way for air into the pipe below a shut-off at the top. */
final class AirVent {

    private static final String PATH = Vents.PATH;

    static final Rule RULE = Rule.of("intake/vent", ERROR, "air into the pipe below a shut-off at the top")
            .why(
                    "Where a valve or a blocked screen shuts the top while the nozzles run, the water hangs in the pipe and"
                            + " draws it flat. A vent pipe below the shut-off lets air in, as long as ice does not close it. Without one, or"
                            + " with one too narrow, this fails as an error where the wall buckles, as a warning where only the safety factor"
                            + " is short.")
            .formula("suction = ρ g (elevation above the nozzles), at most a vacuum; limit = 2 E/((1 − ν²)(SDR − 1)³)"
                    + " · ovality factor / safety, E of some hours' load; the vent: " + Vents.FORMULA)
            .judged(
                    "top shut or screen blocked, the nozzles of the set with most flow open, the pipe as hot as it gets, the air as"
                            + " cold as it gets")
            .source("PPI Handbook of PE Pipe, ch. 6; AWWA M55 (safety factor 2)")
            .source(Vents.SOURCE)
            .limits(OutsidePressure.LIMITS)
            .passes(
                    "stands",
                    "Section {section} stands the {value} of suction when its top is shut; its wall may see"
                            + " {limit}.")
            .passes("vented", "A vent of {value:mm} lets air in below the shut-off as fast as {flow} of water leaves.")
            .passes("helix", "A helix keeps the hose open under suction.")
            .fails(
                    "collapses",
                    "With its top shut section {section} sees {value} of suction; its wall may see {limit},"
                            + " and there is no vent.")
            .fails("above-valve", "The vent sits above the shut-off and lets no air into section {section}.")
            .fails(
                    "narrow",
                    "As {flow} of water leaves, a vent of {value:mm} lets air in with more than {drop:bar} of suction, the most"
                            + " that is good; that takes {limit:mm}.")
            .review(
                    "frozen",
                    "The wall does not stand it alone, and the vent freezes shut: what holds the rest of the year does not in frost."
                            + " See intake/vent-freezes.")
            .judge(AirVent::judge)
            .wayOut(
                    "add-vent",
                    "A vent of {bore:mm} just below the shut-off, its mouth above the highest water level, sheltered from frost.",
                    (j, failure) -> Vents.forFlow(j, Math.max(flow(j), VentAir.burstFlow(j.numbers()))))
            .build();

    private AirVent() {}

    private static Outcome judge(Judgement j) {
        Vent vent = j.at("/").given(PATH, j.design().intake()).vent();
        Outcome unvented = unvented(j);
        if (vent == null || unvented.kind() == Kind.PASS) {
            return unvented;
        }
        Spot spot = j.at(PATH);
        if (Vents.below(j, spot) == null) {
            return spot.with("section", first(j).name()).says("above-valve");
        }
        return Vents.staysOpen(j, spot, vent)
                ? Vents.wideEnough(j, spot.saying("vented", "narrow"), vent, flow(j))
                : spot.says("frozen");
    }

    /** Of the set that takes most water, m³/s. */
    private static double flow(Judgement j) {
        return j.solved().running().stream()
                .mapToDouble(running -> running.water().flow())
                .max()
                .orElse(0);
    }

    /** What the pipe would do without a vent, in the section with the least margin. */
    private static Outcome unvented(Judgement j) {
        List<SectionNumbers> soft = OutsidePressure.soft(j);
        return soft.isEmpty()
                ? j.at(PATH).says("helix")
                : Worst.outcome(j.each(
                        soft,
                        section -> OutsidePressure.stands(
                                j,
                                j.at(PATH).saying("stands", "collapses").with("section", section.name()),
                                OutsidePressure.hanging(j, section),
                                OutsidePressure.bucklingOfHours(j, section))));
    }

    private static SectionNumbers first(Judgement j) {
        return j.numbers().penstock().sections().get(0);
    }
}
