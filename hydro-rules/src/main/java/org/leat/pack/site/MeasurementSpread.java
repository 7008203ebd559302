package org.leat.pack.site;

import static org.leat.check.Level.NOTE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.WorstStop;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.SiteNumbers;

/** How well the head is known against what the pressure ratings leave. */
final class MeasurementSpread {

    private static final String PATH = "/site/gross-head";

    static final Rule RULE = Rule.of("site/measurement-spread", NOTE, "how well the head is known")
            .why(
                    "A pass by two per cent means nothing where the head is known to five. Where the measurement spreads wider"
                            + " than the tightest margin, measure again before trusting the pass.")
            .formula("tolerance of the head / head ≤ least margin of the pressure rules")
            .judged("standing and surge pressure, whose failure is an error and which grow with the head")
            .source("ISO/IEC Guide 98-3 (GUM): a value is judged with its uncertainty")
            .passes(
                    "known-well",
                    "The head is known to {tolerance:m}, {value:%}; the pressure ratings leave {limit:%}.")
            .fails(
                    "spreads",
                    "The head is known to {tolerance:m}, {value:%}, but the tightest pressure rating leaves"
                            + " {limit:%}.")
            .notApplicable("fails-already", "A pressure rating fails already.")
            .open("unknown-margin", "Cannot be judged: no pressure could be judged against a rating.")
            .open("no-tolerance", "Cannot be judged: how well the head is known is not told. Write it as 25 m ± 0.3 m.")
            .judge(MeasurementSpread::judge)
            .advice("measure", "Measure the head to {tolerance:m} or better.", MeasurementSpread::measure)
            .build();

    private MeasurementSpread() {}

    private static Outcome judge(Judgement j) {
        SiteNumbers site = j.numbers().site();
        Spot spot = j.at(PATH);
        if (!(site.grossHeadPlusMinus() > 0) || !(site.grossHead() > 0)) {
            return spot.open(PATH, "no-tolerance");
        }
        OptionalDouble least = DoubleStream.concat(standing(j), stops(j)).min();
        if (least.isEmpty()) {
            return spot.says("unknown-margin");
        }
        if (least.getAsDouble() < 0) {
            return spot.says("fails-already");
        }
        return spot.with("tolerance", site.grossHeadPlusMinus(), LENGTH)
                .atMost(site.grossHeadPlusMinus() / site.grossHead(), least.getAsDouble(), RATIO);
    }

    /** What the ratings leave over the standing pressure, a share for each section. */
    private static DoubleStream standing(Judgement j) {
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        List<Double> standing = j.plant().solve().shut().sections();
        return IntStream.range(0, sections.size())
                .boxed()
                .flatMapToDouble(i -> sections.get(i).ratingHot() instanceof Amount.Known rating
                        ? DoubleStream.of(Comparison.atMost(standing.get(i), rating.value(), PRESSURE)
                                .margin())
                        : DoubleStream.empty());
    }

    /** What the ratings leave over the worst stop, a share for each section. */
    private static DoubleStream stops(Judgement j) {
        return !j.plant().unsolvable().isEmpty() || WorstStop.valveNotListed(j)
                ? DoubleStream.empty()
                : IntStream.range(0, j.numbers().penstock().sections().size())
                        .mapToObj(i -> WorstStop.of(j, i).margin())
                        .flatMapToDouble(OptionalDouble::stream);
    }

    private static Stream<Change> measure(Judgement j, Outcome.Fail failure) {
        double tolerance = failure.limit() * j.numbers().site().grossHead();
        return Stream.of(Change.advice().with("tolerance", tolerance, LENGTH));
    }
}
