package org.leat.pack.protection;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Cable;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Runs;
import org.leat.quantity.Si;

/** Long runs in the open without surge protection. */
final class SurgeArrester {

    static final Rule RULE = Rule.of(
                    "protection/surge-arrester", NOTE, "long runs in the open without surge protection")
            .why(
                    "A long overhead run is an aerial for lightning kilometres away; what it picks up ends in the bridge and"
                            + " the regulator.")
            .formula("overhead run longer than the limit: surge protection at both ends")
            .judged("as built")
            .source("IEC 60364-4-44 clause 443")
            .source(COMMON_PRACTICE)
            .limit("longest-without", LENGTH, 50, "m", COMMON_PRACTICE)
            .passes("no-need", "The run {run} is short or not in the open.")
            .passes("protected", "The run {run} has surge protection at both ends.")
            .fails("unprotected", "The run {run} hangs {length} in the open without surge protection.")
            .notApplicable("none", "Not judged: no run is stated.")
            .judgeAll(SurgeArrester::judge)
            .wayOut("fit", "Surge protection at both ends, earthed at one point each.", FieldChanges.to(true))
            .build();

    private SurgeArrester() {}

    private static List<Outcome> judge(Judgement j) {
        List<Cable> cables = j.design().cables();
        return cables.isEmpty()
                ? List.of(j.at("/cables").says("none"))
                : j.eachOf(cables.size(), i -> judge(j, cables.get(i), "/cables[" + i + "]"));
    }

    private static Outcome judge(Judgement j, Cable cable, String path) {
        double length = Si.of(cable.length());
        Spot spot = j.at(path + "/surge-protected").with(Runs.arg("run", cable));
        if (length <= j.limit("longest-without").value() || Boolean.FALSE.equals(cable.overhead())) {
            return spot.says("no-need");
        }
        if (Boolean.TRUE.equals(cable.surgeProtected())) {
            return spot.says("protected");
        }
        spot.given(path + "/overhead", cable.overhead());
        spot.given(cable.surgeProtected());
        return spot.with("length", length, LENGTH).says("unprotected");
    }
}
