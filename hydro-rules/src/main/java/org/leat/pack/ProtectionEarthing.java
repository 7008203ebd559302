package org.leat.pack;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Safeguards;

/** Earthing of frame and of one pole. */
final class ProtectionEarthing implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/earthing", Level.WARNING)
            .title("earthing of frame and of one pole")
            .why(
                    "A frame that is not bonded can become live unseen. Whether a pole is earthed, and where, is settled by"
                            + " the local code; two earthed points make a current path through the ground.")
            .formula("frame bonded; one pole earthed at one point, or knowingly none")
            .judged("as built")
            .source("IEC 60364-5-54 and IEC 60364-4-41; the local code goes before")
            .message("frame-bonded")
            .message("frame-not-bonded")
            .message("pole-stated")
            .message("not-stated")
            .message("bond")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        Boolean frame = safeguards == null ? null : safeguards.frameEarthed();
        Boolean pole = safeguards == null ? null : safeguards.poleEarthed();
        Spot poleSpot = j.at("/safeguards/pole-earthed");
        return List.of(
                Stated.so(j.at("/safeguards/frame-earthed"), frame, "frame-bonded", "frame-not-bonded"),
                pole == null ? poleSpot.review("not-stated") : poleSpot.pass("pole-stated"));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Stated.otherwise(this, j, failure, "bond", true);
    }
}
