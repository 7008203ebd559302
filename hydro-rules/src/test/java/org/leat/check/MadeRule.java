package org.leat.check;

import java.util.List;
import java.util.function.Function;
import org.leat.quantity.QuantityKind;

/** Rules made up for tests, in packs of their own. */
final class MadeRule {

    private MadeRule() {}

    static Rule of(String id, Level level, Level worst, Function<Judgement, List<Outcome>> judging) {
        return card(id, level, worst).judgeAll(judging).build();
    }

    static Rule of(String id, Function<Judgement, List<Outcome>> judging) {
        return of(id, Level.WARNING, Level.WARNING, judging);
    }

    static RuleBuilder card(String id, Level level, Level worst) {
        return Rule.of(id, level, "t")
                .canFailAs(worst)
                .why("w")
                .formula("f")
                .judged("j")
                .source(RuleCard.COMMON_PRACTICE)
                .limit("most", QuantityKind.LENGTH, 9, "mm", RuleCard.COMMON_PRACTICE)
                .passes("yes", "Yes.")
                .fails("no", "No.");
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
        };
    }
}
