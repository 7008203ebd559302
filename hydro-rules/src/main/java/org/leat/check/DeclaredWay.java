package org.leat.check;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change.Changes;
import org.leat.design.ImpossibleValueException;

/**
 * A way out as a rule's card declares it: the text, and what to try.
 *
 * @param message id of the text
 * @param search how the changes are tried
 * @param inTurn what to try; the next only where none of those before helps
 */
record DeclaredWay(String message, Search search, List<Changes> inTurn) {

    /** How changes are tried. */
    enum Search {
        /** one after the other, until one helps. */
        FIRST,
        /** from the least to the greatest, by halving: where one helps, a greater one is taken to help too. */
        LEAST,
        /** not at all: advice that is no edit of the design. */
        ADVICE,
        /** advice, where nothing before it helped. */
        LAST_ADVICE
    }

    /** {@return the way out of a failure, if there is one} */
    Optional<WayOut> find(Rule rule, Judgement j, Outcome.Fail failure, boolean foundBefore) {
        return inTurn.stream()
                .flatMap(changes -> find(rule, j, failure, changes, foundBefore).stream())
                .findFirst();
    }

    private Optional<WayOut> find(Rule rule, Judgement j, Outcome.Fail failure, Changes changes, boolean foundBefore) {
        try {
            return switch (search) {
                case FIRST -> first(rule, j, failure, changes.of(j, failure));
                case LEAST -> least(rule, j, failure, changes.of(j, failure).toList());
                case ADVICE -> advice(j, failure, changes);
                case LAST_ADVICE -> foundBefore ? Optional.empty() : advice(j, failure, changes);
            };
        } catch (OpenQuestion e) {
            return Optional.empty(); // what it is sized by is not known, so nobody could do it
        }
    }

    private Optional<WayOut> advice(Judgement j, Outcome.Fail failure, Changes changes) {
        return changes.of(j, failure)
                .findFirst()
                .map(change -> new WayOut(new Message(message, change.args(j)), List.of(), OptionalDouble.empty()));
    }

    private Optional<WayOut> first(Rule rule, Judgement j, Outcome.Fail failure, Stream<Change> tried) {
        for (Iterator<Change> it = tried.iterator(); it.hasNext(); ) {
            Change change = it.next();
            Judgement changed = helping(rule, j, failure, change);
            if (changed != null) {
                return Optional.of(way(j, change, changed));
            }
        }
        return Optional.empty();
    }

    private Optional<WayOut> least(Rule rule, Judgement j, Outcome.Fail failure, List<Change> ordered) {
        int low = -1;
        int high = ordered.size() - 1;
        Judgement found = high < 0 ? null : helping(rule, j, failure, ordered.get(high));
        if (found == null) {
            return Optional.empty();
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            Judgement changed = helping(rule, j, failure, ordered.get(middle));
            if (changed == null) {
                low = middle;
            } else {
                found = changed;
                high = middle;
            }
        }
        return Optional.of(way(j, ordered.get(high), found));
    }

    private WayOut way(Judgement j, Change change, Judgement changed) {
        return new WayOut(new Message(message, change.args(changed)), change.edits(), change.gain(j, changed));
    }

    /** {@return the changed design judged, if this failure is gone without a new one of the same rule; else null} */
    private static @Nullable Judgement helping(Rule rule, Judgement j, Outcome.Fail failure, Change change) {
        if (change.edits().isEmpty()) {
            return null;
        }
        Judgement changed;
        try {
            changed = j.with(change.edits());
        } catch (ImpossibleValueException e) {
            return null; // the edited design can never be, so it is no way out
        }
        Set<Identity> after = bad(rule.judge(changed));
        boolean helps = after.isEmpty()
                || (!after.contains(failure.identity()) && bad(rule.judge(j)).containsAll(after));
        return helps && change.isOfUse(changed) ? changed : null;
    }

    private static Set<Identity> bad(List<Outcome> outcomes) {
        Set<Identity> bad = new LinkedHashSet<>();
        for (Outcome outcome : outcomes) {
            if (outcome.kind() == Kind.FAIL || outcome.kind() == Kind.OPEN || outcome.kind() == Kind.REVIEW) {
                bad.add(outcome.identity());
            }
        }
        return bad;
    }
}
