package org.leat.pack.bus;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.ElectricPotential;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BridgeWindow;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.BusPart;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.pack.kit.PartWord;
import org.leat.pack.kit.Regulators;
import org.leat.plant.cases.Cases;
import org.leat.plant.numbers.Amount;

/** Highest bus voltage of any case against what everything on the bus stands. */
final class Overvoltage {

    /** In which regulators and inverters are sold, V. */
    private static final double[] RATINGS = {60, 75, 100, 150, 200, 250, 300, 400, 500, 600};

    static final Rule RULE = Rule.of("bus/overvoltage", ERROR, "highest bus voltage against what hangs on the bus")
            .why("A battery that opens its own switch, a blown fuse or a regulator that lets go leaves the turbine with"
                    + " nothing to push against: the voltage rises to that of the runaway and stays there while water"
                    + " runs. Whatever is still connected must stand it.")
            .formula("highest of: settled runaway voltage (peak line voltage, magnets cold), the moment a battery opens"
                    + " under load (1.27 times the peak at the working speed with 470 µF behind the bridge; stepped in time"
                    + " with less; open without), battery full")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand; where a"
                            + " dump load at the bridge holds what a tracking or series regulator lets go, its loss is judged by"
                            + " dump/lost")
            .source(
                    "circuit simulation of a bridge whose battery opens: 1.261 times the EMF peak (taken as 1.27) from the energy in the"
                            + " winding; ISO 16750-2 load dump for road vehicles as a parallel")
            .either("stands-it", "too-high", "The bus reaches {value} ({cause}); the {part} stands {limit}.")
            .either(
                    "stands-it-at-bridge",
                    "too-high-at-bridge",
                    "Behind the bridge, before the regulator, {value} is reached ({cause}); the {part} stands {limit}.")
            .either(
                    "stands-it-at-battery",
                    "too-high-at-battery",
                    "The regulator lets the battery's node rise to {value} ({cause}); the {part} stands {limit}.")
            .notApplicable("nothing-there", "Not judged: neither a regulator nor an inverter hangs on the bus.")
            .judgeAll(Overvoltage::judge)
            .leastWayOut(
                    "higher-rating",
                    "One that stands {rating}.",
                    FieldChanges.raised("V", ElectricPotential.class, RATINGS))
            .advice(
                    "clamp",
                    "A dump load or clamp on the bridge's side of every fuse, switched on by a controller just above {voltage} there,"
                            + " through a switch for direct current; sized for all the turbine gives.",
                    Overvoltage::clamp)
            .advice(
                    "clamp-at-bridge",
                    "A dump load or clamp at the bridge, before the regulator, with a controller that switches it on at {voltage}"
                            + " there: above the {working} it works at, below what the {part} stands; sized for all the turbine"
                            + " gives.",
                    Overvoltage::clampAtBridge)
            .build();

    private Overvoltage() {}

    private static List<Outcome> judge(Judgement j) {
        Cases cases = j.solved();
        List<BusPart> parts = BusPart.withoutBattery(j.design());
        return j.eachOr(
                Regulators.saidToBeNone(j)
                        ? j.at("/regulator").says("nothing-there")
                        : j.at("/").notGiven("/regulator/input-voltage-limit"),
                parts,
                part -> judge(j, cases, part));
    }

    private static Outcome judge(Judgement j, Cases cases, BusPart part) {
        HighestBusVoltage highest = part.node() == BusNode.BRIDGE
                ? HighestBusVoltage.besideClamp(cases)
                : HighestBusVoltage.of(cases, part.node());
        Spot spot = j.at(part.path()).during(highest.situation());
        double rating = spot.si(part.rating());
        Amount.Unknown moment = HighestBusVoltage.unknownMoment(cases, part.node());
        if (moment != null && highest.volts() <= rating) {
            spot.known(moment);
        }
        String node = !cases.numbers().regulator().divides()
                ? ""
                : part.node() == BusNode.BRIDGE ? "-at-bridge" : "-at-battery";
        return spot.saying("stands-it" + node, "too-high" + node)
                .with(Arg.phrase("part", part.part()), Arg.phrase("cause", highest.cause()))
                .atMost(highest.volts(), rating, VOLTAGE);
    }

    private static Stream<Change> clamp(Judgement j, Outcome.Fail failure) {
        return failure.says("too-high")
                ? Stream.of(
                        Change.advice().with("voltage", j.numbers().battery().absorptionVoltage(), VOLTAGE))
                : Stream.empty();
    }

    private static Stream<Change> clampAtBridge(Judgement j, Outcome.Fail failure) {
        if (!failure.says("too-high-at-bridge")) {
            return Stream.empty();
        }
        BridgeWindow window = BridgeWindow.of(j.solved());
        return window.triggers(j.numbers()).stream()
                .limit(1)
                .map(trigger -> Change.advice()
                        .with("voltage", trigger, VOLTAGE)
                        .with("working", window.working(), VOLTAGE)
                        .with(Arg.phrase("part", PartWord.REGULATOR)));
    }
}
