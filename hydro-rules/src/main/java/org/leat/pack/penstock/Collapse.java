package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Vent;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.OutsidePressure;
import org.leat.pack.kit.PipeSection;
import org.leat.pack.kit.Vents;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.Running;
import org.leat.plant.loads.OutsideLoad;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solved.WaterSide.NodePressure;

/** Lowest pressure while running or in a stop against what the wall stands from outside. */
final class Collapse {

    /** Pressure head deeper than any vacuum, m. */
    private static final double FAR_BELOW_VACUUM = 100;

    static final Rule RULE = Rule.of("penstock/collapse", ERROR, "lowest pressure against the pipe's collapse")
            .why(
                    "A stop that hammers is followed by suction as deep; so is a siphon. A thin wall folds flat in it, and a"
                            + " fold is where it cracks. Where only the safety factor is short this fails as a warning.")
            .formula(
                    "running: p = ρ g (grade line − elevation); stop: one pipe shut at the nozzles, the mirror image of"
                            + " the surge below the intake's level; else a vacuum, or the lowest of the waves where the wall would not"
                            + " stand that; limit = 2 E/((1 − ν²)(SDR − 1)³) · ovality factor / safety")
            .judged(
                    "running on each nozzle set (E of hours), and every stop of the water, at the nozzles or at the intake (E of a"
                            + " surge, of the wall at its warmest)")
            .source("PPI Handbook of PE Pipe, ch. 6; AWWA M55 (safety factor 2); Wylie and Streeter, ch. 2")
            .limits(OutsidePressure.LIMITS)
            .passes("stands", "Section {section} sees {value} of suction at the worst; its wall may see {limit}.")
            .passes("helix", "Hose {section} has a helix that keeps it open under suction.")
            .fails("collapses", "Section {section} sees {value} of suction; its wall may see {limit}.")
            .judgeAll(Collapse::judge)
            .wayOut("thicker", StrongerPipe.THICKER, StrongerPipe::thicker)
            .wayOut("stronger-grade", StrongerPipe.STRONGER_GRADE, StrongerPipe::strongerGrade)
            .lastAdvice("thick-wall", OutsidePressure.THICK_WALL, OutsidePressure::thickerWall)
            .build();

    private Collapse() {}

    private static List<Outcome> judge(Judgement j) {
        List<Running> running = j.solved().running();
        return j.each(PipeSection.all(j), section -> {
            Spot spot = section.spot(j);
            if (!OutsidePressure.isSoft(section)) {
                return spot.says("helix");
            }
            Amount hours = OutsidePressure.bucklingOfHours(j, section.numbers());
            int i = section.index();
            List<Outcome> all = new ArrayList<>(
                    j.each(running, r -> OutsidePressure.stands(j, spot.during(r), suction(r, i), hours)));
            all.addAll(j.each(j.solved().closing(), stop -> stop(j, spot.during(stop), stop, i)));
            return Worst.outcome(all);
        });
    }

    /** By the bound that costs nothing; by the waves where the wall would not stand that. */
    private static Outcome stop(Judgement j, Spot spot, Closing closing, int index) {
        SectionNumbers section = j.numbers().penstock().sections().get(index);
        Amount buckling = OutsidePressure.buckling(j, section, section.modulusWhenWarm());
        double bound = bound(j, closing, section, spot.known(closing.surgeHead()));
        Outcome cheap = OutsidePressure.stands(j, spot, bound, buckling);
        if (cheap.kind() == Kind.PASS) {
            return cheap;
        }
        if (closing.cause() == Closing.Cause.SCREEN_BLOCKED) {
            spot.given("/intake", j.design().intake()); // a vent may be there
        }
        Vent vent = DesignParts.intake(j).vent();
        if (closing.cause().atIntake() && vent != null) {
            Vents.staysOpen(j, spot, vent); // a vent that freezes is none
        }
        // where the column parts the water boils at next to a vacuum: no wave sucks more
        double waves = Math.max(0, -closing.lowest().get(index).or(-bound));
        return OutsidePressure.stands(j, spot, Math.min(bound, waves), buckling);
    }

    /** In one pipe the mirror image of the surge; else, and where the water hangs below a shut inlet, a vacuum. */
    private static double bound(Judgement j, Closing closing, SectionNumbers section, double surge) {
        double highest = Math.max(section.fromElevation(), section.toElevation());
        boolean mirror =
                !closing.cause().atIntake() && j.numbers().penstock().sections().size() == 1;
        return OutsideLoad.suction(
                j.numbers(), mirror ? j.numbers().site().grossHead() - surge - highest : -FAR_BELOW_VACUUM);
    }

    private static double suction(Running running, int index) {
        List<NodePressure> nodes = running.water().nodes();
        return Math.max(
                0, -Math.min(nodes.get(index).pressure(), nodes.get(index + 1).pressure()));
    }
}
