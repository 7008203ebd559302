package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Cable;
import org.leat.quantity.QuantityKind;

/** Insulation of each run against the voltage of a runaway. */
final class CableInsulationVoltage implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("cable/insulation-voltage", Level.ERROR)
            .title("insulation of each run against the voltage of a runaway")
            .why("Cable bought for a 24 V battery may have to stand five times as much when the load is lost. Cord made"
                    + " for cars is rated 60 V.")
            .formula(
                    "highest bus voltage of any case, peak line voltage for the alternator's run ≤ rated direct voltage")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source("IEC 60364-5-52 clause 522 with the cable's marking")
            .message("stands-it", "run", "cause")
            .message("too-low", "run", "cause")
            .message("higher", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        HighestBusVoltage highest = HighestBusVoltage.of(j.cases());
        List<Outcome> outcomes = new ArrayList<>();
        List<Cable> cables = j.design().cables();
        for (int i = 0; i < cables.size(); i++) {
            outcomes.add(Rated.atMost(
                    j.at("/cables[" + i + "]/rated-voltage").during(highest.situation()),
                    highest.volts(),
                    Rated.si(cables.get(i).ratedVoltage()),
                    QuantityKind.VOLTAGE,
                    "stands-it",
                    "too-low",
                    Runs.arg("run", cables.get(i)),
                    Arg.phrase("cause", highest.cause())));
        }
        return outcomes.isEmpty() ? List.of(j.at("/cables").notGiven("/cables")) : outcomes;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(this, j, failure, "higher", "V", ElectricPotential.class, 300, 450, 600, 750, 1000, 1500);
    }
}
