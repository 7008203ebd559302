package org.leat.check;

import org.jspecify.annotations.Nullable;

/**
 * What a rule answers for one element in one case. Made with {@link Judgement#at}.
 *
 * @param rule the rule's id
 * @param kind what came of it
 * @param level how much it matters if it fails; kept for every kind
 * @param path the element by name, as in {@code /penstock/sections[run]/pipe/sdr}, in the words of the file; {@code /}
 *     for the whole design
 * @param during the case that was judged, as the plant names it; "" where the rule does not depend on one
 * @param comparison value, limit and margin; null where nothing is compared
 * @param message what there is to say
 * @param missing path of the field that would let the rule judge; null unless the kind is open for want of one
 */
public record Outcome(
        String rule,
        Kind kind,
        Level level,
        String path,
        String during,
        @Nullable Comparison comparison,
        Message message,
        @Nullable String missing) {

    public Outcome {
        if (!path.startsWith("/")) {
            throw new IllegalArgumentException("a path begins with a slash: " + path);
        }
        if (comparison != null && comparison.holds() && kind == Kind.FAIL) {
            throw new IllegalArgumentException(rule + " fails although its comparison holds");
        }
        if (comparison != null && !comparison.holds() && kind == Kind.PASS) {
            throw new IllegalArgumentException(rule + " passes although its comparison does not hold");
        }
    }

    /** {@return what makes this the same finding tomorrow: rule, element by name, case; never text or line} */
    public Identity identity() {
        return new Identity(rule, path, during);
    }
}
