package org.leat.pack.regulator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.BusPart;
import org.leat.pack.kit.SecondGuards;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;

/** A tracking or series regulator whose switch fails short. */
final class FailedShort {

    private static final String PATH = SecondGuards.STATED;

    static final Rule RULE = Rule.of(
                    "regulator/failed-short", ERROR, "a tracking or series regulator whose switch fails short")
            .why(
                    "Transistors and relays fail closed at least as often as open. Then bridge and battery are one node: nothing"
                            + " limits the charge, and when the battery or its management opens, inverter and loads meet the runaway"
                            + " that the regulator held away from them.")
            .formula(
                    "an independent second means against overvoltage that is able alone; or a dump load with a trigger the battery stands that takes"
                            + " all; or, with a battery that opens by itself, voltage of the one node ≤ least rating of what hangs at"
                            + " the battery")
            .judged("regulator failed short, the nozzle set with the highest voltage")
            .source(COMMON_PRACTICE)
            .source(SecondGuards.SOURCE)
            .passes("second-line", "Should the regulator fail short, a second means holds the voltage.")
            .passes("held", "Should the regulator fail short, the dump load holds the battery at {voltage}.")
            .passes(
                    "stands-it",
                    "Should the regulator fail short, {charging} go into the battery until it opens, then {value} stand at its"
                            + " node; the weakest part, the {part}, stands {limit}.")
            .fails(
                    "breaks-it",
                    "Should the regulator fail short, {charging} go into the battery until it opens, then {value} stand at its"
                            + " node; the {part} stands {limit}.")
            .fails(
                    "overcharged",
                    "Should the regulator fail short, {charging} go into the battery and nothing ends that.")
            .notApplicable("one-node", "Not judged: no tracking or series regulator stands between bridge and battery.")
            .judge(FailedShort::judge)
            .wayOut(
                    "fit",
                    "A second, independent means against overvoltage at the battery: a deflector that drops in, or a dump load there with"
                            + " its own trigger, or a contactor that shorts the alternator's leads.",
                    SecondGuards::deflectorAtBattery)
            .build();

    private FailedShort() {}

    private static Outcome judge(Judgement j) {
        List<RegulatorFailedShort> all = j.solved().regulatorFailedShort();
        if (all.isEmpty()) {
            return j.at(PATH).says("one-node");
        }
        RegulatorFailedShort worst = Worst.most(all, RegulatorFailedShort::lastingVoltage);
        Spot spot = j.at(PATH).during(worst).with("charging", worst.chargingCurrent(), CURRENT);
        if (spot.given(SecondGuards.stated(j)) && SecondGuards.ableOnOneNode(j, spot)) {
            return spot.says("second-line");
        }
        if (worst.holder() == BusHolder.DUMP_LOAD && !worst.overcharges()) {
            return spot.with("voltage", worst.lastingVoltage(), VOLTAGE).says("held");
        }
        if (!SecondGuards.opens(j)) {
            return spot.says("overcharged");
        }
        List<BusPart> parts = BusPart.all(j.design()).stream()
                .filter(part -> part.node() == BusNode.BATTERY)
                .toList();
        BusPart weakest = Worst.least(parts, part -> spot.si(part.path(), part.rating()));
        return spot.saying("stands-it", "breaks-it")
                .with(Arg.phrase("part", weakest.part()))
                .atMost(worst.lastingVoltage(), spot.si(weakest.path(), weakest.rating()), VOLTAGE);
    }
}
