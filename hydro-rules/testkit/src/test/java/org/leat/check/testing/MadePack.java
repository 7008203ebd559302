package org.leat.check.testing;

import java.util.List;
import java.util.function.Function;
import org.leat.check.Change.Changes;
import org.leat.check.Judgement;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleBuilder;
import org.leat.check.RulePack;

/** A pack of rules that do what a test wants of them, {@code made/rule} the first. */
record MadePack(List<Rule> rules) implements RulePack {

    static final String RULE = "made/rule";

    static MadePack of(Function<Judgement, List<Outcome>> judging) {
        return new MadePack(List.of(rule(RULE, judging).build()));
    }

    /** A rule with a way out, and another that fails where there are 16 cells. */
    static MadePack of(Function<Judgement, List<Outcome>> judging, Changes changes) {
        Rule one = rule(RULE, judging).wayOut("do", "Do it.", changes).build();
        Rule other = rule(
                        "made/other",
                        j -> List.of(j.at("/battery").holds(j.design().battery().cellsInSeries() != 16)))
                .build();
        return new MadePack(List.of(one, other));
    }

    private static RuleBuilder rule(String id, Function<Judgement, List<Outcome>> judging) {
        return Rule.of(id, Level.WARNING, "what a test wants")
                .why("For tests.")
                .formula("none")
                .judged("whatever it is given")
                .source("common practice")
                .passes("fine", "All is fine.")
                .fails("wrong", "Something is wrong.")
                .review("look", "Look at it.")
                .tells("say", "It is so.")
                .notApplicable("none", "There is none.")
                .judgeAll(judging);
    }

    @Override
    public String name() {
        return "made";
    }
}
