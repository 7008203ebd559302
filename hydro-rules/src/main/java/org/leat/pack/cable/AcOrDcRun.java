package org.leat.pack.cable;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.Comparator;
import java.util.Optional;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Place;
import org.leat.pack.kit.Runs;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.solved.EnergyAccount;

/** Which side of the bridge is cheaper to run long. */
final class AcOrDcRun {

    static final Rule RULE = Rule.of("cable/ac-or-dc-run", NOTE, "which side of the bridge is cheaper to run long")
            .why("The long way from the stream to the battery can be walked by three cores before the bridge or by two"
                    + " behind it. For the same copper one of them loses less.")
            .formula(
                    "same copper: three cores of area A lose 3 r I_ph², two of 1.5 A lose 2 (r/1.5) I_dc²; the excess of the"
                            + " run as it is, as a share of the bridge's power ≤ limit")
            .judged("running on the nozzles open as built, the longer of the two runs")
            .source("Ohm's law; IEC 60364-5-52 annex G")
            .source(COMMON_PRACTICE)
            .limit("worth-it", RATIO, 1, "%", COMMON_PRACTICE)
            .passes(
                    "as-good",
                    "The run {run} loses {lost}; on the other side of the bridge the same copper would lose {other}.")
            .fails(
                    "better",
                    "The run {run} loses {lost}; on the other side of the bridge the same copper would lose {other}: {value}"
                            + " of the power more is to be had.")
            .notApplicable("no-current", "Not judged: no current flows.")
            .judge(AcOrDcRun::judge)
            .advice("bridge-at-battery", "Set the bridge beside the battery and run three cores.", otherSide(false))
            .advice("bridge-at-stream", "Set the bridge beside the alternator and run two cores.", otherSide(true))
            .build();

    private AcOrDcRun() {}

    private static Outcome judge(Judgement j) {
        Running running = j.solved().running().get(0);
        CableNumbers run = j.at("/cables").given(longest(j).orElse(null));
        double power = running.operatingPoint().energy().at(EnergyAccount.Stage.DIRECT_CURRENT);
        Spot spot = j.at(run.path()).during(running);
        if (!(power > 0)) {
            return spot.says("no-current");
        }
        double core = run.coreResistance();
        double phase = running.operatingPoint().phaseCurrent();
        double direct = running.operatingPoint().directCurrent();
        // the same copper in two cores in place of three, or in three in place of two
        double lost = alternating(run) ? 3 * core * phase * phase : 2 * core * direct * direct;
        double other = alternating(run) ? 2 * core / 1.5 * direct * direct : 3 * core * 1.5 * phase * phase;
        return spot.with(Runs.arg("run", j.design(), run))
                .with("lost", lost, POWER)
                .with("other", other, POWER)
                .atMost((lost - other) / power, j.limit("worth-it"));
    }

    /** The first of the longest runs on the way from the alternator to the bus. */
    private static Optional<CableNumbers> longest(Judgement j) {
        return j.numbers().cables().stream()
                .filter(run -> alternating(run)
                        || run.joins(Place.RECTIFIER, Place.REGULATOR)
                        || run.joins(Place.RECTIFIER, Place.BATTERY))
                .min(Comparator.comparingDouble(run -> -run.length()));
    }

    private static boolean alternating(CableNumbers run) {
        return run.joins(Place.ALTERNATOR, Place.RECTIFIER);
    }

    private static org.leat.check.Change.Changes otherSide(boolean alternating) {
        return (j, failure) -> longest(j).filter(run -> alternating(run) == alternating).stream()
                .map(run -> Change.advice());
    }
}
