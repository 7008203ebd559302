package org.leat.pack.inverter;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.Objects;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Inverter;
import org.leat.design.Place;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.Conductors;
import org.leat.pack.kit.Inverters;
import org.leat.plant.loads.InverterSupply;
import org.leat.quantity.Si;

/** Sag of the battery at a start against the inverter's cut-off. */
final class CutOff {

    static final Rule RULE = Rule.of(
                    "inverter/cut-off", WARNING, "sag of the battery at a start against the inverter's cut-off")
            .why(
                    "At a hard start battery and cable lose volts together. If what is left lies below the cut-off, the inverter stops"
                            + " with a battery that is half full.")
            .formula("V = V_oc/2 + √(V_oc²/4 − R P) ≥ cut-off voltage, R of battery and cable, P at the start")
            .judged("the hardest start while everything else runs, battery at its state of charge, turbine not counted")
            .source("Ohm's law and energy balance")
            .passes("stays-up", "At the hardest start {value} are left at the inverter.")
            .fails("cuts-off", "At the hardest start {value} are left at the inverter; it stops below {cutOff}.")
            .fails("collapses", "At the hardest start battery and cable cannot give the power at any voltage.")
            .notApplicable("none", Inverters.NONE)
            .judge(Inverters.judge("/inverter/cut-off-voltage", CutOff::judge))
            .wayOut("thicker", "Conductors of {area:mm²} to the inverter.", CutOff::thicker)
            .wayOut("larger", BankSizes.BANK, CutOff::larger)
            .advice(
                    "softer-start",
                    "A softer start: {power} at the inverter is the most that battery and cable stand.",
                    CutOff::softerStart)
            .build();

    private CutOff() {}

    private static Outcome judge(Judgement j, Inverter inverter, Spot spot) {
        double cutOff = spot.si(inverter.cutOffVoltage());
        double efficiency = spot.si("/inverter/efficiency", inverter.efficiency());
        OptionalDouble volts = InverterSupply.of(j.numbers()).voltageUnder(Inverters.starting(j, spot) / efficiency);
        return volts.isEmpty()
                ? spot.says("collapses")
                : spot.with("cutOff", cutOff, VOLTAGE).atLeast(volts.getAsDouble(), cutOff, VOLTAGE);
    }

    private static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        return j.numbers().cables().stream()
                .filter(cable -> cable.joins(Place.BATTERY, Place.INVERTER))
                .flatMap(cable -> Conductors.thicker(j.design(), cable));
    }

    /** Only where the resistance follows from the capacity. */
    private static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        return j.design().battery().internalResistance() == null ? BankSizes.larger(j, failure) : Stream.empty();
    }

    /** The start that leaves just the cut-off voltage. */
    private static Stream<Change> softerStart(Judgement j, Outcome.Fail failure) {
        Inverter inverter = Objects.requireNonNull(j.design().inverter());
        double cutOff = Si.of(Objects.requireNonNull(inverter.cutOffVoltage()));
        double efficiency = Si.of(Objects.requireNonNull(inverter.efficiency()));
        double power = InverterSupply.of(j.numbers()).powerAt(cutOff) * efficiency;
        return Stream.of(Change.advice().with("power", power, POWER));
    }
}
