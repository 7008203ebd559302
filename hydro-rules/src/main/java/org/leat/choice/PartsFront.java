package org.leat.choice;

import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Outcome;
import org.leat.prices.PriceList;

/**
 * The sets of parts worth choosing from: without error, and none of them costs no more, gives no less energy in the year and has no
 * more warnings than another, one of these being better.
 *
 * @param points the cheapest first
 * @param end how far the search came
 * @param sets in how many ways one part of each choice can be taken
 * @param solved sets whose energy was asked for
 * @param checked sets that every rule was asked about, or as many as it took to find an error
 * @param forbidden of those, with an error or something that can no longer be told
 * @param settledBelow price below which nothing is missing from the front of price and energy; null where nothing is missing at all
 * @param possible energy that no set exceeds that was not looked at, J in the year; empty where all were, or where nothing bounds it
 * @param fewer warnings below which nothing is proven; 0 where all is, empty where the search was stopped before anything was
 * @param refused where no set was found: the last that was judged, and what forbids it; null else
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record PartsFront(
        List<Point> points,
        End end,
        long sets,
        int solved,
        int checked,
        int forbidden,
        @Nullable BigDecimal settledBelow,
        OptionalDouble possible,
        OptionalInt fewer,
        @Nullable Refused refused) {

    public PartsFront {
        points = List.copyOf(points);
    }

    /**
     * A set of parts that must not be.
     *
     * @param parts one for each choice, in the order of the price list
     * @param because errors that count, and questions of errors that can no longer be told, by rule
     */
    public record Refused(List<PriceList.Part> parts, List<Outcome> because) {

        public Refused {
            parts = List.copyOf(parts);
            because = List.copyOf(because);
        }
    }

    /** How far the search came. */
    public enum End {
        /** No set is missing. */
        WHOLE,
        /** No set is missing for its price and its energy; with fewer warnings there may be others. */
        OF_PRICE_AND_ENERGY,
        /** The search was stopped. */
        STOPPED
    }

    /**
     * One set of parts.
     *
     * @param parts one for each choice, in the order of the price list
     * @param price of all of them
     * @param energy of the year, J at the battery's poles
     * @param warnings each that counts, by rule
     * @param edits what they make of the design
     */
    public record Point(
            List<PriceList.Part> parts,
            BigDecimal price,
            double energy,
            List<Outcome.Fail> warnings,
            List<Edit> edits) {

        public Point {
            parts = List.copyOf(parts);
            warnings = List.copyOf(warnings);
            edits = List.copyOf(edits);
        }
    }
}
