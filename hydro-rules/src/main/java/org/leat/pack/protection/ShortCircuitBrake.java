package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TEMPERATURE;
import static org.leat.quantity.QuantityKind.TEMPERATURE_DIFFERENCE;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Alternator;
import org.leat.design.InsulationClass;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.LeadsShorted;
import org.leat.plant.duties.SettledWinding;

/** Shorted leads counted on as a brake. */
final class ShortCircuitBrake {

    static final Rule RULE = Rule.of("protection/short-circuit-brake", ERROR, "shorted leads counted on as a brake")
            .why(
                    "Shorting the leads stops a slow wheel. On one that runs away the braking torque falls with speed: it may"
                            + " not catch the wheel, and the winding burns instead.")
            .formula(
                    "T = 1.5 p ψ² ω_e R/(R² + ω_e² L²) over the wheel's torque, least from the speed of its peak to the"
                            + " runaway ≥ limit; then the winding's settled temperature with the power of the creeping wheel in it ≤ class")
            .judged("load lost with the leads then shorted, each nozzle set on hand")
            .source("circuit equations of the sine machine; momentum theorem for the wheel")
            .source(COMMON_PRACTICE)
            .source("IEC 60085 thermal classes")
            .limit("least", RATIO, 1.2, "", COMMON_PRACTICE, HIGHER)
            .limit("hot-spot", TEMPERATURE_DIFFERENCE, 10, "K", "IEC 60034-1 table 8 (from memory)", HIGHER)
            .passes("holds", "Shorted leads brake with at least {value} times the wheel's torque.")
            .fails(
                    "not-held",
                    "Shorted leads brake with only {value} times the wheel's torque at the worst speed ({limit} holds): the"
                            + " wheel runs on and the winding burns.")
            .passes(
                    "stays-cool",
                    "The wheel creeps on under the jet and puts {heat} into the winding, which gets {value} hot; class"
                            + " {insulation} stands {limit}.")
            .fails(
                    "burns",
                    "The wheel creeps on under the jet and puts {heat} into the winding, which gets {value} hot; class"
                            + " {insulation} stands {limit}. Stop the water as well.")
            .fails(
                    "burns-up",
                    "The wheel creeps on under the jet and puts {heat} into the winding, more than it can get rid of: it burns."
                            + " Stop the water as well.")
            .notApplicable("not-used", "Not judged: shorted leads are not counted on.")
            .judgeAll(ShortCircuitBrake::judge)
            .advice("deflector", "Stop the wheel by the water: a plate swung into the jet.")
            .build();

    private ShortCircuitBrake() {}

    private static List<Outcome> judge(Judgement j) {
        Spot spot = j.at("/safeguards/short-circuit-brake");
        if (!spot.given(DesignParts.safeguards(j).shortCircuitBrake())) {
            return List.of(spot.says("not-used"));
        }
        LeadsShorted worst = Worst.least(j.solved().leadsShorted(), LeadsShorted::leastBrakingShare);
        Outcome holds =
                spot.during("load-lost/" + worst.nozzles().name()).atLeast(worst.leastBrakingShare(), j.limit("least"));
        if (holds.kind() != Kind.PASS) {
            return List.of(holds);
        }
        List<Outcome> outcomes = new ArrayList<>(List.of(holds));
        outcomes.addAll(j.all(() -> heat(j)));
        return outcomes;
    }

    /** The wheel creeps on under the jet: what it makes goes into the winding, without end. */
    private static Outcome heat(Judgement j) {
        LeadsShorted worst = Worst.most(j.solved().leadsShorted(), LeadsShorted::creepingHeat);
        Spot spot = j.at("/alternator/insulation-class").during(worst);
        Alternator alternator = j.design().alternator();
        double resistance = spot.si("/alternator/thermal-resistance", alternator.thermalResistance());
        InsulationClass insulation = spot.given(alternator.insulationClass());
        OptionalDouble settled = worst.windingTemperature(resistance);
        Spot heated = spot.with("heat", worst.creepingHeat(), POWER).with("insulation", insulation);
        return SettledWinding.burns(settled)
                ? heated.says("burns-up")
                : heated.saying("stays-cool", "burns")
                        .atMost(
                                settled.getAsDouble() + j.limit("hot-spot").value(),
                                SettledWinding.limit(insulation),
                                TEMPERATURE);
    }
}
