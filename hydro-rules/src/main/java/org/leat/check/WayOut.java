package org.leat.check;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * A computed way out of a failure. Made with {@link Judgement#wayOut}, which solves the plant again.
 *
 * @param message what to do; one of the rule's messages
 * @param edits the design with these is free of the failure; empty for advice that is no edit
 * @param gain battery-side watts won (negative: lost) with the nozzles open as built; null where it does not apply
 */
public record WayOut(
        Message message, List<Edit> edits, @Nullable Double gain) {

    public WayOut {
        edits = List.copyOf(edits);
    }
}
