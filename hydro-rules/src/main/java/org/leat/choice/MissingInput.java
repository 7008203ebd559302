package org.leat.choice;

import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Finding;

/**
 * An input that is not told, and the questions that hang on it.
 *
 * @param field path of the design's field, as {@code /safeguards/stop-water}
 * @param settles the questions that it would settle, or bring nearer to an answer; the worst first
 * @param assumed whether a value was assumed in its place
 * @param how how to come by it
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record MissingInput(String field, List<Finding> settles, boolean assumed, HowToLearn how) {

    public MissingInput {
        settles = List.copyOf(settles);
    }

    /** {@return how many of the questions are of what can hurt someone} */
    public long endangering() {
        return settles.stream().filter(Finding::endangers).count();
    }
}
