package org.leat.pack.nozzle;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.NozzleSet;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.SolvedYear;
import org.leat.pack.kit.StreamFlows;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Cases;
import org.leat.plant.duties.SeasonMatch;
import org.leat.quantity.QuantityText;
import org.leat.quantity.Si;

/** The nozzle sets on hand against what each flow of the stream could give. */
final class SetCoversStream {

    private static final String SETS = "/nozzles/sets";

    /** Bores that differ by less are one, m. */
    private static final double SAME = 1e-6;

    static final Rule RULE = Rule.of(
                    "nozzle/set-covers-stream", WARNING, "nozzle sets on hand against the flows of the year")
            .why(
                    "A nozzle too wide for a dry month empties the pipe and loses the head, and power falls with the cube of the"
                            + " flow. A nozzle costs little: have one for every season.")
            .formula(
                    "power of the best set on hand / power of a nozzle cut for that flow; full pipe: as solved; else the"
                            + " nozzle passes what there is, P = ρ Q V²/2 with V = Q / jet area; no nozzle wider than the widest set on hand")
            .judged(
                    "where stream and loads are known for the year: its days month by month, less what is kept; else each flow that is"
                            + " told; the worst is told")
            .source("continuity: the nozzle passes what there is")
            .source(COMMON_PRACTICE)
            .limit("share", RATIO, 90, "%", COMMON_PRACTICE)
            .passes(
                    "covers",
                    "At every flow a set on hand gives {value:%} or more of what a nozzle cut for it would;"
                            + " least at {flow}.")
            .fails(
                    "misses",
                    "At {flow} the best set on hand ({set}) gives {value:%} of what a nozzle cut for that"
                            + " flow would; good is {limit}.")
            .passes(
                    "covers-the-year",
                    "In every month the sets on hand give {value:%} or more of what nozzles cut for each day would; least in"
                            + " {when}, at {flow}.")
            .fails(
                    "misses-in-the-year",
                    "In {when} the sets on hand give {value:%} of what nozzles cut for each day would, least at {flow} with"
                            + " {set}; good is {limit}.")
            .fails(
                    "not-on-hand",
                    "The sets to be judged open nozzles of {bores}, which are neither open as built nor on hand: their water is"
                            + " counted and they are not there.")
            .notApplicable("dry", "Not judged: at no time of the year is there water for the plant.")
            .judgeAll(SetCoversStream::judgeAll)
            .wayOut("have", "Nozzles of {bores} on hand as well.", FieldChanges.onlyAt(SETS, SetCoversStream::have))
            .wayOut("add-bores", "Further nozzles of {bores}.", SetCoversStream::addBores)
            .build();

    private SetCoversStream() {}

    private static List<Outcome> judgeAll(Judgement j) {
        List<Supplier<Outcome>> all = new ArrayList<>(List.of(() -> judge(j)));
        List<Quantity<Length>> lacking = lacking(j.design().nozzles());
        if (!lacking.isEmpty()) {
            all.add(() -> j.at(SETS).with("bores", printed(lacking)).says("not-on-hand"));
        }
        return j.all(all);
    }

    /** Bores that the sets open and that nobody has. */
    private static List<Quantity<Length>> lacking(NozzleSet nozzles) {
        return nozzles.sets().stream()
                .flatMap(set -> set.open().stream())
                .filter(bore -> Stream.concat(nozzles.open().stream(), nozzles.available().stream())
                        .noneMatch(had -> Math.abs(Si.of(had) - Si.of(bore)) < SAME))
                .distinct()
                .toList();
    }

    private static String printed(List<Quantity<Length>> bores) {
        return bores.stream().map(QuantityText::print).collect(Collectors.joining(", "));
    }

    private static Stream<Change> have(Judgement j, Outcome.Fail failure) {
        List<Quantity<Length>> lacking = lacking(j.design().nozzles());
        List<Quantity<Length>> bores = new ArrayList<>(j.design().nozzles().available());
        bores.addAll(lacking);
        return Stream.of(Change.of("/nozzles/available", bores).with("bores", printed(lacking)));
    }

    private static Outcome judge(Judgement j) {
        Cases cases = j.solved();
        StreamFlows.of(j, "/nozzles");
        List<SeasonMatch> seasons = SeasonMatch.all(cases);
        Spot spot = j.at("/nozzles/available");
        if (seasons.isEmpty()) {
            return spot.says("dry");
        }
        List<MonthMatch> months = months(j);
        if (!months.isEmpty()) {
            MonthMatch month = Worst.least(months, MonthMatch::share);
            return spot.during(SolvedYear.CASE)
                    .saying("covers-the-year", "misses-in-the-year")
                    .with("when", SolvedYear.name(j.year().orElseThrow(), month.month()))
                    .with("flow", month.worst().flow(), VOLUME_FLOW)
                    .with("set", month.worst().set().name())
                    .atLeast(month.share(), j.limit("share"));
        }
        SeasonMatch worst = Worst.least(seasons, SeasonMatch::share);
        return spot.with("flow", worst.flow(), VOLUME_FLOW)
                .with("set", worst.set().name())
                .atLeast(worst.share(), j.limit("share"));
    }

    private static List<MonthMatch> months(Judgement j) {
        return j.year().map(told -> MonthMatch.all(j.solved(), told)).orElse(List.of());
    }

    /** Of each flow that is told, and of the worst day of each month. */
    private static List<SeasonMatch> seasons(Judgement j) {
        List<SeasonMatch> all = new ArrayList<>(SeasonMatch.all(j.solved()));
        months(j).stream()
                .filter(month -> month.share() < j.limit("share").value())
                .forEach(month -> all.add(month.worst()));
        return all;
    }

    private static Stream<Change> addBores(Judgement j, Outcome.Fail failure) {
        if (!j.design().nozzles().sets().isEmpty()) {
            return Stream.empty();
        }
        List<Quantity<Length>> bores = new ArrayList<>(j.design().nozzles().available());
        StringJoiner added = new StringJoiner(", ");
        for (SeasonMatch season : seasons(j)) {
            Quantity<Length> bore = mm(Math.rint(season.bestBore() * 2000) / 2);
            if (season.share() < j.limit("share").value() && !bores.contains(bore)) {
                bores.add(bore);
                added.add(QuantityText.print(bore));
            }
        }
        return Stream.of(Change.of("/nozzles/available", bores).with("bores", added.toString()));
    }
}
