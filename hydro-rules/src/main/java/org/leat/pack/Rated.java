package org.leat.pack;

import java.util.List;
import java.util.stream.DoubleStream;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** A value against a rating that the design may not state. The spot is at the rating's field. */
final class Rated {

    private Rated() {}

    /** {@return the comparison, or open where the rating, in SI, is not stated} */
    static Outcome atMost(
            Spot spot,
            double value,
            @Nullable Double rating,
            QuantityKind kind,
            String passing,
            String failing,
            Arg... args) {
        return rating == null
                ? spot.notGiven(spot.path())
                : spot.compare(Comparison.atMost(value, rating, kind), passing, failing, args);
    }

    /** {@return the comparison, or open for the plant's reason where it knows no rating} */
    static Outcome atMost(
            Spot spot, double value, Amount rating, QuantityKind kind, String passing, String failing, Arg... args) {
        return rating instanceof Amount.Known known
                ? spot.compare(Comparison.atMost(value, known.value(), kind), passing, failing, args)
                : Open.because(spot, rating);
    }

    /** {@return a quantity in SI, null where it is not stated} */
    static @Nullable Double si(@Nullable Quantity<?> quantity) {
        return quantity == null ? null : Si.of(quantity);
    }

    /** {@return as {@link #larger}, where the field that failed is itself the limit: only ratings that reach the value} */
    static <Q extends Quantity<Q>> List<WayOut> raised(
            LegacyRule rule,
            Judgement j,
            Outcome failure,
            String message,
            String unit,
            Class<Q> type,
            double... ratings) {
        double value = failure.comparison() == null
                ? Double.NEGATIVE_INFINITY
                : failure.comparison().value();
        double[] enough = DoubleStream.of(ratings)
                .filter(rating -> Si.of(Si.quantity(rating, unit, type)) >= value)
                .toArray();
        return larger(rule, j, failure, message, unit, type, enough);
    }

    /**
     * {@return the way out of the first rating that helps, put at the field that failed; its text gets {@code
     * rating}}
     */
    static <Q extends Quantity<Q>> List<WayOut> larger(
            LegacyRule rule,
            Judgement j,
            Outcome failure,
            String message,
            String unit,
            Class<Q> type,
            double... ratings) {
        return Search.least(rule, j, failure, DoubleStream.of(ratings).mapToObj(rating -> {
                    Quantity<Q> quantity = Si.quantity(rating, unit, type);
                    return Candidate.of(
                            message,
                            new Edit(failure.path(), quantity),
                            Arg.of("rating", Si.of(quantity), QuantityKind.of(type)));
                }))
                .map(List::of)
                .orElse(List.of());
    }
}
