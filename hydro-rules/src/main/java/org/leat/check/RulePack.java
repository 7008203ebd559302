package org.leat.check;

import java.util.List;
import java.util.Map;

/** Rules that come together, with the texts of their messages. Meant to be implemented, also outside this project. */
public interface RulePack {

    /** {@return what the pack is called} */
    String name();

    /** {@return its rules, each with an id of its own} */
    List<Rule> rules();

    /**
     * {@return the texts of every message, by rule id, a dot and message id}
     *
     * <p>A text holds placeholders: {@code {flow}} in the usual unit and three significant digits, {@code {flow:L/s}},
     * {@code {flow:L/s,2}}. Where the outcome compares, {@code {value}}, {@code {limit}} and {@code {margin}} may be
     * used without being declared.
     */
    Map<String, String> texts();

    /**
     * {@return for a rule's page: a piece of a design that fails and what is found in it, in Markdown, by rule id}
     *
     * <p>A rule without one has a page without an example.
     */
    default Map<String, String> examples() {
        return Map.of();
    }
}
