package org.leat.pack.battery;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** Charging current against what the battery takes. */
final class ChargeCurrent {

    static final Rule RULE = Rule.of("battery/charge-current", ERROR, "charging current against what the battery takes")
            .why(
                    "A battery charged faster than its maker allows heats, gasses or plates lithium. A turbine charges day and night, so a small excess is enough.")
            .formula("generation into the battery, loads off ≤ limit of the bank")
            .judged("running, the nozzle set that charges most, no load taking anything")
            .source(
                    "limits by chemistry: makers' data; lead C/8 to C/5, lithium C/2: battery handbooks and common practice")
            .passes("taken", "The battery is charged with {value}.")
            .fails("too-much", "The battery is charged with {value}; it takes {limit}.")
            .judge(ChargeCurrent::judge)
            .leastWayOut("larger-bank", BankSizes.BANK, ChargeCurrent::largerBank)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .build();

    private ChargeCurrent() {}

    private static Outcome judge(Judgement j) {
        Running worst = Worst.running(j, OperatingPoint::batteryCurrent);
        return j.at("/battery/capacity")
                .during(worst)
                .atMost(
                        worst.operatingPoint().batteryCurrent(),
                        j.numbers().battery().chargeCurrentLimit(),
                        CURRENT);
    }

    /** Only where the limit follows from the capacity. */
    private static Stream<Change> largerBank(Judgement j, Outcome.Fail failure) {
        if (j.design().battery().chargeCurrentLimit() != null) {
            return Stream.empty();
        }
        double needed = Math.ceil(BankSizes.ampereHours(j) * failure.value() / failure.limit() / 10) * 10;
        return Stream.of(needed, needed + 10, needed + 20).map(BankSizes::of);
    }
}
