package org.leat.rulefile;

import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.RulePack;
import org.leat.file.Problem;

/**
 * What came of reading a rule file.
 *
 * @param pack its rules; null if anything is wrong with it
 * @param problems everything that is wrong, by place; empty if nothing is
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record RuleFileReading(@Nullable RulePack pack, List<Problem> problems) {

    public RuleFileReading {
        problems = List.copyOf(problems);
    }
}
