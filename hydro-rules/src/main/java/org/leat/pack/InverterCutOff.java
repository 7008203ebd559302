package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Inverter;
import org.leat.design.Place;
import org.leat.electrics.VoltageSag;
import org.leat.law.Answer;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.CableNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Sag of the battery at a start against the inverter's cut-off. */
final class InverterCutOff implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("inverter/cut-off", Level.WARNING)
            .title("sag of the battery at a start against the inverter's cut-off")
            .why(
                    "At a hard start battery and cable lose volts together. If what is left lies below the cut-off, the inverter stops"
                            + " with a battery that is half full.")
            .formula("V = V_oc/2 + √(V_oc²/4 − R P) ≥ cut-off voltage, R of battery and cable, P at the start")
            .judged("the hardest start while everything else runs, battery at its state of charge, turbine not counted")
            .source("Ohm's law and energy balance")
            .message("stays-up")
            .message("cuts-off")
            .message("collapses")
            .message("none")
            .message("larger", "capacity")
            .message("thicker", "area")
            .message("softer-start", "power")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Inverter inverter = j.design().inverter();
        Spot spot = j.at("/inverter/cut-off-voltage");
        if (inverter == null) {
            return List.of(Inverters.missing(j, spot.path(), "none"));
        }
        if (inverter.cutOffVoltage() == null || inverter.efficiency() == null) {
            return List.of(spot.notGiven(inverter.cutOffVoltage() == null ? spot.path() : "/inverter/efficiency"));
        }
        String unknown = Inverters.unknownStart(j);
        if (unknown != null) {
            return List.of(spot.notGiven(unknown));
        }
        BatteryNumbers battery = j.plant().numbers().battery();
        Answer volts = VoltageSag.underPower(
                battery.restingVoltage(), resistance(j), Inverters.starting(j) / Si.of(inverter.efficiency()));
        return List.of(
                volts instanceof Answer.Value value
                        ? spot.compare(
                                Comparison.atLeast(
                                        value.value(), Si.of(inverter.cutOffVoltage()), QuantityKind.VOLTAGE),
                                "stays-up",
                                "cuts-off")
                        : spot.fail("collapses"));
    }

    private static double resistance(Judgement j) {
        double resistance = j.plant().numbers().battery().internalResistance();
        for (CableNumbers cable : j.plant().numbers().cables()) {
            resistance += cable.joins(Place.BATTERY, Place.INVERTER) ? cable.loopResistance() : 0;
        }
        return resistance;
    }

    /** The start that leaves just the cut-off voltage, W at the inverter's output. */
    private static double greatestStart(Judgement j, Inverter inverter) {
        double volts = Si.of(Objects.requireNonNull(inverter.cutOffVoltage()));
        double drop = Math.max(0, j.plant().numbers().battery().restingVoltage() - volts);
        return drop / resistance(j) * volts * Si.of(Objects.requireNonNull(inverter.efficiency()));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        for (CableNumbers cable : j.plant().numbers().cables()) {
            if (cable.joins(Place.BATTERY, Place.INVERTER)) {
                String path = "/cables[" + cable.index() + "]/conductor/area";
                Search.first(this, j, failure, thicker(path, j)).ifPresent(ways::add);
            }
        }
        if (j.design().battery().internalResistance() == null) {
            ways.addAll(Lean.largerBank(this, j, failure));
        }
        Inverter inverter = Objects.requireNonNull(j.design().inverter());
        ways.add(j.advice("softer-start", Arg.of("power", greatestStart(j, inverter), QuantityKind.POWER)));
        return ways;
    }

    private static java.util.stream.Stream<Search.Candidate> thicker(String path, Judgement j) {
        double now = Si.of(org.leat.pack.kit.Runs.at(j.design(), path).conductor().area());
        return java.util.stream.Stream.of(0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0)
                .filter(area -> area * 1e-6 > now * 1.001)
                .map(area -> Search.Candidate.of(
                        "thicker",
                        new org.leat.check.Edit(path, Si.quantity(area, "mm²", javax.measure.quantity.Area.class)),
                        Arg.of("area", area * 1e-6, QuantityKind.AREA)));
    }
}
