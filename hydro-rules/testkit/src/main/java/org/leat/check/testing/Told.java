package org.leat.check.testing;

import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A finding as an expectation tells it.
 *
 * @param rule the rule's id
 * @param facts kind, level, place and what else is told in a word or a number, by {@link #FACTS}
 * @param text the sentence
 * @param waysOut every way out that is offered, best first
 */
record Told(String rule, Map<String, String> facts, String text, List<Way> waysOut) {

    /** What is told of a finding, in this order; position only where an expectation asks for it. */
    static final List<String> FACTS =
            List.of("kind", "level", "position", "at", "case", "alternative", "value", "limit", "missing");

    static final String POSITION = "position";

    /**
     * One way out.
     *
     * @param text what to do
     * @param watts what it gains at the battery; "" where that does not apply
     * @param edits the values that are replaced, by path; {@code null} for one that is taken out
     */
    record Way(String text, String watts, Map<String, String> edits) {

        Way {
            edits = Map.copyOf(edits);
        }
    }

    Told {
        facts = Map.copyOf(facts);
        waysOut = List.copyOf(waysOut);
    }

    String fact(String name) {
        return facts.getOrDefault(name, "");
    }

    /** {@return every sentence that is said} */
    Stream<String> texts() {
        return Stream.concat(Stream.of(text), waysOut.stream().map(Way::text));
    }

    /** {@return which finding it is, whatever was found} */
    String subject() {
        String alternative = fact("alternative").isEmpty() ? "" : " in alternative " + fact("alternative");
        String during = fact("case").isEmpty() ? "" : " during " + fact("case");
        return rule + " at " + fact("at") + during + alternative;
    }

    /** {@return in one line, for a message} */
    String line() {
        StringBuilder line = new StringBuilder(subject());
        for (String name : FACTS) {
            if (!List.of("at", "case", "alternative").contains(name)
                    && !fact(name).isEmpty()) {
                line.append(", ").append(name).append(' ').append(fact(name));
            }
        }
        line.append(": ").append(text);
        waysOut.forEach(way -> line.append("; way out: ").append(way));
        return line.toString();
    }
}
