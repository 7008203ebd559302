package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Rectifier;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.LoadLost;
import org.leat.quantity.QuantityKind;

/** Capacitor behind the bridge against runaway. */
final class RectifierCapacitor implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("rectifier/capacitor", Level.ERROR)
            .title("capacitor behind the bridge against runaway")
            .why(
                    "A capacitor above its voltage bursts, hot electrolyte and all. Connected empty to a spinning machine it"
                            + " swings to half as much again as the peak voltage.")
            .formula(
                    "factor · runaway voltage, and 1.62 · peak line voltage where it is not charged beforehand ≤ rating")
            .judged("the situation with the highest bus voltage, magnets cold; each nozzle set on hand")
            .source(
                    "circuit simulation of an empty capacitor connected to a spinning machine: up to 1.615 times the peak")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("factor", QuantityKind.RATIO, 1.2, "", RuleCard.COMMON_PRACTICE)
            .message("stands-it", "peak", "cause")
            .message("too-low", "peak", "cause")
            .message("higher", "rating")
            .message("precharge")
            .message("none")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Rectifier bridge = j.design().rectifier();
        if (bridge == null || (bridge.capacitance() == null && bridge.capacitorVoltage() == null)) {
            return List.of(j.at("/rectifier").notApplicable("none"));
        }
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        LoadLost worst = Worst.most(j.cases().loadLost(), LoadLost::directVoltage);
        boolean charged = Boolean.TRUE.equals(bridge.precharged());
        HighestBusVoltage highest = HighestBusVoltage.of(j.cases());
        double needed = j.limit("factor").value() * highest.volts();
        boolean rush = !charged && worst.emptyCapacitorVoltage() > needed;
        return List.of(Rated.atMost(
                j.at("/rectifier/capacitor-voltage").during(rush ? worst : highest.situation()),
                rush ? worst.emptyCapacitorVoltage() : needed,
                Rated.si(bridge.capacitorVoltage()),
                QuantityKind.VOLTAGE,
                "stands-it",
                "too-low",
                Arg.of("peak", rush ? worst.directVoltage() : highest.volts(), QuantityKind.VOLTAGE),
                Arg.phrase("cause", rush ? "cause.empty-capacitor" : highest.cause())));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.first(this, j, failure, Stream.of(Candidate.of("precharge", new Edit("/rectifier/precharged", true))))
                .ifPresent(ways::add);
        ways.addAll(Rated.raised(
                this, j, failure, "higher", "V", ElectricPotential.class, 63, 100, 160, 200, 250, 350, 400, 450, 630));
        return ways;
    }
}
