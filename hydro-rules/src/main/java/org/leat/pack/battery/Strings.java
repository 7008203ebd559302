package org.leat.pack.battery;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.BatteryBank;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.FieldChanges;

/** Strings in parallel. */
final class Strings {

    static final Rule RULE = Rule.of("battery/strings", WARNING, "strings in parallel")
            .warningsHurt()
            .why(
                    "Strings in parallel never share alike: the best one works, the weakest is overcharged and, when a cell shorts, the"
                            + " others discharge into it.")
            .formula("strings in parallel ≤ limit, each with its own fuse")
            .judged("as built")
            .source(COMMON_PRACTICE)
            .limit("most", RATIO, 4, "", COMMON_PRACTICE)
            .passes("few", "The bank has {value} strings in parallel.")
            .fails("many", "The bank has {value} strings in parallel; good is {limit}.")
            .passes("each-fused", "Each string has its own fuse.")
            .fails("not-fused", "The strings have no fuse of their own: the others feed a shorted cell.")
            .notApplicable("one-string", "Not judged: there is one string.")
            .judgeAll(Strings::judge)
            .wayOut(
                    "larger-cells",
                    "Larger cells in {strings} strings.",
                    ChangesForText.only("many", Change.of("/battery/strings", 2).with("strings", 2)))
            .wayOut("fuse", "A fuse in each string.", ChangesForText.only("not-fused", FieldChanges.to(true)))
            .build();

    private Strings() {}

    private static List<Outcome> judge(Judgement j) {
        BatteryBank battery = j.design().battery();
        Spot count = j.at("/battery/strings");
        int strings = count.given(battery.strings());
        Spot fused = j.at("/battery/strings-protected").saying("each-fused", "not-fused");
        return j.all(
                () -> count.atMost(strings, j.limit("most")),
                () -> strings == 1 ? fused.says("one-string") : fused.isSo(battery.stringsProtected()));
    }
}
