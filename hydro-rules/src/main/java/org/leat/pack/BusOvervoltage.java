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
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Highest bus voltage of any case against what everything on the bus stands. */
final class BusOvervoltage implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("bus/overvoltage", Level.ERROR)
            .title("highest bus voltage against what hangs on the bus")
            .why("A battery that opens its own switch, a blown fuse or a regulator that lets go leaves the turbine with"
                    + " nothing to push against: the voltage rises to that of the runaway and stays there while water"
                    + " runs. Whatever is still connected must stand it.")
            .formula("highest of: settled runaway voltage (peak line voltage, magnets cold), the moment a battery opens"
                    + " under load (1.27 times the peak at the working speed with 470 µF behind the bridge; stepped in time"
                    + " with less; open without), battery full")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source(
                    "circuit simulation of a bridge whose battery opens: 1.261 times the EMF peak (taken as 1.27) from the energy in the"
                            + " winding; ISO 16750-2 load dump for road vehicles as a parallel")
            .message("stands-it", "part", "cause")
            .message("too-high", "part", "cause")
            .message("higher-rating", "voltage")
            .message("clamp", "voltage")
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
        List<Outcome> outcomes = new ArrayList<>();
        for (BusPart part : BusPart.withoutBattery(j.design())) {
            outcomes.add(judge(j, part));
        }
        return outcomes.isEmpty() ? List.of(j.at("/").notGiven("/regulator/input-voltage-limit")) : outcomes;
    }

    private static Outcome judge(Judgement j, BusPart part) {
        HighestBusVoltage highest = HighestBusVoltage.of(j.cases());
        Spot spot = j.at(part.path()).during(highest.situation());
        Amount.Unknown moment = HighestBusVoltage.unknownMoment(j.cases());
        if (moment != null && part.rating() != null && highest.volts() <= part.rating()) {
            return Open.because(spot, moment);
        }
        return Rated.atMost(
                spot,
                highest.volts(),
                part.rating(),
                QuantityKind.VOLTAGE,
                "stands-it",
                "too-high",
                Arg.phrase("part", part.word()),
                Arg.phrase("cause", highest.cause()));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double volts = failure.comparison() == null ? 0 : failure.comparison().value();
        List<WayOut> ways = new ArrayList<>();
        Search.least(
                        this,
                        j,
                        failure,
                        Stream.of(60, 75, 100, 150, 200, 250, 300, 400, 500, 600)
                                .filter(rating -> rating >= volts)
                                .map(rating -> Candidate.of(
                                        "higher-rating",
                                        new Edit(failure.path(), Si.quantity(rating, "V", ElectricPotential.class)),
                                        Arg.of("voltage", rating, QuantityKind.VOLTAGE))))
                .ifPresent(ways::add);
        ways.add(j.advice(
                "clamp", Arg.of("voltage", j.plant().numbers().battery().absorptionVoltage(), QuantityKind.VOLTAGE)));
        return ways;
    }
}
