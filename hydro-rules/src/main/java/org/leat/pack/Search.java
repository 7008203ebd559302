package org.leat.pack;

import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Identity;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.design.ImpossibleValueException;

/** Looks for a way out by trying: each candidate is applied, the plant solved, the rule asked again. */
final class Search {

    private Search() {}

    /**
     * A change that may help.
     *
     * @param message of the rule, if it does
     * @param edits to try
     * @param args of the message
     */
    record Candidate(String message, List<Edit> edits, List<Arg> args) {
        Candidate {
            edits = List.copyOf(edits);
            args = List.copyOf(args);
        }

        static Candidate of(String message, Edit edit, Arg... args) {
            return new Candidate(message, List.of(edit), List.of(args));
        }
    }

    /** {@return the first candidate that makes the failure go away, as a way out} */
    static Optional<WayOut> first(LegacyRule rule, Judgement j, Outcome failure, Stream<Candidate> candidates) {
        Iterator<Candidate> tried = candidates.iterator();
        while (tried.hasNext()) {
            Candidate candidate = tried.next();
            if (helps(rule, j, failure, candidate.edits())) {
                return Optional.of(j.wayOut(
                        candidate.message(), candidate.edits(), candidate.args().toArray(Arg[]::new)));
            }
        }
        return Optional.empty();
    }

    /**
     * {@return the candidate of least change that makes the failure go away, as a way out}
     *
     * <p>Found by halving: where a change helps, a greater one of the same kind is taken to help too. What is found was
     * tried; where a smaller change would do as well, it may be missed.
     *
     * @param candidates from the least change to the greatest
     */
    static Optional<WayOut> least(LegacyRule rule, Judgement j, Outcome failure, Stream<Candidate> candidates) {
        List<Candidate> ordered = candidates.toList();
        int low = -1;
        int high = ordered.size() - 1;
        if (high < 0 || !helps(rule, j, failure, ordered.get(high).edits())) {
            return Optional.empty();
        }
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (helps(rule, j, failure, ordered.get(middle).edits())) {
                high = middle;
            } else {
                low = middle;
            }
        }
        Candidate found = ordered.get(high);
        return Optional.of(j.wayOut(found.message(), found.edits(), found.args().toArray(Arg[]::new)));
    }

    /** {@return whether the edits make this failure go away without a new one of the same rule} */
    static boolean helps(LegacyRule rule, Judgement j, Outcome failure, List<Edit> edits) {
        Judgement changed;
        try {
            changed = j.with(edits);
        } catch (ImpossibleValueException e) {
            return false; // the edited design can never be, so it is no way out
        }
        Set<Identity> after = bad(rule.judge(changed));
        return after.isEmpty()
                || (!after.contains(failure.identity()) && bad(rule.judge(j)).containsAll(after));
    }

    private static Set<Identity> bad(List<Outcome> outcomes) {
        Set<Identity> bad = new LinkedHashSet<>();
        for (Outcome outcome : outcomes) {
            if (outcome.kind() == Kind.FAIL || outcome.kind() == Kind.OPEN) {
                bad.add(outcome.identity());
            }
        }
        return bad;
    }
}
