package org.leat.check;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.leat.quantity.QuantityKind;

/** Rules made up for tests, in packs of their own. */
record MadeRule(RuleCard card, Function<Judgement, List<Outcome>> judging) implements Rule {

    static MadeRule of(String id, Level level, Level worst, Function<Judgement, List<Outcome>> judging) {
        return new MadeRule(card(id, level, worst).build(), judging);
    }

    static RuleCardBuilder card(String id, Level level, Level worst) {
        return RuleCard.of(id, level)
                .canFailAs(worst)
                .title("t")
                .why("w")
                .formula("f")
                .judged("j")
                .source(RuleCard.COMMON_PRACTICE)
                .limit("most", QuantityKind.LENGTH, 9, "mm", RuleCard.COMMON_PRACTICE)
                .message("yes")
                .message("no");
    }

    @Override
    public List<Outcome> judge(Judgement judgement) {
        return judging.apply(judgement);
    }

    static RulePack pack(Rule... rules) {
        return new RulePack() {
            @Override
            public String name() {
                return "made";
            }

            @Override
            public List<Rule> rules() {
                return List.of(rules);
            }

            @Override
            public Map<String, String> texts() {
                return Map.of();
            }
        };
    }
}
