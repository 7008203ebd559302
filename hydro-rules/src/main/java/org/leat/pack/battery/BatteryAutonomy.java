package org.leat.pack.battery;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.Optional;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.LeanSeason;
import org.leat.pack.kit.SolvedYear;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.season.DesignYear;

/** How long the loads run with the turbine stopped. */
final class BatteryAutonomy {

    static final Rule RULE = Rule.of("battery/autonomy", WARNING, "how long the loads run with the turbine stopped")
            .why(
                    "Leaves block the screen, ice the intake, a nozzle plugs: the battery is what keeps the lights on until somebody"
                            + " has walked up the stream.")
            .formula("t = D V C / mean power of the loads at the battery's poles ≥ hours wanted")
            .judged(
                    "turbine stopped; where stream and loads are known for the year: at the charge that the battery has as often as is"
                            + " asked for, the year run hour by hour; else battery full")
            .source("energy balance")
            .limit("often", RATIO, 90, "%", COMMON_PRACTICE)
            .passes("long-enough", "With the turbine stopped the loads run {value} ({mean} in the mean).")
            .fails(
                    "too-short",
                    "With the turbine stopped the loads run {value} ({mean} in the mean); wanted are {limit}.")
            .passes(
                    "long-enough-often",
                    "With the turbine stopped the loads run {value} or longer in {often:%} of the year's hours ({mean} in the"
                            + " mean).")
            .fails(
                    "too-short-often",
                    "With the turbine stopped the loads run {value} or longer in {often:%} of the year's hours ({mean} in the"
                            + " mean); wanted are {limit}.")
            .notApplicable("nothing-taken", "Not judged: the loads take nothing.")
            .judge(BatteryAutonomy::judge)
            .wayOut("larger", BankSizes.BANK, BankSizes::larger)
            .build();

    private BatteryAutonomy() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/battery/autonomy-wanted");
        double wanted = spot.si(j.design().battery().autonomyWanted());
        double mean = LeanSeason.use(j, spot).meanPower();
        if (mean == 0) {
            return spot.says("nothing-taken");
        }
        BatteryNumbers battery = j.numbers().battery();
        Optional<DesignYear.Told> year = j.year();
        double full = battery.usualDepthOfDischarge();
        double depth = year.isEmpty()
                ? full
                : Math.max(
                        0,
                        full
                                - 1
                                + SolvedYear.chargeReached(
                                        year.get(), j.limit("often").value()));
        double usable = depth * battery.storedEnergy();
        Spot told =
                spot.with("mean", mean, POWER).with("often", j.limit("often").value(), RATIO);
        return (year.isEmpty() ? told : told.during(SolvedYear.CASE).saying("long-enough-often", "too-short-often"))
                .atLeast(usable / mean, wanted, TIME);
    }
}
