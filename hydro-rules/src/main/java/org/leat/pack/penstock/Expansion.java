package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.Quantities.m;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Penstock;
import org.leat.design.Sunlight;
import org.leat.plant.numbers.SectionNumbers;

/** Change of length with temperature against what the run can take. */
final class Expansion {

    private static final String PATH = "/penstock/expansion-allowance";

    static final Rule RULE = Rule.of("penstock/expansion", WARNING, "change of length with temperature")
            .why("A plastic pipe in the open grows by a hand's breadth for each ten metres from frost to full sun. Held"
                    + " straight it pulls couplers apart in the cold and buckles out in the heat.")
            .formula("ΔL = α L (hottest wall − coldest air)")
            .judged("empty on the coldest night to standing on the hottest day; a buried pipe is held by the ground")
            .source(
                    "α of polyethylene, PVC-U and steel: PPI Handbook of PE Pipe, ch. 3; Uni-Bell; EN 1993-1-1 (from memory)")
            .passes("buried", "The ground holds the pipe.")
            .either(
                    "taken",
                    "not-taken",
                    "From {shortest:°C} to {longest:°C} the pipe grows by {value:mm}; the run takes" + " {limit:mm}.")
            .judge(Expansion::judge)
            .wayOut(
                    "bury",
                    "The pipe buried: the ground holds it and keeps it cool.",
                    Change.of("/penstock/sunlight", Sunlight.BURIED))
            .wayOut("allow", "Bends and slides that take {length:m}.", Expansion::allow)
            .build();

    private Expansion() {}

    private static Outcome judge(Judgement j) {
        Penstock penstock = j.design().penstock();
        if (penstock.sunlight() == Sunlight.BURIED) {
            return j.at("/penstock").says("buried");
        }
        double allowed = j.at("/penstock").si(PATH, penstock.expansionAllowance());
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        double coldest = j.numbers().site().lowestAirTemperature();
        double hottest = sections.get(0).highestWallTemperature();
        double change = sections.stream()
                .mapToDouble(section -> Math.abs(section.lengthChange(hottest - coldest)))
                .sum();
        return j.at(PATH)
                .saying("taken", "not-taken")
                .with("longest", hottest, TEMPERATURE)
                .with("shortest", coldest, TEMPERATURE)
                .atMost(change, allowed, LENGTH);
    }

    private static Stream<Change> allow(Judgement j, Outcome.Fail failure) {
        double metres = Math.ceil(failure.value() * 20 - 1e-9) / 20;
        return Stream.of(Change.of(PATH, m(metres)).with("length", metres, LENGTH));
    }
}
