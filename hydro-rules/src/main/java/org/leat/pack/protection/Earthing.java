package org.leat.pack.protection;

import static org.leat.check.Level.WARNING;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Safeguards;
import org.leat.pack.kit.FieldChanges;

/** Earthing of frame and of one pole. */
final class Earthing {

    static final Rule RULE = Rule.of("protection/earthing", WARNING, "earthing of frame and of one pole")
            .why(
                    "A frame that is not bonded can become live unseen. Whether a pole is earthed, and where, is settled by"
                            + " the local code; two earthed points make a current path through the ground.")
            .formula("frame bonded; one pole earthed at one point, or knowingly none")
            .judged("as built")
            .source("IEC 60364-5-54 and IEC 60364-4-41; the local code goes before")
            .passes("frame-bonded", "Frame and penstock are bonded to earth.")
            .fails("frame-not-bonded", "Frame and penstock are not bonded to earth.")
            .passes("pole-stated", "Earthing of a pole is stated; the local code settles which and where.")
            .review(
                    "not-stated",
                    "A person must look: whether one pole is earthed is not stated; the local code settles it.")
            .judgeAll(Earthing::judge)
            .wayOut(
                    "bond",
                    "Bond the frame, the penstock if of metal, and every housing to one earth.",
                    FieldChanges.to(true))
            .build();

    private Earthing() {}

    private static List<Outcome> judge(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        boolean pole = safeguards != null && safeguards.poleEarthed() != null;
        return j.all(List.of(
                () -> j.at("/safeguards/frame-earthed").isSo(safeguards == null ? null : safeguards.frameEarthed()),
                () -> j.at("/safeguards/pole-earthed").says(pole ? "pole-stated" : "not-stated")));
    }
}
