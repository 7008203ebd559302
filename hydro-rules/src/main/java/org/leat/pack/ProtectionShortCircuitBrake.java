package org.leat.pack;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Alternator;
import org.leat.design.Safeguards;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** Shorted leads counted on as a brake. */
final class ProtectionShortCircuitBrake implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/short-circuit-brake", Level.ERROR)
            .title("shorted leads counted on as a brake")
            .why(
                    "Shorting the leads stops a slow wheel. On one that runs away the braking torque falls with speed: it may"
                            + " not catch the wheel, and the winding burns instead.")
            .formula(
                    "T = 1.5 p ψ² ω_e R/(R² + ω_e² L²) over the wheel's torque, least from the speed of its peak to the"
                            + " runaway ≥ limit; then the winding's settled temperature with the power of the creeping wheel in it ≤ class")
            .judged("load lost with the leads then shorted, each nozzle set on hand")
            .source("circuit equations of the sine machine; momentum theorem for the wheel")
            .source(RuleCard.COMMON_PRACTICE)
            .source("IEC 60085 thermal classes")
            .limit("least", QuantityKind.RATIO, 1.2, "", RuleCard.COMMON_PRACTICE)
            .limit("hot-spot", QuantityKind.TEMPERATURE_DIFFERENCE, 10, "K", "IEC 60034-1 table 8 (from memory)")
            .message("holds")
            .message("not-held")
            .message("stays-cool", "heat", "insulation")
            .message("burns", "heat", "insulation")
            .message("not-used")
            .message("deflector")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        Boolean used = safeguards == null ? null : safeguards.shortCircuitBrake();
        Spot spot = j.at("/safeguards/short-circuit-brake");
        if (used == null) {
            return List.of(spot.notGiven(spot.path()));
        }
        if (!used) {
            return List.of(spot.notApplicable("not-used"));
        }
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        double least = Double.POSITIVE_INFINITY;
        LoadLost worst = j.cases().loadLost().get(0);
        for (int i = 0; i < j.cases().loadLost().size(); i++) {
            LoadLost lost = j.cases().loadLost().get(i);
            double share = Brake.leastShare(j, j.cases().running().get(i), lost);
            if (share < least) {
                least = share;
                worst = lost;
            }
        }
        Outcome holds =
                spot.during(worst.id()).compare(Comparison.atLeast(least, j.limit("least")), "holds", "not-held");
        return holds.kind() == Kind.PASS ? List.of(holds, heat(j)) : List.of(holds);
    }

    /** The wheel creeps on under the jet: what it makes goes into the winding, without end. */
    private static Outcome heat(Judgement j) {
        Running worst = Worst.most(j.cases().running(), r -> Brake.creepingHeat(j, r));
        Spot spot = j.at("/alternator/insulation-class")
                .during("leads-shorted/" + worst.nozzles().name());
        Alternator alternator = j.design().alternator();
        Double resistance = Rated.si(alternator.thermalResistance());
        if (resistance == null) {
            return spot.notGiven("/alternator/thermal-resistance");
        }
        if (alternator.insulationClass() == null) {
            return spot.notGiven("/alternator/insulation-class");
        }
        double watts = Brake.creepingHeat(j, worst);
        return spot.compare(
                Comparison.atMost(
                        WindingHeat.settled(j, 0, watts, worst.operatingPoint().windingTemperature(), resistance)
                                + j.limit("hot-spot").value(),
                        WindingHeat.highest(alternator.insulationClass()),
                        QuantityKind.TEMPERATURE),
                "stays-cool",
                "burns",
                Arg.of("heat", watts, QuantityKind.POWER),
                Arg.of("insulation", alternator.insulationClass()));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return List.of(j.advice("deflector"));
    }
}
