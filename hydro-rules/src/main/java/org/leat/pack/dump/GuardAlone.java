package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Safeguards.GuardKind;
import org.leat.design.Safeguards.SecondGuard;
import org.leat.pack.kit.SecondGuards;

/** Whether the second means against overvoltage is able alone. */
final class GuardAlone {

    static final Rule RULE = Rule.of(
                    "dump/guard-alone", ERROR, "whether the second means against overvoltage is able alone")
            .why(
                    "The second means is there for the day on which the first has failed. One that takes half the turbine's power, or"
                            + " comes in above what the electronics stand, does not hold anything then; one that comes in below what"
                            + " the plant works at is on for ever.")
            .formula(
                    "power ≥ the most that a nozzle set makes, unless it stops the water; highest working voltage < trigger ≤ least"
                            + " rating on the node that it watches; with a battery there that does not open by itself, ≤ 1.15 times"
                            + " what that may be charged with")
            .judged("running and battery full, the nozzle set that makes most; of the trigger the side that it watches")
            .source(COMMON_PRACTICE)
            .source(SecondGuards.SOURCE)
            .passes("takes-all", "The second means takes {value}; the turbine makes {limit}.")
            .fails("too-small", "The second means takes {value} and must take {limit} when the first has failed.")
            .passes("stops-water", "The second means takes the water from the wheel.")
            .passes(
                    "window",
                    "The second means comes in at {value}, above what the plant works at and below what its parts stand.")
            .fails(
                    "trigger",
                    "The second means comes in at {value}; it must lie between what the plant works at and what its parts stand:"
                            + " {limit}.")
            .fails(
                    "no-window",
                    "No trigger suits a second means: the plant works at up to {working}, and its weakest part stands {weakest}.")
            .notApplicable("none", "Not judged: no second means is told.")
            .judgeAll(GuardAlone::judge)
            .wayOut(
                    "deflector",
                    "A deflector that drops in, released a tenth above the highest working voltage.",
                    SecondGuards::deflector)
            .build();

    private GuardAlone() {}

    private static List<Outcome> judge(Judgement j) {
        if (!Boolean.TRUE.equals(SecondGuards.stated(j))) {
            return List.of(j.at(SecondGuards.PATH).says("none"));
        }
        j.solved();
        SecondGuard guard = SecondGuards.told(j, j.at("/safeguards"));
        return j.all(() -> power(j, guard), () -> trigger(j, guard));
    }

    private static Outcome power(Judgement j, SecondGuard guard) {
        if (guard.kind() == GuardKind.DEFLECTOR) {
            return j.at(SecondGuards.PATH + "/kind").says("stops-water");
        }
        Spot spot = j.at(SecondGuards.PATH + "/power").saying("takes-all", "too-small");
        return spot.atLeast(spot.si(guard.power()), SecondGuards.mostPower(j), POWER);
    }

    private static Outcome trigger(Judgement j, SecondGuard guard) {
        Spot spot = j.at(SecondGuards.PATH + "/trigger-voltage").saying("window", "trigger");
        double trigger = spot.si(guard.triggerVoltage());
        double working = SecondGuards.working(j, SecondGuards.atBattery(j, guard));
        double most = SecondGuards.most(j, spot, guard);
        return most > working
                ? spot.within(trigger, working, most, VOLTAGE)
                : spot.with("working", working, VOLTAGE)
                        .with("weakest", most, VOLTAGE)
                        .says("no-window");
    }
}
