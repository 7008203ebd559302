package org.leat.pack.plausibility;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.leat.catalogue.tables.PlausibleRange;
import org.leat.catalogue.tables.PlausibleRange.Verdict;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.quantity.QuantityKind;

/** Every number stated against what such plants are made of. */
final class Sizes {

    /** Of a slip of milli or kilo, or of a digit or two. */
    private static final double[] SLIPS = {1e-3, 1e3, 0.1, 10, 0.01, 100};

    /** Of a gauge that shows psi and bar. */
    private static final double[] SLIPS_OF_GAUGES = {14.5, 1 / 14.5, 0.1, 10};

    private static final String POLE_PAIRS = "pole pairs";

    /** What is counted, and is never broken. */
    private static final Set<String> COUNTS =
            Set.of(POLE_PAIRS, "cells in series", "bolts of a hub", "cells of a pack");

    /** In the name of what is no field's number: by itself a slip in it says nothing of how the field is meant. */
    private static final String RATIO_OF_TWO = " over ";

    /** Of one: what is nearer to a whole number is one. */
    private static final double WHOLE = 1e-6;

    static final Rule RULE = Rule.of("plausibility/sizes", WARNING, "numbers stated against what such plants have")
            .canFailAs(ERROR)
            .judgesInput()
            .why(
                    "A slip of the unit or of one digit makes a plant that is no plant, and every verdict on it means nothing: a"
                            + " wheel of 140 m passes where one of 140 mm would burst.")
            .formula(
                    "least usual ≤ number ≤ greatest usual, a warning outside; an error outside what can be meant at all")
            .judged("the numbers as written: heads, pipes, nozzles, wheel, alternator, cables, battery, weather")
            .source("the table of plausible ranges, with a source for each")
            .source(COMMON_PRACTICE)
            .passes("usual", "Every number stated is of a size that such plants have.")
            .fails(
                    "odd",
                    "{value} as {quantity} is odd; such plants have {low} to {high}. Look again at unit and digits.")
            .fails(
                    "absurd",
                    "{value} as {quantity} cannot be meant; such plants have {low} to {high}. Nothing that follows from it"
                            + " means anything.")
            .judgeAll(Sizes::judge)
            .advice("poles", "Are {was} at {field} the poles? Write half of them, {meant}.", Sizes::poles)
            .advice("slip", "Is {was} at {field} meant as {meant}?", Sizes::slip)
            .build();

    private Sizes() {}

    private static List<Outcome> judge(Judgement j) {
        List<Outcome> outcomes = new ArrayList<>();
        if (!(j.numbers().site().grossHead() > 0)) {
            j.solved(); // no head: the plant has its reason
        }
        for (Stated stated : Stated.all(j)) {
            PlausibleRange range = stated.range();
            Verdict verdict = range.of(stated.value());
            if (verdict != Verdict.USUAL) {
                boolean absurd = verdict == Verdict.ABSURD;
                QuantityKind kind = stated.kind();
                outcomes.add(j.at(stated.path())
                        .during(range.quantity())
                        .as(absurd ? ERROR : WARNING)
                        .saying("usual", absurd ? "absurd" : "odd")
                        .with("quantity", range.quantity())
                        .with("low", range.oddLow(), kind)
                        .with("high", range.oddHigh(), kind)
                        .within(
                                stated.value(),
                                absurd ? range.absurdLow() : range.oddLow(),
                                absurd ? range.absurdHigh() : range.oddHigh(),
                                kind));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/").says("usual")) : outcomes;
    }

    /** The first slip that would make the number a usual one; temperatures, heights and ratios of two fields have none. */
    private static Stream<Change> slip(Judgement j, Outcome.Fail failure) {
        QuantityKind kind = failure.compared().kind();
        if (kind == QuantityKind.TEMPERATURE || failure.during().contains(RATIO_OF_TWO)) {
            return Stream.empty();
        }
        PlausibleRange range = PlausibleRange.find(failure.during()).orElseThrow();
        return DoubleStream.of(kind == QuantityKind.PRESSURE ? SLIPS_OF_GAUGES : SLIPS)
                .map(slip -> failure.value() * slip)
                .filter(meant -> range.of(meant) == Verdict.USUAL)
                .filter(meant -> !COUNTS.contains(failure.during()) || isWhole(meant))
                .mapToObj(meant -> meant(failure, meant))
                .limit(1);
    }

    /** Poles written as pairs of them: half as many would be usual. */
    private static Stream<Change> poles(Judgement j, Outcome.Fail failure) {
        double pairs = failure.value() / 2;
        return failure.during().equals(POLE_PAIRS)
                        && isWhole(pairs)
                        && PlausibleRange.find(POLE_PAIRS).orElseThrow().of(pairs) == Verdict.USUAL
                ? Stream.of(meant(failure, pairs))
                : Stream.empty();
    }

    private static boolean isWhole(double number) {
        return Math.abs(number - Math.rint(number)) < WHOLE;
    }

    private static Change meant(Outcome.Fail failure, double meant) {
        QuantityKind kind = failure.compared().kind();
        return Change.advice()
                .with("was", failure.value(), kind)
                .with(Arg.at("field", failure.path()))
                .with("meant", meant, kind);
    }
}
