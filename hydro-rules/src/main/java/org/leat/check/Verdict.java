package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
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
     *
     * @param runs every rule, to see that no other begins to fail as badly
     * @param failing rule and element of what fails already at this level or a worse one
     */
    Ways waysOut(List<RuleRun> runs, Set<String> failing) {
        if (outcome.kind() != Kind.FAIL) {
            return new Ways(List.of(), false);
        }
        List<WayOut> holding = new ArrayList<>();
        try {
            for (WayOut way : run.rule().waysOut(judgement, outcome)) {
                if (way.edits().isEmpty() || helps(way, runs, failing)) {
                    holding.add(way);
                }
            }
        } catch (RuntimeException | StackOverflowError | LinkageError e) {
            // the failure stands, with the ways that were found before the rule broke
            return new Ways(holding, true);
        }
        return new Ways(holding, false);
    }

    /** Only a pass is a way out, and only if nothing else begins to fail as badly. */
    private boolean helps(WayOut way, List<RuleRun> runs, Set<String> failing) {
        Plant edited = judgement.with(way.edits()).plant();
        for (RuleRun other : runs) {
            if (!other.equals(run) && !other.canFailAs(outcome.level())) {
                continue;
            }
            for (Verdict after : other.judge(edited)) {
                Outcome then = after.outcome();
                boolean same = then.identity().equals(outcome.identity());
                boolean anew = then.kind() == Kind.FAIL
                        && then.level().compareTo(outcome.level()) >= 0
                        && !failing.contains(then.rule() + then.path());
                if ((same && then.kind() != Kind.PASS) || anew) {
                    return false;
                }
            }
        }
        return true;
    }

    Verdict with(Outcome other) {
        return new Verdict(run, judgement, other, broke);
    }
}
