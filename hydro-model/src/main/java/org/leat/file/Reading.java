package org.leat.file;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;

/**
 * What came of reading a design file.
 *
 * @param design the design; null exactly if there are problems
 * @param problems every problem found, in order
 * @param positions where each value stands
 * @param source the file's name as it was given
 * @param text the file's text without byte order mark; empty if it could not be decoded
 */
@API(status = API.Status.STABLE, since = "0.1")
public record Reading(
        @Nullable Design design, List<Problem> problems, Positions positions, String source, String text) {

    public Reading {
        problems = List.copyOf(problems);
    }
}
