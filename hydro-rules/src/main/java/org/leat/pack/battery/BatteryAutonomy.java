package org.leat.pack.battery;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.TIME;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.Lean;
import org.leat.plant.numbers.BatteryNumbers;

/** How long the loads run with the turbine stopped. */
final class BatteryAutonomy {

    static final Rule RULE = Rule.of("battery/autonomy", WARNING, "how long the loads run with the turbine stopped")
            .why(
                    "Leaves block the screen, ice the intake, a nozzle plugs: the battery is what keeps the lights on until somebody"
                            + " has walked up the stream.")
            .formula("t = D V C / mean power of the loads at the battery's poles ≥ hours wanted")
            .judged("turbine stopped, battery full")
            .source("energy balance")
            .passes("long-enough", "With the turbine stopped the loads run {value} ({mean} in the mean).")
            .fails(
                    "too-short",
                    "With the turbine stopped the loads run {value} ({mean} in the mean); wanted are {limit}.")
            .judge(BatteryAutonomy::judge)
            .wayOut("larger", "A bank of {capacity:Ah}.", BankSizes::larger)
            .build();

    private BatteryAutonomy() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/battery/autonomy-wanted");
        double wanted = spot.si(j.design().battery().autonomyWanted());
        double mean = Lean.use(j, spot).meanPower();
        BatteryNumbers battery = j.numbers().battery();
        double usable = battery.usualDepthOfDischarge() * battery.storedEnergy();
        return spot.with("mean", mean, POWER).atLeast(mean > 0 ? usable / mean : Double.MAX_VALUE, wanted, TIME);
    }
}
