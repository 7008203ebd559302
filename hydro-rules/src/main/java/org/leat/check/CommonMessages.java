package org.leat.check;

import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;

/** Messages that any rule's outcome may carry, because the checker or {@link Spot} says them. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class CommonMessages {

    /** An input is not given; arguments: field. */
    public static final String NOT_GIVEN = "common.not-given";
    /** A law was asked outside its published range; arguments: law, input, found, low, high, unit. */
    public static final String OUTSIDE_LAW = "common.outside-law";
    /** A law that has no upper end was asked below its published range; arguments: law, input, found, low, unit. */
    public static final String BELOW_LAW = "common.below-law";
    /** A law that has no lower end was asked above its published range; arguments: law, input, found, high, unit. */
    public static final String ABOVE_LAW = "common.above-law";
    /** The verdict changes within the range of an assumption; arguments: field. */
    public static final String HANGS_ON_ASSUMPTION = "common.hangs-on-assumption";
    /** The rule broke; arguments: cause. */
    public static final String RULE_BROKE = "common.rule-broke";
    /** The rule answered nothing; no arguments. */
    public static final String RULE_SILENT = "common.rule-silent";
    /** The plant has no such number; arguments: field, reason. */
    public static final String NOT_KNOWN = "common.not-known";

    /** A law was asked above the range it holds in; arguments: law, input, most, found, field. */
    public static final String ABOVE_RANGE = "common.above-range";

    /** A law was asked below the range it holds in; arguments: law, input, least, found, field. */
    public static final String BELOW_RANGE = "common.below-range";

    /** A name that no table knows; arguments: field, found, known. */
    public static final String NOT_TABLED = "common.not-tabled";

    /** Every common message with the names of its arguments. */
    public static final Map<String, List<String>> ARGUMENTS = Map.ofEntries(
            Map.entry(NOT_GIVEN, List.of("field")),
            Map.entry(OUTSIDE_LAW, List.of("law", "input", "found", "low", "high", "unit")),
            Map.entry(BELOW_LAW, List.of("law", "input", "found", "low", "unit")),
            Map.entry(ABOVE_LAW, List.of("law", "input", "found", "high", "unit")),
            Map.entry(HANGS_ON_ASSUMPTION, List.of("field")),
            Map.entry(RULE_BROKE, List.of("cause")),
            Map.entry(RULE_SILENT, List.of()),
            Map.entry(NOT_KNOWN, List.of("field", "reason")),
            Map.entry(ABOVE_RANGE, List.of("law", "input", "most", "found", "field")),
            Map.entry(BELOW_RANGE, List.of("law", "input", "least", "found", "field")),
            Map.entry(NOT_TABLED, List.of("field", "found", "known")));

    private CommonMessages() {}
}
