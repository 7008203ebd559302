package org.leat.pack.runner;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.SPEED;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Limit;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.RunnerKind;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Bucket speed over jet speed at the solved operating point of each nozzle set. */
final class BucketSpeedRatio {

    static final Rule RULE = Rule.of("runner/speed-ratio", WARNING, "bucket speed against jet speed")
            .why(
                    "A wheel takes most from the jet when its buckets move a little slower than half as fast. Where battery"
                            + " and winding hold it far from that, the water leaves with the power.")
            .formula("φ = π D_p n / V_j, at the speed where runner and alternator torque meet")
            .judged("running on each nozzle set on hand, battery at its state of charge")
            .source("Euler's turbine equation; best ratio of real wheels 0.43 to 0.48 on √(2gH): White, Fluid Mechanics"
                    + " (from memory)")
            .source(COMMON_PRACTICE)
            .limit("low", RATIO, 0.40, "", COMMON_PRACTICE)
            .limit("high", RATIO, 0.50, "", COMMON_PRACTICE)
            .limit("turgo-low", RATIO, 0.45, "", COMMON_PRACTICE)
            .limit("turgo-high", RATIO, 0.58, "", COMMON_PRACTICE)
            .passes("matched", "The buckets move at {value} of the jet's {jet} ({speed:rpm}).")
            .fails(
                    "mismatched",
                    "The buckets move at {value} of the jet's {jet} ({speed:rpm}, {power} into the battery); the wheel wants"
                            + " {limit}.")
            .notApplicable("no-current", "Not judged: no current flows, the wheel runs free.")
            .judgeAll(BucketSpeedRatio::judge)
            .wayOut(
                    "other-diameter",
                    "A pitch diameter of {diameter:mm}: ratio {ratio}, {power}.",
                    SpeedMatch::otherDiameter)
            .wayOut("other-cells", "A bank of {cells} cells in series: ratio {ratio}, {power}.", SpeedMatch::otherCells)
            .wayOut(
                    "other-turns",
                    "A winding with {turns} times the turns in the same copper space: ratio {ratio}, {power}.",
                    SpeedMatch::otherTurns)
            .wayOut(
                    "delta",
                    "The winding joined in delta: ratio {ratio}, {power}. A hub motor then drives a circulating current round its"
                            + " own phases: measure the idle losses again.",
                    SpeedMatch::delta)
            .wayOut("star", "The winding joined in star: ratio {ratio}, {power}.", SpeedMatch::star)
            .wayOut(
                    "tracking",
                    "A tracking regulator that stands {voltage} at its input, the most of any case: ratio {ratio}, {power}.",
                    SpeedMatch::tracking)
            .mostPowerFirst()
            .build();

    private BucketSpeedRatio() {}

    private static List<Outcome> judge(Judgement j) {
        boolean turgo =
                j.at("/").given("/runner/pitch-diameter", j.design().runner()).kind() == RunnerKind.TURGO;
        Limit low = j.limit(turgo ? "turgo-low" : "low");
        Limit high = j.limit(turgo ? "turgo-high" : "high");
        return j.each(j.solved().running(), running -> judge(j, running, low, high));
    }

    private static Outcome judge(Judgement j, Running running, Limit low, Limit high) {
        OperatingPoint point = running.operatingPoint();
        Spot spot = j.at("/runner/pitch-diameter").during(running);
        if (!point.loaded()) {
            return spot.says("no-current");
        }
        return spot.with("speed", point.speed(), ROTATIONAL_SPEED)
                .with("jet", running.water().jetVelocity(), SPEED)
                .with("power", point.batteryPower(), POWER)
                .within(point.speedRatio(), low, high);
    }
}
