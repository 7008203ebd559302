package org.leat.pack.loads;

import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.ElementPath;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.pack.kit.StandardSizes;

/** What hangs on the battery's direct voltage with nothing between. */
final class OnBus {

    static final Rule RULE = Rule.of("loads/on-bus", WARNING, "loads on the bus against its highest voltage")
            .why("A lamp for 24 V hangs on a bus that charges at 29 V and, when the battery opens, meets whatever the"
                    + " turbine makes of it. What such a load stands is printed on it and in no design.")
            .formula(
                    "highest voltage of the battery's node ≤ factor · nominal voltage of the bank; below that a person compares")
            .judged("every case of the bus; what is printed on the load the design does not hold")
            .source(COMMON_PRACTICE)
            .limit("factor", RATIO, 1.3, "", COMMON_PRACTICE, LOWER)
            .review(
                    "look",
                    "{load} hangs on the bus, which reaches {voltage} ({cause}): see that it stands that, or feed it through a"
                            + " converter.")
            .fails(
                    "too-high",
                    "{load} hangs on the bus, which reaches {value} ({cause}); what is made for such a bank stands {limit}.")
            .passes("none-there", "No load hangs on the bus but vehicle packs, which have a rule of their own.")
            .notApplicable("none", "Not judged: no loads are told.")
            .judgeAll(OnBus::judge)
            .advice(
                    "converter",
                    "A direct-voltage converter whose input stands {rated}, between the bus and such loads.",
                    StandardSizes.standing("rated"))
            .build();

    private OnBus() {}

    private static List<Outcome> judge(Judgement j) {
        List<Load> loads = j.design().loads();
        if (loads.isEmpty()) {
            return List.of(j.at("/loads").says("none"));
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < loads.size(); i++) {
            Load load = loads.get(i);
            if (load.supply() == LoadSupply.BUS && load.pack() == null) {
                HighestBusVoltage highest = HighestBusVoltage.of(j.solved(), BusNode.BATTERY);
                Spot spot =
                        j.at(ElementPath.item("/loads", loads, i) + "/supply").during(highest.situation());
                double most = j.limit("factor").value() * j.numbers().battery().nominalVoltage();
                Spot told = spot.with(Arg.of("load", load.name()), Arg.phrase("cause", highest.cause()));
                outcomes.add(
                        highest.volts() > most
                                ? told.saying("none-there", "too-high").atMost(highest.volts(), most, VOLTAGE)
                                : told.with("voltage", highest.volts(), VOLTAGE).says("look"));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/loads").says("none-there")) : outcomes;
    }
}
