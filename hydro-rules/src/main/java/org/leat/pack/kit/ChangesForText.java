package org.leat.pack.kit;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Change.Changes;

/** Changes that go with one of the texts in which a rule fails. */
public final class ChangesForText {

    private ChangesForText() {}

    /** {@return the changes where a failure is said with that text, none where it is said with another} */
    public static Changes only(String text, Changes changes) {
        return (j, failure) -> failure.says(text) ? changes.of(j, failure) : Stream.empty();
    }

    /** {@return the one change where a failure is said with that text, none where it is said with another} */
    public static Changes only(String text, Change change) {
        return only(text, (j, failure) -> Stream.of(change));
    }

    /** {@return the changes where a failure is said with any other text than that one} */
    public static Changes except(String text, Changes changes) {
        return (j, failure) -> failure.says(text) ? Stream.empty() : changes.of(j, failure);
    }
}
