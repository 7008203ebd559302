package org.leat.pack;

import java.util.List;
import java.util.Objects;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.DumpLoad;
import org.leat.plant.cases.BatteryFull;
import org.leat.quantity.QuantityKind;

/** Heat of the dump load. */
final class DumpHeat implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("dump/heat", Level.WARNING)
            .title("heat of the dump load")
            .why(
                    "With the battery full all the stream's power becomes heat in one place, day and night. Bare elements glow;"
                            + " what hangs near them burns.")
            .formula("guarded against touch and vented, as stated")
            .judged("battery full, the nozzle set that gives most")
            .source("IEC 60364-4-42 clause 422 (heat of equipment)")
            .source(RuleCard.COMMON_PRACTICE)
            .message("guarded", "power")
            .message("bare", "power")
            .message("none")
            .message("guard")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> without = Dumped.without(j, "none");
        if (without != null) {
            return without;
        }
        DumpLoad dump = Objects.requireNonNull(j.design().dumpLoad());
        BatteryFull most = Worst.most(j.cases().batteryFull(), BatteryFull::turbinePower);
        return List.of(Stated.so(
                j.at("/dump-load/guarded-and-vented").during(most.id()),
                dump.guardedAndVented(),
                "guarded",
                "bare",
                Arg.of("power", most.turbinePower(), QuantityKind.POWER)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "guard", true);
    }
}
