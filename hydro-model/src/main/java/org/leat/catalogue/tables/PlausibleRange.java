package org.leat.catalogue.tables;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.leat.lazy.Once;

/**
 * A range of what a number of a small stream plant may be, from {@code plausible-ranges.csv}: outside the inner one it is odd, outside
 * the outer one whatever follows from it has no meaning. Most likely a slip of the unit or the digit.
 *
 * @param quantity as the nomenclature names it
 * @param unit SI symbol, 1 for a ratio
 * @param absurdLow least that can be meant
 * @param oddLow least that is usual
 * @param oddHigh greatest that is usual
 * @param absurdHigh greatest that can be meant
 * @param fields paths of a design at which it is stated, lists without their items, a space between them
 * @param source who says so, or "common practice"
 */
public record PlausibleRange(
        String quantity,
        String unit,
        double absurdLow,
        double oddLow,
        double oddHigh,
        double absurdHigh,
        String fields,
        String source) {

    private static final LazyTable<PlausibleRange> ALL = LazyTable.of("plausible-ranges", PlausibleRange.class);

    private static final Once<Map<String, PlausibleRange>> BY_FIELD = new Once<>(PlausibleRange::byField);

    /** How a number strikes whoever knows such plants. */
    public enum Verdict {
        /** as many plants have it. */
        USUAL,
        /** worth a second look. */
        ODD,
        /** cannot be meant. */
        ABSURD
    }

    /** {@return all of the table} */
    public static List<PlausibleRange> all() {
        return ALL.rows();
    }

    /** {@return the range of a quantity; empty where none is tabled} */
    public static Optional<PlausibleRange> find(String quantity) {
        return ALL.rows().stream()
                .filter(range -> range.quantity().equals(quantity))
                .findFirst();
    }

    /**
     * {@return the range of what a field of a design states; empty where none is tabled}
     *
     * @param path of the field, lists without their items: {@code /cables/rated-voltage}
     */
    public static Optional<PlausibleRange> ofField(String path) {
        return Optional.ofNullable(BY_FIELD.get().get(path));
    }

    private static Map<String, PlausibleRange> byField() {
        Map<String, PlausibleRange> ranges = new HashMap<>();
        for (PlausibleRange range : ALL.rows()) {
            for (String field : range.fields().split(" ", -1)) {
                ranges.put(field, range);
            }
        }
        return Map.copyOf(ranges);
    }

    /** {@return how a value strikes; both ends belong to their range} */
    public Verdict of(double value) {
        if (!(value >= absurdLow && value <= absurdHigh)) {
            return Verdict.ABSURD;
        }
        return value >= oddLow && value <= oddHigh ? Verdict.USUAL : Verdict.ODD;
    }
}
