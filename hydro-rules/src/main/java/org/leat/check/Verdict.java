package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import org.leat.plant.Plant;

/** An outcome together with what it was judged from. */
record Verdict(RuleRun run, Judgement judgement, Outcome outcome, boolean broke) {

    /** {@return what every rule answers for a plant, by rule} */
    static List<Verdict> all(List<RuleRun> runs, Plant plant) {
        List<Verdict> verdicts = new ArrayList<>();
        for (RuleRun run : runs) {
            verdicts.addAll(run.judge(plant));
        }
        return verdicts;
    }

    /**
     * Ways out of a failure.
     *
     * @param holding those whose edits were applied and judged again, and helped
     * @param broke whether the rule broke on the way
     */
    record Ways(List<WayOut> holding, boolean broke) {}

    /**
     * {@return the ways out of a failure that hold: each edit was applied and judged again}
     *
     * <p>None for anything but a failure. A way out that breaks or does not help is left out.
     */
    Ways waysOut() {
        if (outcome.kind() != Kind.FAIL) {
            return new Ways(List.of(), false);
        }
        List<WayOut> holding = new ArrayList<>();
        try {
            for (WayOut way : run.rule().waysOut(judgement, outcome)) {
                if (way.edits().isEmpty() || helps(way)) {
                    holding.add(way);
                }
            }
        } catch (RuntimeException | StackOverflowError e) {
            // the failure stands, with the ways that were found before the rule broke
            return new Ways(holding, true);
        }
        return new Ways(holding, false);
    }

    private boolean helps(WayOut way) {
        for (Outcome after : run.rule().judge(judgement.with(way.edits()))) {
            if (after.identity().equals(outcome.identity()) && after.kind() == Kind.FAIL) {
                return false;
            }
        }
        return true;
    }

    Verdict with(Outcome other) {
        return new Verdict(run, judgement, other, broke);
    }
}
