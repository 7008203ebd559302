package org.leat.pack.rectifier;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Rectifier;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.pack.kit.VoltageCause;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.LoadLost;

/** Capacitor behind the bridge against runaway. */
final class BridgeCapacitor {

    static final Rule RULE = Rule.of("rectifier/capacitor", ERROR, "capacitor behind the bridge against runaway")
            .why(
                    "A capacitor above its voltage bursts, hot electrolyte and all. Connected empty to a spinning machine it"
                            + " swings to half as much again as the peak voltage.")
            .formula(
                    "factor · runaway voltage, and 1.62 · peak line voltage where it is not charged beforehand ≤ rating")
            .judged("the situation with the highest bus voltage, magnets cold; each nozzle set on hand")
            .source(
                    "circuit simulation of an empty capacitor connected to a spinning machine: up to 1.615 times the peak")
            .source(COMMON_PRACTICE)
            .limit("factor", RATIO, 1.2, "", COMMON_PRACTICE, HIGHER)
            .passes("stands-it", "The capacitor sees {peak} ({cause}); with its factor {value}.")
            .fails(
                    "too-low",
                    "The capacitor sees {peak} ({cause}); with its factor, or connected empty, it needs {value} and is made"
                            + " for {limit}.")
            .notApplicable("none", "Not judged: there is no capacitor.")
            .judge(BridgeCapacitor::judge)
            .wayOut(
                    "precharge",
                    "Charge the capacitor through a resistor before it is connected.",
                    Change.of("/rectifier/precharged", true))
            .leastWayOut(
                    "higher",
                    "A capacitor of {rating}.",
                    FieldChanges.raised("V", ElectricPotential.class, 63, 100, 160, 200, 250, 350, 400, 450, 630))
            .build();

    private BridgeCapacitor() {}

    private static Outcome judge(Judgement j) {
        Rectifier bridge = j.design().rectifier();
        if (bridge == null || (bridge.capacitance() == null && bridge.capacitorVoltage() == null)) {
            return j.at("/rectifier").says("none");
        }
        Cases cases = j.solved();
        LoadLost lost = Worst.most(cases.loadLost(), LoadLost::directVoltage);
        HighestBusVoltage highest = HighestBusVoltage.of(cases, BusNode.BRIDGE);
        double needed = j.limit("factor").value() * highest.volts();
        boolean rush = !Boolean.TRUE.equals(bridge.precharged()) && lost.emptyCapacitorVoltage() > needed;
        return j.at("/rectifier/capacitor-voltage")
                .during(rush ? lost : highest.situation())
                .with("peak", rush ? lost.directVoltage() : highest.volts(), VOLTAGE)
                .with(Arg.phrase("cause", rush ? VoltageCause.EMPTY_CAPACITOR : highest.cause()))
                .atMost(rush ? lost.emptyCapacitorVoltage() : needed, bridge.capacitorVoltage(), VOLTAGE);
    }
}
