package org.leat.pack.dump;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.DumpLoad;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;

/** Heat of the dump load. */
final class Heat {

    static final Rule RULE = Rule.of("dump/heat", WARNING, "heat of the dump load")
            .warningsHurt()
            .why(
                    "With the battery full all the stream's power becomes heat in one place, day and night. Bare elements glow;"
                            + " what hangs near them burns.")
            .formula("guarded against touch and vented, as stated")
            .judged("battery full, the nozzle set that gives most")
            .source("IEC 60364-4-42 clause 422 (heat of equipment)")
            .source(COMMON_PRACTICE)
            .passes("guarded", "Up to {power} of heat, guarded and vented.")
            .fails("bare", "Up to {power} of heat day and night, not guarded or not vented.")
            .notApplicable("none", DumpLoads.NONE)
            .judge(DumpLoads.judge(Heat::judge))
            .wayOut("guard", "A cage that keeps hands and straw away and lets air through.", FieldChanges.to(true))
            .build();

    private Heat() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        BatteryFull most = Worst.most(j.solved().batteryFull(), BatteryFull::turbinePower);
        return j.at("/dump-load/guarded-and-vented")
                .during(most)
                .with("power", most.turbinePower(), POWER)
                .isSo(dump.guardedAndVented());
    }
}
