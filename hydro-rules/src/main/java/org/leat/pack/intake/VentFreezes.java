package org.leat.pack.intake;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Vent;
import org.leat.pack.kit.OutsidePressure;
import org.leat.pack.kit.Vents;

/** Frost against a vent without which the pipe would collapse. */
final class VentFreezes {

    static final Rule RULE = Rule.of("intake/vent-freezes", WARNING, "frost against a vent that the pipe needs")
            .why(
                    "Breath of the pipe and splashed water freeze in a vent, mostly on the night on which ice blocks the screen as"
                            + " well. Then no air enters and the pipe folds: intake/vent, penstock/collapse and penstock/drain-down rest on it.")
            .formula(
                    "lowest air temperature ≥ 0 °C, or a vent that frost cannot close, or a wall that stands the suction without it")
            .judged("the coldest night, the top shut, the nozzles open")
            .source(COMMON_PRACTICE)
            .limits(OutsidePressure.LIMITS)
            .passes("no-frost", "No frost is met.")
            .passes("stands", "The wall stands it without the vent.")
            .passes("stays-open", "The vent stays open in frost.")
            .fails(
                    "freezes",
                    "At {temperature:°C} the vent freezes shut, and without it the pipe does not stand that its top is shut.")
            .notApplicable("no-vent", "There is no vent below the shut-off.")
            .judge(VentFreezes::judge)
            .wayOut(
                    "proof",
                    "A vent that frost cannot close: heated, led up in a box over the running water, or a second one beside it.",
                    Change.of(Vents.FROST_PROOF, true))
            .build();

    private VentFreezes() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at(Vents.PATH);
        if (!j.numbers().site().frost()) {
            return spot.says("no-frost");
        }
        if (Vents.wallStandsIt(j, spot)) {
            return spot.says("stands");
        }
        Vent vent = Vents.below(j, spot);
        if (vent == null) {
            return spot.says("no-vent");
        }
        return Vents.staysOpen(j, spot, vent)
                ? spot.says("stays-open")
                : spot.with("temperature", j.numbers().site().lowestAirTemperature(), TEMPERATURE)
                        .says("freezes");
    }
}
