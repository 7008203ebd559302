package org.leat.pack;

import java.util.List;
import javax.measure.quantity.Power;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.electrics.DumpElement;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.quantity.QuantityKind;

/** Power of the dump load's element against its rating. */
final class DumpOwnRating implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/own-rating", Level.ERROR)
            .title("power of the dump load's element against its rating")
            .why(
                    "An element that takes more than its rating burns out, and with it goes what holds the turbine. Cold it"
                            + " takes most.")
            .formula("V²/R_cold at the highest voltage across it ≤ power rating")
            .judged("battery full, the nozzle set with the highest voltage")
            .source("P = V²/R: Ohm's law")
            .message("stands-it", "voltage")
            .message("overloaded", "voltage")
            .message("none")
            .message("larger", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        BatteryFull most = Dumped.most(j);
        DumpLoadNumbers dump = j.plant().numbers().dumpLoad();
        if (most == null || dump == null) {
            return List.of(j.at("/dump-load/resistance").notGiven("/dump-load/resistance"));
        }
        double volts = most.dumpVoltage();
        return List.of(Rated.atMost(
                j.at("/dump-load/power-rating").during(most.id()),
                DumpElement.power(dump.resistanceCold(), volts),
                dump.powerRating(),
                QuantityKind.POWER,
                "stands-it",
                "overloaded",
                Arg.of("voltage", volts, QuantityKind.VOLTAGE)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Rated.raised(
                this, j, failure, "larger", "W", Power.class, 100, 200, 300, 500, 750, 1000, 1500, 2000, 3000, 5000);
    }
}
