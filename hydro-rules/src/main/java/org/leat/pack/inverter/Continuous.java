package org.leat.pack.inverter;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;

import javax.measure.quantity.Power;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Inverters;
import org.leat.quantity.Si;

/** Everything at once against the inverter's continuous power. */
final class Continuous {

    static final Rule RULE = Rule.of(
                    "inverter/continuous", WARNING, "everything at once against the inverter's continuous power")
            .canFailAs(ERROR)
            .hurtsNobody()
            .why(
                    "An inverter that is overloaded shuts off, usually in the dark. One load alone that is more than it can give can"
                            + " never run.")
            .formula("sum of all loads on alternating current ≤ continuous power; an error where one alone exceeds it")
            .judged("all loads at once")
            .source(COMMON_PRACTICE)
            .passes("enough", "All loads at once take {value}.")
            .fails("too-little", "All loads at once take {value}; the inverter gives {limit}.")
            .fails("one-too-large", "{load} alone takes {value}; the inverter gives {limit}.")
            .notApplicable("none", Inverters.NONE)
            .judge(Inverters.judge("/inverter/continuous-power", Continuous::judge))
            .leastWayOut(
                    "larger",
                    "An inverter of {rating}.",
                    FieldChanges.raised("W", Power.class, 300, 500, 800, 1000, 1500, 2000, 3000, 5000, 8000, 10_000))
            .build();

    private Continuous() {}

    private static Outcome judge(Judgement j, Inverter inverter, Spot spot) {
        double rating = spot.si(inverter.continuousPower());
        if (j.design().loads().isEmpty()) {
            return spot.notGiven("/loads");
        }
        for (Load load : Inverters.loads(j)) {
            double alone = Si.of(load.power());
            if (alone > rating) {
                return spot.as(ERROR)
                        .saying("enough", "one-too-large")
                        .with("load", load.name())
                        .atMost(alone, rating, POWER);
            }
        }
        return spot.atMost(Inverters.together(j), rating, POWER);
    }
}
