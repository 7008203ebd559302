package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.WayOut.RejectedChange;
import org.leat.plant.Plant;

/** An outcome together with what it was judged from. */
record Verdict(RuleRun run, Judgement judgement, Outcome outcome, boolean broke) {

    /** {@return what every rule answers for a plant, by rule} */
    static List<Verdict> all(List<RuleRun> runs, Plant plant) {
        return all(runs, new Trials(plant));
    }

    /** {@return what every rule answers for a plant, by rule} */
    static List<Verdict> all(List<RuleRun> runs, Trials trials) {
        List<Verdict> verdicts = new ArrayList<>();
        for (RuleRun run : runs) {
            verdicts.addAll(trials.verdicts(run));
        }
        return verdicts;
    }

    /**
     * Ways out of a failure.
     *
     * @param holding those whose edits were applied and judged again, and helped
     * @param rejected those that helped and made another rule fail as badly
     * @param broke whether the rule broke on the way
     */
    record Ways(List<WayOut> holding, List<RejectedChange> rejected, boolean broke) {}

    /**
     * {@return the ways out of a failure that hold: each edit was applied and judged again}
     *
     * <p>None for anything but a failure. A way out that breaks or does not help is left out.
     *
     * @param runs every rule, to see that no other begins to fail as badly
     * @param before what fails already
     */
    Ways waysOut(List<RuleRun> runs, Failures before) {
        List<WayOut> holding = new ArrayList<>();
        List<RejectedChange> rejected = new ArrayList<>();
        if (!(outcome instanceof Outcome.Fail failure)) {
            return new Ways(holding, rejected, false);
        }
        try {
            for (WayOut given : run.rule().waysOut(judgement, failure)) {
                WayOut way = given.changing(OnHand.changedBy(given.edits(), judgement.design()));
                if (way.edits().isEmpty()) {
                    holding.add(way);
                } else if (helps(way)) {
                    String brings = brings(way, runs, before);
                    if (brings == null) {
                        holding.add(way);
                    } else {
                        rejected.add(new RejectedChange(way, brings));
                    }
                }
            }
        } catch (RuntimeException | StackOverflowError | LinkageError e) {
            // the failure stands, with the ways that were found before the rule broke
            return new Ways(holding, rejected, true);
        }
        return new Ways(holding, rejected, false);
    }

    /** Only a pass is a way out. */
    private boolean helps(WayOut way) {
        return judgement.trials().with(way.edits()).verdicts(run).stream()
                .map(Verdict::outcome)
                .allMatch(then -> !then.identity().equals(outcome.identity()) || then.kind() == Kind.PASS);
    }

    /** {@return the first rule that begins to fail as badly by a way out, or in more cases; null if none does} */
    private @Nullable String brings(WayOut way, List<RuleRun> runs, Failures before) {
        Trials edited = judgement.trials().with(way.edits());
        for (RuleRun other : runs) {
            if (other.equals(run) || other.canFailAs(outcome.level())) {
                List<Outcome> after =
                        edited.verdicts(other).stream().map(Verdict::outcome).toList();
                String worse =
                        Failures.of(after).worseThan(before, outcome.level()).orElse(null);
                if (worse != null) {
                    return worse; // a rule fails by itself: what the others say changes nothing of it
                }
            }
        }
        return null;
    }

    Verdict with(Outcome other) {
        return new Verdict(run, judgement, other, broke);
    }
}
