package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Cable;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Long runs in the open without surge protection. */
final class ProtectionSurgeArrester implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/surge-arrester", Level.NOTE)
            .title("long runs in the open without surge protection")
            .why(
                    "A long overhead run is an aerial for lightning kilometres away; what it picks up ends in the bridge and"
                            + " the regulator.")
            .formula("overhead run longer than the limit: surge protection at both ends")
            .judged("as built")
            .source("IEC 60364-4-44 clause 443")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("longest-without", QuantityKind.LENGTH, 50, "m", RuleCard.COMMON_PRACTICE)
            .message("no-need", "run")
            .message("protected", "run")
            .message("unprotected", "run", "length")
            .message("none")
            .message("fit")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Cable> cables = j.design().cables();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < cables.size(); i++) {
            outcomes.add(judge(j, cables.get(i), "/cables[" + i + "]"));
        }
        return outcomes.isEmpty() ? List.of(j.at("/cables").notApplicable("none")) : outcomes;
    }

    private static Outcome judge(Judgement j, Cable cable, String path) {
        Spot spot = j.at(path + "/surge-protected");
        Arg run = Runs.arg("run", cable);
        double length = Si.of(cable.length());
        if (length <= j.limit("longest-without").value() || Boolean.FALSE.equals(cable.overhead())) {
            return spot.pass("no-need", run);
        }
        if (Boolean.TRUE.equals(cable.surgeProtected())) {
            return spot.pass("protected", run);
        }
        if (cable.overhead() == null) {
            return spot.notGiven(path + "/overhead");
        }
        return cable.surgeProtected() == null
                ? spot.notGiven(spot.path())
                : spot.fail("unprotected", run, Arg.of("length", length, QuantityKind.LENGTH));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "fit", true);
    }
}
