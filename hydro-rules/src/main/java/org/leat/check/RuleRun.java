package org.leat.check;

import java.util.ArrayList;
import java.util.List;
import org.leat.design.ElementPath;
import org.leat.plant.Plant;
import org.leat.plant.numbers.Amount;

/** A rule as a checker runs it: whatever the rule does, the run gives answers. */
record RuleRun(Rule rule, RuleInForce inForce) {

    /** {@return whether a failure of the rule can be as bad as that} */
    boolean canFailAs(Level level) {
        return inForce.inForce(inForce.card().worst()).compareTo(level) >= 0;
    }

    /** {@return the rule's verdicts on a plant; none if it is off} */
    List<Verdict> judge(Trials trials) {
        if (inForce.off() != null) {
            return List.of();
        }
        Plant plant = trials.plant();
        Judgement judgement = new Judgement(inForce, trials);
        List<Outcome> outcomes;
        try {
            outcomes = rule.judge(judgement);
        } catch (RuntimeException | StackOverflowError | LinkageError e) {
            if (!plant.unsolvable().isEmpty() && !PackFault.whateverThePlant(e)) {
                return List.of(unsolved(judgement, plant));
            }
            return List.of(broken(judgement, e));
        }
        if (outcomes.isEmpty()) {
            return List.of(plant.unsolvable().isEmpty() ? silent(judgement) : unsolved(judgement, plant));
        }
        List<Verdict> verdicts = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            verdicts.add(new Verdict(this, judgement, outcome, false));
        }
        return verdicts;
    }

    private Verdict unsolved(Judgement judgement, Plant plant) {
        Amount.Unknown first = plant.unsolvable().get(0);
        return new Verdict(this, judgement, judgement.at(ElementPath.ROOT).unknown(first), false);
    }

    private Verdict broken(Judgement judgement, Throwable e) {
        String cause = PackFault.cause(e);
        Outcome open = judgement
                .at(ElementPath.ROOT)
                .open((String) null, Message.of(CommonMessages.RULE_BROKE, Arg.of("cause", cause)));
        return new Verdict(this, judgement, open, true);
    }

    private Verdict silent(Judgement judgement) {
        Outcome open = judgement.at(ElementPath.ROOT).open((String) null, Message.of(CommonMessages.RULE_SILENT));
        return new Verdict(this, judgement, open, true);
    }
}
