package org.leat.pack.site;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.SolvedYear;
import org.leat.pack.kit.StreamFlows;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.quantity.Si;
import org.leat.season.DesignYear;

/** What the open nozzles pass against what the stream brings, at each flow of the year. */
final class FlowAvailable {

    static final Rule RULE = Rule.of("site/flow-available", WARNING, "flow of the open nozzles against the stream")
            .why(
                    "Where the nozzles pass more than the stream brings, the pipe does not stay full: the level falls in it,"
                            + " the head is lost and the nozzle spits air.")
            .formula("flow of the nozzles with the pipe full ≤ stream flow − flow kept in the stream")
            .judged(
                    "where stream and loads are known for the year: its days, with the set on hand that needs least water; else the nozzles"
                            + " open as built, at the flow reached for the share of the year that is asked for")
            .source(COMMON_PRACTICE)
            .passes("enough", "The open nozzles pass {value}; {limit} is there for them.")
            .fails(
                    "too-little",
                    "The open nozzles pass {value} where {limit} is there for them (after {kept} for the"
                            + " bed): the pipe does not stay full and draws air.")
            .passes(
                    "enough-days",
                    "On {value:%} of the days of the year the stream fills the pipe of a set on hand, the least of which passes"
                            + " {least}.")
            .fails(
                    "too-few-days",
                    "On {value:%} of the days of the year the stream fills the pipe of a set on hand, the least of which passes"
                            + " {least}; it should be {limit:%}: on the others the pipe draws air.")
            .judgeAll(FlowAvailable::judge)
            .leastWayOut("further-nozzle", "A further nozzle of {bore:mm} on hand.", FlowAvailable::further)
            .leastWayOut("smaller-nozzle", "A {bore:mm} nozzle in every open position.", NozzlesOnHand::smaller)
            .build();

    private static final int LEAST_HALF_MILLIMETRES = 4;

    private FlowAvailable() {}

    private static List<Outcome> judge(Judgement j) {
        double asked = j.solved().running().get(0).water().fullPipeFlow();
        SiteNumbers site = j.numbers().site();
        List<StreamLevel> year = StreamFlows.of(j, "/site");
        Optional<DesignYear.Told> told = j.year();
        if (told.isPresent()) {
            return List.of(j.at("/nozzles/open")
                    .during(SolvedYear.CASE)
                    .saying("enough-days", "too-few-days")
                    .with("least", SolvedYear.leastFlow(told.get()), VOLUME_FLOW)
                    .atLeast(SolvedYear.daysFull(told.get()), site.fullPipeShare(), RATIO));
        }
        List<StreamLevel> asOften = year.stream()
                .filter(level -> level.kind() != StreamLevel.Kind.EXCEEDED || level.at() <= site.fullPipeShare() + 1e-9)
                .toList();
        return j.each(
                asOften.isEmpty() ? year.subList(0, 1) : asOften,
                level -> j.at("/nozzles/open")
                        .during(name(level))
                        .with("share", level.at(), RATIO)
                        .with("kept", site.keptInStream(), VOLUME_FLOW)
                        .atMost(asked, level.available(), VOLUME_FLOW));
    }

    /** In half millimetres, the largest first; for those who choose single nozzles, not sets. */
    private static Stream<Change> further(Judgement j, Outcome.Fail failure) {
        List<Quantity<Length>> onHand = j.design().nozzles().available();
        if (!failure.says("too-few-days") || !j.design().nozzles().sets().isEmpty()) {
            return Stream.empty();
        }
        double least = Stream.concat(onHand.stream(), j.design().nozzles().open().stream())
                .mapToDouble(Si::of)
                .min()
                .orElseThrow();
        return Stream.iterate(
                        Math.ceil(least * 2000) - 1, halves -> halves >= LEAST_HALF_MILLIMETRES, halves -> halves - 1)
                .map(halves -> {
                    List<Quantity<Length>> bores = new ArrayList<>(onHand);
                    bores.add(mm(halves / 2));
                    return Change.of("/nozzles/available", bores).with("bore", halves / 2000, LENGTH);
                });
    }

    private static String name(StreamLevel level) {
        return switch (level.kind()) {
            case CONSTANT -> "stream";
            case MONTH -> "month " + Math.round(level.at());
            case EXCEEDED -> "stream exceeded " + Math.round(level.at() * 100) + " %";
        };
    }
}
