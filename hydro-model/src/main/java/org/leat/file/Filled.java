package org.leat.file;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * What came of reading a file into a record.
 *
 * @param record what the file says; null exactly if there are problems
 * @param problems every problem found, in order
 * @param positions where each value stands
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public record Filled<R extends Record>(@Nullable R record, List<Problem> problems, Positions positions) {

    public Filled {
        problems = List.copyOf(problems);
    }
}
