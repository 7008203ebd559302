package org.leat.pack.cable;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Cable;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.pack.kit.Runs;
import org.leat.plant.cases.Cases;

/** Insulation of each run against the voltage of a runaway. */
final class InsulationVoltage {

    static final Rule RULE = Rule.of(
                    "cable/insulation-voltage", ERROR, "insulation of each run against the voltage of a runaway")
            .why("Cable bought for a 24 V battery may have to stand five times as much when the load is lost. Cord made"
                    + " for cars is rated 60 V.")
            .formula(
                    "highest bus voltage of any case, peak line voltage for the alternator's run ≤ rated direct voltage")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source("IEC 60364-5-52 clause 522 with the cable's marking")
            .passes("stands-it", "The run {run} sees {value} ({cause}).")
            .fails("too-low", "The run {run} sees {value} ({cause}); its insulation is made for {limit}.")
            .judgeAll(InsulationVoltage::judge)
            .leastWayOut(
                    "higher",
                    "Cable for {rating}.",
                    FieldChanges.raised("V", ElectricPotential.class, 300, 450, 600, 750, 1000, 1500))
            .build();

    private InsulationVoltage() {}

    private static List<Outcome> judge(Judgement j) {
        Cases cases = j.solved();
        List<Cable> cables = j.design().cables();
        j.at("/cables").given(cables.isEmpty() ? null : cables);
        return j.eachOf(cables.size(), i -> {
            BusNode node = BusNode.between(
                    j.design(), cables.get(i).from(), cables.get(i).to());
            HighestBusVoltage highest = HighestBusVoltage.of(cases, node);
            return j.at("/cables[" + i + "]/rated-voltage")
                    .during(highest.situation())
                    .with(Runs.arg("run", cables.get(i)), Arg.phrase("cause", highest.cause()))
                    .atMost(highest.volts(), cables.get(i).ratedVoltage(), VOLTAGE);
        });
    }
}
