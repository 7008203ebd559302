package org.leat.pack.plant;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BucketMaterials;
import org.leat.pack.kit.PartWord;

/** When to clean, look at and renew what wears. */
final class MaintenancePlan {

    private static final String PLAN =
            "screen cleaned: {screen:d}; nozzles renewed, of running: {nozzles:h}; wheel's necks"
                    + " looked at, of running: {necks:h}; bearings renewed, of running: {bearings:h}; years of the battery by its"
                    + " cycles: {battery}; joints, bolts, earths and leads looked at: yearly.";

    static final Rule RULE = Rule.of("plant/maintenance-plan", NOTE, "when to clean, look at and renew what wears")
            .why(
                    "What must be looked at more often than somebody goes there is not looked at. Shut the water, hold the wheel"
                            + " and part the battery before you touch anything; work on it as the local codes ask.")
            .formula(
                    "screen: time between cleanings stretched until it loses too much or is half blocked; nozzles: running"
                            + " time times allowed over found growth; necks of a printed wheel, bearings and battery: as their own"
                            + " rules; the shortest of screen, nozzles and necks ≥ limit")
            .judged("running all the year; bearings on the set that wears most, battery in the season that gives least")
            .source("bearings: ISO 281:2007, 5.3; yearly look at joints, bolts, earths and leads: common practice")
            .source(COMMON_PRACTICE)
            .limit("visit", TIME, 7, "d", COMMON_PRACTICE)
            .limit("screen-loss", RATIO, 2, "%", COMMON_PRACTICE)
            .limit("screen-blocked", RATIO, 50, "%", COMMON_PRACTICE)
            .limit("nozzle-area", RATIO, 10, "%", COMMON_PRACTICE)
            .passes("plan", "Plan: " + PLAN)
            .tells("so-far", "As far as told: " + PLAN)
            .fails("too-often", "Somebody must see to the {part} every {value:d}; good is {limit:d}. Plan: " + PLAN)
            .judgeAll(MaintenancePlan::judge)
            .advice(
                    "larger-screen",
                    "A screen of {times} times the area in the same leaves.",
                    (j, failure) -> only(
                            PartWord.SCREEN,
                            j,
                            Stream.of(Change.advice()
                                    .with("times", j.limit("visit").value() / failure.value(), RATIO))))
            .advice(
                    "harder-nozzle",
                    "Nozzles of hardened steel, hard metal or ceramic, and a longer basin for the sand.",
                    (j, failure) -> only(PartWord.NOZZLES, j, Stream.of(Change.advice())))
            .wayOut(
                    "stronger",
                    BucketMaterials.OF_MATERIAL,
                    (j, failure) -> only(PartWord.NECKS, j, BucketMaterials.materials(j, failure)))
            .build();

    private MaintenancePlan() {}

    /**
     * What somebody must go there for; bearings and battery have rules of their own.
     *
     * @param part to see to
     * @param every s
     */
    private record Visit(PartWord part, double every) {

        /** The most frequent one; empty where none is known. */
        static Optional<Visit> mostOften(List<Interval> all) {
            List<PartWord> parts = List.of(PartWord.SCREEN, PartWord.NOZZLES, PartWord.NECKS);
            return IntStream.range(0, parts.size())
                    .filter(i -> all.get(i).time().isPresent())
                    .mapToObj(i -> new Visit(parts.get(i), all.get(i).time().getAsDouble()))
                    .min(Comparator.comparingDouble(Visit::every));
        }
    }

    private static List<Outcome> judge(Judgement j) {
        j.solved();
        List<Interval> all = Interval.all(j);
        List<Outcome> outcomes = new ArrayList<>(List.of(plan(j, all)));
        all.forEach(interval -> interval.open().ifPresent(outcomes::add));
        return outcomes;
    }

    private static Outcome plan(Judgement j, List<Interval> all) {
        Spot spot = j.at("/").with(all.stream().map(Interval::value).toArray(Arg[]::new));
        Optional<Visit> visit = Visit.mostOften(all);
        boolean seldom =
                visit.isEmpty() || visit.get().every() >= j.limit("visit").value();
        return visit.isEmpty() || (seldom && !all.stream().allMatch(Interval::known))
                ? spot.says("so-far")
                : spot.with(Arg.phrase("part", visit.get().part()))
                        .atLeast(visit.get().every(), j.limit("visit"));
    }

    private static Stream<Change> only(PartWord part, Judgement j, Stream<Change> changes) {
        return Visit.mostOften(Interval.all(j))
                .filter(visit -> visit.part() == part)
                .map(visit -> changes)
                .orElse(Stream.empty());
    }
}
