package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.design.Vent;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.OutsidePressure;
import org.leat.pack.kit.PipeSection;

/** The first length of pipe below the intake against the suction behind a blocked screen. */
final class StiffInlet {

    static final Rule RULE = Rule.of("penstock/stiff-inlet", ERROR, "stiffness of the first length below the intake")
            .why(
                    "When leaves close the screen the nozzles go on drawing, and the first metre of pipe takes the suction of"
                            + " the whole fall. Soft hose and thin pipe fold shut there. A vent just below the inlet takes the"
                            + " suction away. Where only the safety factor is short this fails as a warning.")
            .formula("suction = ρ g (elevation above the nozzles), at most a vacuum; limit = 2 E/((1 − ν²)(SDR − 1)³)"
                    + " · ovality factor / safety, E of some hours' load")
            .judged("screen blocked, nozzles open; the sections within the first length")
            .source("PPI Handbook of PE Pipe, ch. 6; AWWA M55 (safety factor 2)")
            .source(COMMON_PRACTICE)
            .limit("length", LENGTH, 1, "m", COMMON_PRACTICE, HIGHER)
            .limits(OutsidePressure.LIMITS)
            .passes("vented", "A vent below the inlet takes the suction away.")
            .passes(
                    "stands",
                    "Section {section} stands the {value} of suction behind a blocked screen; its wall may"
                            + " see {limit}.")
            .fails(
                    "folds",
                    "Behind a blocked screen section {section} sees {value} of suction; its wall may see" + " {limit}.")
            .passes("helix", "Hose {section} has a helix that keeps it open.")
            .fails("soft-hose", "Hose {section} has no helix: the suction behind a blocked screen folds it shut.")
            .judgeAll(StiffInlet::judge)
            .wayOut(
                    "suction-hose",
                    "Suction hose with a helix.",
                    ChangesForText.only("soft-hose", StiffInlet::suctionHose))
            .wayOut("thicker", StrongerPipe.THICKER, StrongerPipe::thicker)
            .wayOut("stronger-grade", StrongerPipe.STRONGER_GRADE, StrongerPipe::strongerGrade)
            .lastAdvice("thick-wall", OutsidePressure.THICK_WALL, OutsidePressure::thickerWall)
            .build();

    private StiffInlet() {}

    private static List<Outcome> judge(Judgement j) {
        Vent vent = j.at("/penstock").given("/intake", j.design().intake()).vent();
        if (vent != null && Boolean.TRUE.equals(vent.belowValve())) {
            return List.of(j.at("/intake/vent").says("vented"));
        }
        List<PipeSection> sections = PipeSection.all(j);
        int near = 1;
        double along = sections.get(0).numbers().length();
        while (near < sections.size() && along < j.limit("length").value()) {
            along += sections.get(near++).numbers().length();
        }
        return j.each(sections.subList(0, near), section -> judge(j, section));
    }

    private static Outcome judge(Judgement j, PipeSection section) {
        Spot spot = section.spot(j);
        if (section.pipe() instanceof Pipe.Hose hose) {
            return spot.saying("helix", "soft-hose")
                    .holds(spot.given(spot.path() + "/suction-proof", hose.suctionProof()));
        }
        return OutsidePressure.stands(
                j,
                spot.saying("stands", "folds"),
                OutsidePressure.hanging(j, section.numbers()),
                OutsidePressure.bucklingOfHours(j, section.numbers()));
    }

    private static Stream<Change> suctionHose(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.of(failure.path() + "/suction-proof", true));
    }
}
