package org.leat.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * What a rule says about itself: the ground of its page in the reference, of {@code explain} and of its SARIF entry.
 *
 * @param id component and what is judged, as in {@code penstock/static-pressure}
 * @param level of a failure, unless the rule states another for a case or settings change it
 * @param worst the worst level a failure of this rule can have
 * @param endangers whether what its errors show can hurt someone
 * @param title what is judged, in a few words
 * @param why what goes wrong, in one to three sentences
 * @param formula what is computed, with symbols as in the nomenclature
 * @param judged the case that is judged, in words
 * @param sources standard and clause, handbook and page, or "common practice"; at least one
 * @param limits those that settings may change, by name
 * @param messages ids of the rule's messages (outcomes and ways out) with the names of their arguments
 */
public record RuleCard(
        String id,
        Level level,
        Level worst,
        boolean endangers,
        String title,
        String why,
        String formula,
        String judged,
        List<String> sources,
        Map<String, NamedLimit> limits,
        Map<String, List<String>> messages) {

    /** The words that stand for a source where a limit is a rule of thumb. */
    public static final String COMMON_PRACTICE = "common practice";

    private static final Pattern ID = Pattern.compile("[a-z]+(-[a-z]+)*/[a-z0-9]+(-[a-z0-9]+)*");

    public RuleCard {
        if (!ID.matcher(id).matches()) {
            throw new IllegalArgumentException("not a rule id: " + id);
        }
        if (sources.isEmpty() || title.isBlank() || why.isBlank() || formula.isBlank() || judged.isBlank()) {
            throw new IllegalArgumentException("rule " + id + " must state title, why, formula, case and source");
        }
        if (worst.compareTo(level) < 0) {
            throw new IllegalArgumentException("rule " + id + " fails as " + level + ", worse than " + worst);
        }
        sources = List.copyOf(sources);
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
        messages = Collections.unmodifiableMap(new LinkedHashMap<>(messages));
    }

    /** {@return whether a text can be a rule's id} */
    public static boolean isId(String text) {
        return ID.matcher(text).matches();
    }

    /** {@return a card to be filled in} */
    public static RuleCardBuilder of(String id, Level level) {
        return new RuleCardBuilder(id, level);
    }
}
