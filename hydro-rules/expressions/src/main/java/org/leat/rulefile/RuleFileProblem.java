package org.leat.rulefile;

import org.leat.file.Position;

/**
 * One thing wrong with a rule file.
 *
 * @param position where
 * @param text what, in a sentence without a full stop
 */
public record RuleFileProblem(Position position, String text) implements Comparable<RuleFileProblem> {

    @Override
    public int compareTo(RuleFileProblem other) {
        int byPlace = position.compareTo(other.position);
        return byPlace == 0 ? text.compareTo(other.text) : byPlace;
    }

    /** {@return {@code file:line:column: text}} */
    @Override
    public String toString() {
        return position + ": " + text;
    }
}
