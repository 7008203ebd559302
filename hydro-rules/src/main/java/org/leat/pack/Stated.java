package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;

/** Answers of rules that ask whether something is so, as the design states it. */
final class Stated {

    private Stated() {}

    /** {@return pass where it is so, failure where it is not, open where nothing is stated} The spot is at the field. */
    static Outcome so(Spot spot, @Nullable Boolean value, String passing, String failing, Arg... args) {
        if (value == null) {
            return spot.notGiven(spot.path());
        }
        return value ? spot.pass(passing, args) : spot.fail(failing, args);
    }

    /** {@return the way out of giving the field that failed another value; none if that does not help} */
    static List<WayOut> otherwise(
            LegacyRule rule, Judgement j, Outcome failure, String message, Object value, Arg... args) {
        return Search.first(rule, j, failure, Stream.of(Candidate.of(message, new Edit(failure.path(), value), args)))
                .map(List::of)
                .orElse(List.of());
    }
}
