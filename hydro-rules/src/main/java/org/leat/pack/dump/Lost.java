package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Arg.Worded;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.BusPart;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Lead;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BusSituation.DumpLoadLost;

/** The dump load fails open while the battery is full. */
final class Lost {

    static final Rule RULE = Rule.of("dump/lost", ERROR, "the dump load fails open while the battery is full")
            .why(
                    "Elements burn through, relays stick, terminals come loose. Then all the turbine gives goes into a full battery,"
                            + " and when that or its management opens, the bus follows the runaway.")
            .formula(
                    "an independent second means against overvoltage; or settled runaway voltage ≤ least rating on the bus,"
                            + " with a battery that opens by itself or a regulator that lets go")
            .judged("dump load lost while the battery is full, the nozzle set that runs fastest")
            .source(
                    "US NEC 690.72(B) in issues to 2014, since then article 706: a second, independent means against overcharge with diverted charge (from memory)")
            .passes(
                    "stands-it",
                    "Should the dump load fail, {event} and the bus reaches {value}; the weakest part, the {part},"
                            + " stands {limit}.")
            .passes("second-line", "Should the dump load fail, a second means holds the voltage.")
            .fails(
                    "breaks-it",
                    "Should the dump load fail, {event} and the bus reaches {value}; the {part} stands {limit}.")
            .fails("overcharged", "Should the dump load fail, nothing keeps the turbine from overcharging the battery.")
            .fails(
                    "no-part",
                    "Should the dump load fail, the wheel runs away, and nothing on the bus is said to stand that.")
            .notApplicable("none", Dumped.NONE)
            .judge(Dumped.judge(Lost::judge))
            .wayOut(
                    "fit",
                    "A second, independent means against overvoltage: a second dump load with its own trigger, a"
                            + " clamp, a deflector that drops in.",
                    FieldChanges.to(true))
            .build();

    private Lost() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        DumpLoadLost worst = Worst.most(j.solved().dumpLost(), DumpLoadLost::lastingVoltage);
        Spot spot = j.at(SecondLine.PATH).during(worst);
        if (spot.given(SecondLine.stated(j))) {
            return spot.says("second-line");
        }
        boolean opens = worst.overchargesFirst();
        if (opens && (Lead.is(j) || j.design().battery().management() == null)) {
            return spot.says("overcharged");
        }
        List<BusPart> parts = opens
                ? BusPart.all(j.design())
                : BusPart.withoutBattery(j.design()).stream()
                        .filter(part -> part.node() == BusNode.BRIDGE)
                        .toList();
        if (parts.isEmpty()) {
            return spot.says("no-part");
        }
        BusPart weakest = Worst.least(parts, part -> spot.si(part.path(), part.rating()));
        return spot.with(Arg.phrase("part", weakest.part()))
                .with(Arg.phrase("event", opens ? Event.BATTERY_OPENS : Event.REGULATOR_LETS_GO))
                .atMost(worst.lastingVoltage(), spot.si(weakest.path(), weakest.rating()), VOLTAGE);
    }

    /** What follows. */
    private enum Event implements Worded {
        BATTERY_OPENS("event.battery-opens", "the battery opens"),
        REGULATOR_LETS_GO("event.regulator-lets-go", "the regulator lets go of the turbine");

        private final String key;
        private final String text;

        Event(String key, String text) {
            this.key = key;
            this.text = text;
        }

        @Override
        public String key() {
            return key;
        }

        @Override
        public String text() {
            return text;
        }
    }
}
