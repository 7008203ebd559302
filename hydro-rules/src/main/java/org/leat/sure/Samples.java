package org.leat.sure;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import org.leat.check.Finding;
import org.leat.check.Identity;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.sure.Sureness.Basis;
import org.leat.sure.Sureness.OfVerdict;

/** Counts in how many plants each verdict fails or cannot be judged. */
final class Samples {

    private final Map<Identity, Count> counts = new HashMap<>();
    private final Set<String> rules = new TreeSet<>();
    private int points;
    private int errors;
    private int doubts;

    /** What came of one verdict so far. */
    private static final class Count {
        private final Identity identity;
        private final boolean alone;
        private final boolean error;
        private int failing;
        private int undecided;

        Count(Outcome outcome, Answers base) {
            this.identity = outcome.identity();
            this.alone = base.atPlace(identity) == 1;
            this.error = outcome.level() == Level.ERROR;
        }
    }

    /** @param base what rules answer about the plant as designed */
    Samples(List<Finding> findings, Answers base) {
        for (Finding finding : findings) {
            Outcome outcome = finding.outcome();
            counts.put(outcome.identity(), new Count(outcome, base));
            rules.add(outcome.rule());
        }
    }

    boolean isEmpty() {
        return counts.isEmpty();
    }

    /** {@return whether a verdict is sampled} */
    boolean asks(Identity identity) {
        return counts.containsKey(identity);
    }

    /** {@return which rules are asked} */
    Predicate<String> rules() {
        return rules::contains;
    }

    /** Counts one plant. What is not asked any more is not decided. */
    void add(Answers answers) {
        points++;
        boolean doubt = false;
        for (Count count : counts.values()) {
            Outcome outcome = answers.like(count.identity, count.alone);
            Kind kind = outcome == null ? Kind.OPEN : outcome.kind();
            count.failing += kind == Kind.FAIL ? 1 : 0;
            boolean undecided = kind == Kind.OPEN || kind == Kind.REVIEW;
            count.undecided += undecided ? 1 : 0;
            doubt |= undecided && count.error;
        }
        errors += answers.anyError() ? 1 : 0;
        doubts += doubt && !answers.anyError() ? 1 : 0;
    }

    int points() {
        return points;
    }

    OptionalDouble anyError() {
        return points == 0 ? OptionalDouble.empty() : OptionalDouble.of((double) errors / points);
    }

    /** {@return share of the plants in which none fails as an error and one that might could not be judged} */
    double doubtful() {
        return points == 0 ? 0 : (double) doubts / points;
    }

    /** {@return a verdict with what was counted, if it was sampled} */
    OfVerdict told(OfVerdict first) {
        Count count = counts.get(first.identity());
        if (first.basis() != Basis.SAMPLED || count == null || points == 0) {
            return first;
        }
        return new OfVerdict(
                first.finding(),
                Basis.SAMPLED,
                first.uncertainty(),
                OptionalDouble.of((double) count.failing / points),
                (double) count.undecided / points,
                first.shares());
    }
}
