package org.leat.pack.intake;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.check.Safer.HIGHER;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Vent;
import org.leat.pack.kit.OutsidePressure;
import org.leat.pack.kit.Worst;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.Si;

/** A way for air into the pipe below a shut-off at the top. */
final class AirVent {

    private static final String PATH = "/intake/vent";

    static final Rule RULE = Rule.of("intake/vent", ERROR, "air into the pipe below a shut-off at the top")
            .why(
                    "Where a valve or a blocked screen shuts the top while the nozzles run, the water hangs in the pipe and"
                            + " draws it flat. A vent pipe below the shut-off lets air in. Without one this fails as an error where"
                            + " the wall buckles, as a warning where only the safety factor is short.")
            .formula("suction = ρ g (elevation above the nozzles), at most a vacuum; limit = 2 E/((1 − ν²)(SDR − 1)³)"
                    + " · ovality factor / safety, E of some hours' load; a vent of at least a share of the bore")
            .judged("top shut or screen blocked, nozzles open, the pipe as hot as it gets")
            .source("PPI Handbook of PE Pipe, ch. 6; AWWA M55 (safety factor 2)")
            .source(COMMON_PRACTICE)
            .limit(OutsidePressure.SAFETY)
            .limit(OutsidePressure.OVALITY)
            .limit(OutsidePressure.CREEP)
            .limit("bore-share", RATIO, 0.333, "", COMMON_PRACTICE, HIGHER)
            .passes(
                    "stands",
                    "Section {section} stands the {value} of suction when its top is shut; its wall may see"
                            + " {limit}.")
            .passes("vented", "A vent of {value:mm} lets air in below the shut-off.")
            .passes("helix", "A helix keeps the hose open under suction.")
            .fails(
                    "collapses",
                    "With its top shut section {section} sees {value} of suction; its wall may see {limit},"
                            + " and there is no vent.")
            .fails("above-valve", "The vent sits above the shut-off and lets no air into section {section}.")
            .fails("narrow", "The vent of {value:mm} is narrow for the pipe; {limit} is good.")
            .judge(AirVent::judge)
            .wayOut(
                    "add-vent",
                    "A vent of {bore:mm} just below the shut-off, its mouth above the highest water level.",
                    AirVent::add)
            .build();

    private AirVent() {}

    private static Outcome judge(Judgement j) {
        Vent vent = j.at("/").given(PATH, j.design().intake()).vent();
        boolean below = vent != null && Boolean.TRUE.equals(vent.belowValve());
        if (vent != null && below && Si.of(vent.bore()) >= least(j)) {
            return wide(j, vent);
        }
        Outcome unvented = unvented(j);
        if (vent == null || unvented.kind() == Kind.PASS) {
            return unvented;
        }
        Spot spot = j.at(PATH);
        return spot.given(PATH + "/below-valve", vent.belowValve())
                ? wide(j, vent)
                : spot.with("section", first(j).name()).says("above-valve");
    }

    private static Outcome wide(Judgement j, Vent vent) {
        return j.at(PATH).saying("vented", "narrow").atLeast(Si.of(vent.bore()), least(j), LENGTH);
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

    private static double least(Judgement j) {
        return j.limit("bore-share").value() * first(j).bore();
    }

    private static Stream<Change> add(Judgement j, Outcome.Fail failure) {
        double millimetres = Math.ceil(least(j) * 1000);
        return Stream.of(Change.of(PATH, new Vent(mm(millimetres), true)).with("bore", millimetres / 1000, LENGTH));
    }
}
