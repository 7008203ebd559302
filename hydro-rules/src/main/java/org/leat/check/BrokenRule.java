package org.leat.check;

import java.util.Locale;

/** Stands for a rule or a whole pack that could not be used: every design is open on it, with the cause. */
final class BrokenRule {

    private BrokenRule() {}

    /**
     * {@return a rule that says why a pack's part is not there}
     *
     * @param what the part by name, turned into an id {@code pack/…}
     */
    static Rule of(String what, String cause) {
        String word =
                what.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-").replaceAll("^-+|-+$", "");
        String id = "pack/" + (word.isEmpty() ? "unnamed" : word);
        return Rule.of(id, Level.ERROR, "a part of a rule pack that could not be used")
                .why("What a pack does not judge is not safe by that.")
                .formula("none")
                .judged("whatever the design")
                .source(RuleCard.COMMON_PRACTICE)
                .judgeAll(j -> {
                    throw new PackFault(cause);
                })
                .build();
    }
}
