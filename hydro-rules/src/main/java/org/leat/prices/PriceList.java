package org.leat.prices;

import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.design.Design;
import org.leat.file.Problem;
import org.leat.file.RecordReader;

/**
 * Parts with prices for one design: what may vary, and by what. Of each choice one part is taken.
 *
 * @param currency of all prices
 * @param choices at least one; no two of them set the same field
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record PriceList(String currency, List<Choice> choices) {

    /** The version of the file format that is read. */
    public static final int FORMAT = 1;

    /** Sets of parts at most. */
    public static final long MOST_SETS = 10_000_000;

    public PriceList {
        choices = List.copyOf(choices);
    }

    /**
     * One thing to choose.
     *
     * @param name what it is called
     * @param paths fields of the design that it sets
     * @param parts of which one is taken
     */
    public record Choice(String name, List<String> paths, List<Part> parts) {

        public Choice {
            paths = List.copyOf(paths);
            parts = List.copyOf(parts);
        }
    }

    /**
     * One part.
     *
     * @param name what it is called
     * @param price in the currency of the list
     * @param edits what it makes of the design, one for each path of its choice
     * @param asDesigned whether the design has it already
     */
    public record Part(String name, BigDecimal price, List<Edit> edits, boolean asDesigned) {

        public Part {
            edits = List.copyOf(edits);
        }
    }

    /**
     * What came of reading one.
     *
     * @param list what it says; null exactly if there are problems
     * @param problems every problem found, each with its place in the price list
     */
    public record Read(@Nullable PriceList list, List<Problem> problems) {

        public Read {
            problems = List.copyOf(problems);
        }
    }

    /**
     * {@return a price list for a design} Bad content never throws.
     *
     * @param name to be shown as the file's name
     */
    public static Read read(Path file, String name, Design design) {
        return PriceListReader.of(RecordReader.read(PriceFile.class, file, name), design);
    }

    /** {@return the same of a text} */
    public static Read read(String text, String name, Design design) {
        return PriceListReader.of(RecordReader.read(PriceFile.class, text, name), design);
    }

    /** {@return the JSON Schema of price lists, as JSON text} */
    public static String schema() {
        return RecordReader.schema("Price list, format " + FORMAT, PriceFile.class);
    }

    /** {@return in how many ways one part of each choice can be taken} */
    public long sets() {
        long sets = 1;
        for (Choice choice : choices) {
            sets = Math.multiplyExact(sets, choice.parts().size());
        }
        return sets;
    }
}
