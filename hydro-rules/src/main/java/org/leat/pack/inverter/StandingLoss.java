package org.leat.pack.inverter;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Inverter;
import org.leat.pack.kit.Inverters;
import org.leat.pack.kit.LeanSeason;
import org.leat.plant.cases.Running;

/** The inverter's own consumption against what the stream gives. */
final class StandingLoss {

    static final Rule RULE = Rule.of(
                    "inverter/standing-loss", WARNING, "the inverter's own consumption against what the stream gives")
            .why(
                    "Fifteen watts day and night are thirty per cent of a plant of fifty. A large inverter on a small stream eats what"
                            + " it should serve.")
            .formula("own consumption / battery power ≤ limit")
            .judged("inverter on day and night, at the flow of the year that gives least")
            .source("energy balance")
            .source(COMMON_PRACTICE)
            .limit("most", RATIO, 10, "%", COMMON_PRACTICE)
            .passes("small", "The inverter itself takes {value} of the {power} that come.")
            .fails("large", "The inverter itself takes {value} of the {power} that come; good is {limit}.")
            .notApplicable("none", Inverters.NONE)
            .judge(Inverters.judge("/inverter/standing-power", StandingLoss::judge))
            .advice(
                    "smaller",
                    "An inverter that takes no more than {power}, or one that sleeps.",
                    StandingLoss::smaller)
            .build();

    private StandingLoss() {}

    private static Outcome judge(Judgement j, Inverter inverter, Spot spot) {
        double standing = spot.si(inverter.standingPower());
        Running lean = LeanSeason.running(j);
        double power = Math.max(lean.operatingPoint().batteryPower(), 1e-3);
        return spot.during(lean).with("power", power, POWER).atMost(standing / power, j.limit("most"));
    }

    private static Stream<Change> smaller(Judgement j, Outcome.Fail failure) {
        double power = Math.max(LeanSeason.running(j).operatingPoint().batteryPower(), 0);
        return Stream.of(Change.advice().with("power", j.limit("most").value() * power, POWER));
    }
}
