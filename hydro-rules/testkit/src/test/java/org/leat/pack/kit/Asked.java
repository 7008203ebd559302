package org.leat.pack.kit;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.RuleCard;
import org.leat.check.testing.Plants;
import org.leat.quantity.QuantityKind;

/** A rule of these tests' own, asked about base designs: what several rules share is asked without any of them. */
final class Asked {

    static final Rule RULE = Rule.of("kit/asked", WARNING, "asked of what rules share")
            .canFailAs(ERROR)
            .why("A test asks.")
            .formula("as the test says")
            .judged("as the test says")
            .source(RuleCard.COMMON_PRACTICE)
            .limits(OutsidePressure.LIMITS)
            .passes("holds", "It holds.")
            .fails("fails", "It fails.")
            .judge(j -> j.at("/").holds(true))
            .build();

    private Asked() {}

    static Judgement of(String base, String... changes) {
        return Plants.of(base, changes).judgement(RULE);
    }

    /** {@return a failure at a path: more than a limit} */
    static Outcome.Fail failure(Judgement j, String path, double value, double limit, QuantityKind kind) {
        return (Outcome.Fail) j.at(path).atMost(value, limit, kind);
    }

    static Outcome.Fail failure(Judgement j) {
        return failure(j, "/nozzles/open", 2, 1, QuantityKind.RATIO);
    }
}
