package org.leat.check.testing;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.RulePack;
import org.leat.check.WayOut;

/** A pack of one rule, {@code made/rule}, that does what a test wants of it. */
record MadePack(Function<Judgement, List<Outcome>> judging, Function<Judgement, List<WayOut>> offering)
        implements RulePack, Rule {

    static final String RULE = "made/rule";

    static MadePack of(Function<Judgement, List<Outcome>> judging) {
        return new MadePack(judging, judgement -> List.of());
    }

    @Override
    public String name() {
        return "made";
    }

    @Override
    public List<Rule> rules() {
        return List.of(this);
    }

    @Override
    public Map<String, String> texts() {
        return Map.of(RULE + ".fine", "All is fine.", RULE + ".wrong", "Something is wrong.", RULE + ".do", "Do it.");
    }

    @Override
    public RuleCard card() {
        return RuleCard.of(RULE, Level.WARNING)
                .title("what a test wants")
                .why("For tests.")
                .formula("none")
                .judged("whatever it is given")
                .source("common practice")
                .message("fine")
                .message("wrong")
                .message("do")
                .build();
    }

    @Override
    public List<Outcome> judge(Judgement judgement) {
        return judging.apply(judgement);
    }

    @Override
    public List<WayOut> waysOut(Judgement judgement, Outcome failure) {
        return offering.apply(judgement);
    }
}
