package org.leat.pack.alternator;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Winding;

/** Whether the three phases are alike. */
final class PhasesAlike {

    static final Rule RULE = Rule.of("alternator/phases-alike", WARNING, "whether the three phases are alike")
            .why(
                    "Phases that differ point to a shorted turn, a bad joint or a rotor out of centre. The weak phase carries"
                            + " less, the others overheat, and the machine hums.")
            .formula("largest difference of the three open-circuit voltages, and of the three resistances ≤ limit")
            .judged("as measured on the bench")
            .source(COMMON_PRACTICE)
            .limit("voltages", RATIO, 2, "%", COMMON_PRACTICE)
            .limit("resistances", RATIO, 3, "%", COMMON_PRACTICE)
            .passes("voltages-alike", "The three voltages differ by {value}.")
            .fails("voltages-differ", "The three voltages differ by {value}; good is {limit}.")
            .passes("resistances-alike", "The three resistances differ by {value}.")
            .fails("resistances-differ", "The three resistances differ by {value}; good is {limit}.")
            .judgeAll(PhasesAlike::judge)
            .advice("look", "Look for a bad joint, a shorted turn, a rotor out of centre; measure again.")
            .build();

    private PhasesAlike() {}

    private static List<Outcome> judge(Judgement j) {
        Winding winding = j.design().alternator().winding();
        Spot voltages = j.at("/alternator/winding/spread-of-voltages").saying("voltages-alike", "voltages-differ");
        Spot resistances =
                j.at("/alternator/winding/spread-of-resistances").saying("resistances-alike", "resistances-differ");
        return j.all(
                () -> voltages.atMost(voltages.si(winding.spreadOfVoltages()), j.limit("voltages")),
                () -> resistances.atMost(resistances.si(winding.spreadOfResistances()), j.limit("resistances")));
    }
}
