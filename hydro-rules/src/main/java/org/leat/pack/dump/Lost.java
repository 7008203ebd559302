package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.BusPart;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.SecondGuards;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BusSituation.DumpLoadLost;

/** The dump load fails open while the battery is full. */
final class Lost {

    static final Rule RULE = Rule.of("dump/lost", ERROR, "the dump load fails open while the battery is full")
            .why(
                    "Elements burn through, relays stick, terminals come loose. Then all the turbine gives goes into a full battery,"
                            + " and when that or its management opens, the bus follows the runaway.")
            .formula(
                    "an independent second means against overvoltage that is able alone, see dump/guard-alone; or settled runaway"
                            + " voltage ≤ least rating on the bus, with a battery that opens by itself or a regulator that lets go")
            .judged("dump load lost while the battery is full, the nozzle set that runs fastest")
            .source(
                    "US NEC 690.72(B) in issues to 2014, since then article 706: a second, independent means against overcharge with diverted charge (from memory)")
            .source(SecondGuards.SOURCE)
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
            .fails(
                    "switched",
                    "A switch, {device}, lies in the dump load's branch: left open, the dump load is lost and nothing tells that.")
            .notApplicable("none", DumpLoads.NONE)
            .judgeAll(Lost::judgeAll)
            .wayOut(
                    "fit",
                    "A second, independent means against overvoltage: a deflector that drops in, or a second dump load with its own"
                            + " trigger, or a clamp.",
                    ChangesForText.except("switched", SecondGuards::deflector))
            .wayOut(
                    "no-switch",
                    "No switch there: with the water shut, the fuse drawn does as well.",
                    ChangesForText.only("switched", Lost::withoutSwitch))
            .build();

    private static final Arg BATTERY_OPENS =
            new Arg("event", new Arg.Phrase("event.battery-opens", "the battery opens"));

    private static final Arg REGULATOR_LETS_GO =
            new Arg("event", new Arg.Phrase("event.regulator-lets-go", "the regulator lets go of the turbine"));

    private Lost() {}

    private static List<Outcome> judgeAll(Judgement j) {
        List<Supplier<Outcome>> questions = new ArrayList<>();
        questions.add(() -> DumpLoads.judge(Lost::judge).apply(j));
        if (j.design().dumpLoad() != null) {
            switches(j)
                    .forEach(device -> questions.add(() -> j.at(device.path())
                            .as(WARNING)
                            .during("dump-lost")
                            .with(device.name())
                            .saying("second-line", "switched")
                            .holds(false)));
        }
        return j.all(questions);
    }

    private static Stream<Devices.Placed> switches(Judgement j) {
        return Devices.all(j.design()).stream().filter(device -> !device.opens() && device.joins(Place.DUMP_LOAD));
    }

    /** Its run goes without it. */
    private static Stream<Change> withoutSwitch(Judgement j, Outcome.Fail failure) {
        List<ProtectiveDevice> kept = switches(j)
                .filter(device -> device.path().equals(failure.path()))
                .findFirst()
                .map(device -> j.design().devices().stream()
                        .filter(each -> !each.equals(device.device()))
                        .toList())
                .orElseThrow();
        return Stream.of(Change.of("/protection", kept));
    }

    private static Outcome judge(Judgement j, DumpLoad dump) {
        DumpLoadLost worst = Worst.most(j.solved().dumpLost(), DumpLoadLost::lastingVoltage);
        Spot spot = j.at(SecondGuards.STATED).during(worst);
        if (spot.given(SecondGuards.stated(j)) && SecondGuards.ableWithoutDump(j, spot)) {
            return spot.says("second-line");
        }
        boolean opens = worst.overchargesFirst();
        if (opens && !SecondGuards.opens(j)) {
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
                .with(opens ? BATTERY_OPENS : REGULATOR_LETS_GO)
                .atMost(worst.lastingVoltage(), spot.si(weakest.path(), weakest.rating()), VOLTAGE);
    }
}
