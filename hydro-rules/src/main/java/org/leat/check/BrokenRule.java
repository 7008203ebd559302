package org.leat.check;

import java.util.List;
import java.util.Locale;

/** Stands for a rule or a whole pack that could not be used: every design is open on it, with the cause. */
record BrokenRule(RuleCard card, String cause) implements Rule {

    /**
     * {@return a rule that says why a pack's part is not there}
     *
     * @param what the part by name, turned into an id {@code pack/…}
     */
    static BrokenRule of(String what, String cause) {
        String word =
                what.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        RuleCard card = RuleCard.of("pack/" + (word.isEmpty() ? "unnamed" : word), Level.ERROR)
                .title("a part of a rule pack that could not be used")
                .why("What a pack does not judge is not safe by that.")
                .formula("none")
                .judged("whatever the design")
                .source(RuleCard.COMMON_PRACTICE)
                .build();
        return new BrokenRule(card, cause);
    }

    @Override
    public List<Outcome> judge(Judgement judgement) {
        throw new PackFault(cause);
    }
}
