package org.leat.choice;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Level;
import org.leat.choice.Plan.Step;

/**
 * One change with what it does when carried out alone.
 *
 * @param step the change
 * @param clears places where it leaves no failure
 * @param calms places where it leaves no error; those that it clears and those where a lesser failure stays
 * @param brings the worst level at which it alone makes something fail that did not; null where it does not
 * @param gain at the battery, W; empty where unknown
 */
record CandidateChange(
        Step step,
        Set<FindingPlace> clears,
        Set<FindingPlace> calms,
        @Nullable Level brings,
        OptionalDouble gain) {

    /** {@return whether it alone makes an error where there was none} */
    boolean bringsError() {
        return brings == Level.ERROR;
    }

    /** {@return whether it clears a failure of that level without bringing one as bad} */
    boolean isFairFor(Level level) {
        return brings == null || brings.compareTo(level) < 0;
    }

    List<Edit> edits() {
        return step.way().edits();
    }

    long calmedOf(Collection<FindingPlace> places) {
        return places.stream().filter(calms::contains).count();
    }

    /** {@return the same, not to be used against those places} */
    CandidateChange notAgainst(Set<FindingPlace> places) {
        Set<FindingPlace> clearsStill = new LinkedHashSet<>(clears);
        clearsStill.removeAll(places);
        Set<FindingPlace> calmsStill = new LinkedHashSet<>(calms);
        calmsStill.removeAll(places);
        return new CandidateChange(step, clearsStill, calmsStill, brings, gain);
    }
}
