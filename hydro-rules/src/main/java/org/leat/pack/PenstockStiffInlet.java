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
import org.leat.design.Intake;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.design.Vent;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;

/** The first length of pipe below the intake against the suction behind a blocked screen. */
final class PenstockStiffInlet implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/stiff-inlet", Level.ERROR)
            .title("stiffness of the first length below the intake")
            .why(
                    "When leaves close the screen the nozzles go on drawing, and the first metre of pipe takes the suction of"
                            + " the whole fall. Soft hose and thin pipe fold shut there. A vent just below the inlet takes the"
                            + " suction away. Where only the safety factor is short this fails as a warning.")
            .formula("suction = ρ g (elevation above the nozzles), at most a vacuum; limit = 2 E/((1 − ν²)(SDR − 1)³)"
                    + " · ovality factor / safety, E of some hours' load")
            .judged("screen blocked, nozzles open; the sections within the first length")
            .source("PPI Handbook of PE Pipe, ch. 6; AWWA M55 (safety factor 2)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("length", QuantityKind.LENGTH, 1, "m", RuleCard.COMMON_PRACTICE)
            .limit("safety", QuantityKind.RATIO, 2, "", "AWWA M55; PPI")
            .limit("ovality", QuantityKind.RATIO, 3, "%", "coiled pipe, PPI Handbook of PE Pipe, ch. 6 (from memory)")
            .limit("creep", QuantityKind.RATIO, 1.9, "", OutsidePressure.CREEP_SOURCE)
            .message("vented")
            .message("stands", "section")
            .message("folds", "section")
            .message("helix", "section")
            .message("soft-hose", "section")
            .message("suction-hose")
            .message("thicker", "sdr", "rating")
            .message("stronger-grade", "sdr", "rating")
            .message("thick-wall", "ratio")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Intake intake = j.design().intake();
        if (intake == null) {
            return List.of(j.at("/penstock").notGiven("/intake"));
        }
        Vent vent = intake.vent();
        if (vent != null && Boolean.TRUE.equals(vent.belowValve())) {
            return List.of(j.at("/intake/vent").pass("vented"));
        }
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        double before = 0;
        for (int i = 0; i < sections.size() && before < j.limit("length").value(); i++) {
            outcomes.add(
                    judge(j, sections.get(i), j.design().penstock().sections().get(i)));
            before += sections.get(i).length();
        }
        return outcomes;
    }

    private static Outcome judge(Judgement j, SectionNumbers section, Section of) {
        String path = section.path() + "/pipe";
        Spot spot = j.at(path);
        Arg name = Arg.of("section", section.name());
        if (of.pipe() instanceof Pipe.Hose hose) {
            if (hose.suctionProof() == null) {
                return spot.notGiven(path + "/suction-proof");
            }
            return hose.suctionProof() ? spot.pass("helix", name) : spot.fail("soft-hose", name);
        }
        Amount critical = OutsidePressure.critical(
                section,
                OutsidePressure.modulusOfHours(section, j.limit("creep").value()),
                j.limit("ovality").value());
        if (!(critical instanceof Amount.Known known)) {
            return Open.because(spot, critical);
        }
        double suction = OutsidePressure.hanging(j, Math.max(section.fromElevation(), section.toElevation()));
        double safety = j.limit("safety").value();
        Comparison comparison = Comparison.atMost(suction, known.value() / safety, QuantityKind.PRESSURE);
        if (!comparison.holds() && j.design().intake() == null) {
            return spot.notGiven("/intake/vent");
        }
        return spot.compare(OutsidePressure.level(comparison, safety), comparison, "stands", "folds", name);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        if (failure.message().id().equals("soft-hose")) {
            return List.of(j.wayOut("suction-hose", List.of(new Edit(failure.path() + "/suction-proof", true))));
        }
        List<WayOut> ways = StrongerPipe.ways(this, j, failure, Double.NaN);
        return ways.isEmpty() ? OutsidePressure.thickerWall(j, failure) : ways;
    }
}
