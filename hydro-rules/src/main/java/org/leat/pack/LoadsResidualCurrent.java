package org.leat.pack;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Inverter;

/** A residual-current device on the alternating side. */
final class LoadsResidualCurrent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("loads/residual-current", Level.WARNING)
            .title("a residual-current device on the alternating side")
            .why(
                    "An inverter makes mains voltage out of a battery that is harmless to touch. Without a residual-current device a"
                            + " damaged cord in a wet place kills as at any socket.")
            .formula("stated, with the neutral treated as the device needs it")
            .judged("as built")
            .source("IEC 60364-4-41 clause 411.3.3; the local code goes before")
            .message("fitted")
            .message("not-fitted")
            .message("none")
            .message("fit")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Inverter inverter = j.design().inverter();
        String path = "/inverter/residual-current-device";
        return List.of(
                inverter == null
                        ? Inverters.missing(j, path, "none")
                        : Stated.so(j.at(path), inverter.residualCurrentDevice(), "fitted", "not-fitted"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "fit", true);
    }
}
