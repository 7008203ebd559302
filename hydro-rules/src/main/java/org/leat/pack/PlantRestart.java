package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.catalogue.CellChemistryCatalogue;
import org.leat.catalogue.CellProperty;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.solve.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** Whether the plant comes back on a flat battery. */
final class PlantRestart implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("plant/restart", Level.WARNING)
            .title("whether the plant comes back on a flat battery")
            .why(
                    "After days with a blocked intake the battery is flat when the water returns, and nobody is there. On a low bus the"
                            + " alternator pushes more current and holds less torque.")
            .formula(
                    "greatest alternator torque on the bus of an empty battery / runner torque at the same speed ≥ limit")
            .judged("running on the nozzles open as built, battery at the voltage at which loads are shed")
            .source("three-mode bridge model, held against circuit simulation")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("least", QuantityKind.RATIO, 1.1, "", RuleCard.COMMON_PRACTICE)
            .message("comes-back", "power")
            .message("slips", "power")
            .message("asleep")
            .message("smaller-nozzle", "bore")
            .message("other-turns", "turns", "diameter")
            .message("wake")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        BatteryNumbers battery = j.plant().numbers().battery();
        double empty = battery.cellsInSeries()
                * CellChemistryCatalogue.usual(battery.chemistry(), CellProperty.LOW_VOLTAGE_DISCONNECT);
        Running built = j.cases().running().get(0);
        OperatingPoint flat = j.plant()
                .withBattery(new BatteryNumbers(
                        battery.chemistry(),
                        battery.cellsInSeries(),
                        battery.capacity(),
                        0,
                        Math.min(empty, battery.restingVoltage()),
                        battery.internalResistance(),
                        battery.chargeCurrentLimit(),
                        battery.chargeVoltageLimit(),
                        battery.absorptionVoltage()))
                .running(built.nozzles())
                .operatingPoint();
        Spot spot = j.at("/battery").during("battery-flat");
        if (flat.hold() == OperatingPoint.Hold.BELOW_CUT_IN) {
            return List.of(spot.fail("asleep"));
        }
        double runner = flat.peak().runnerTorque();
        return List.of(spot.compare(
                Comparison.atLeast(runner <= 0 ? Double.MAX_VALUE : flat.peak().torque() / runner, j.limit("least")),
                "comes-back",
                "slips",
                Arg.of("power", flat.batteryPower(), QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        if (failure.comparison() == null) {
            return List.of(j.advice("wake"));
        }
        List<WayOut> ways = new ArrayList<>();
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        OtherTurns.any(this, j, failure, "other-turns").ifPresent(ways::add);
        return ways;
    }
}
