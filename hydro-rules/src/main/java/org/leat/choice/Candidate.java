package org.leat.choice;

import java.util.Collection;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.leat.check.Edit;

/**
 * One change with what it does when carried out alone.
 *
 * @param step the change
 * @param clears places where it leaves no failure
 * @param calms places where it leaves no error; those that it clears and those where a lesser failure stays
 * @param brings whether it alone makes an error where there was none
 * @param gain at the battery, W; empty where unknown
 */
record Candidate(Step step, Set<Place> clears, Set<Place> calms, boolean brings, OptionalDouble gain) {

    List<Edit> edits() {
        return step.way().edits();
    }

    long clearedOf(Collection<Place> places) {
        return places.stream().filter(clears::contains).count();
    }

    long calmedOf(Collection<Place> places) {
        return places.stream().filter(calms::contains).count();
    }

    /** {@return whether both can be carried out: neither replaces what the other changes} */
    boolean goesWith(Candidate other) {
        for (Edit mine : edits()) {
            for (Edit its : other.edits()) {
                if (covers(mine.path(), its.path()) || covers(its.path(), mine.path())) {
                    return false;
                }
            }
        }
        return true;
    }

    private static boolean covers(String outer, String inner) {
        return inner.startsWith(outer)
                && (inner.length() == outer.length()
                        || inner.charAt(outer.length()) == '/'
                        || inner.charAt(outer.length()) == '[');
    }
}
