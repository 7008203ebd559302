package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Safeguards;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.FieldChanges;
import org.leat.plant.cases.TouchVoltage;

/** Earthing of frame and of one pole. */
final class Earthing {

    static final Rule RULE = Rule.of("protection/earthing", WARNING, "earthing of frame and of one pole")
            .canFailAs(ERROR)
            .warningsHurt()
            .why(
                    "A frame that is not bonded can become live unseen. Whether a pole is earthed, and where, is settled by"
                            + " the local code; two earthed points make a current path through the ground.")
            .formula("frame bonded, an error above extra-low voltage; one pole earthed at one point, or knowingly none")
            .judged(
                    "as built; the highest lasting bus voltage and the voltage between the alternator's leads, of any case")
            .source("IEC 60364-5-54 and IEC 60364-4-41, 411.3.1 (from memory); the local code goes before")
            .limit("extra-low", VOLTAGE, 120, "V", "IEC 60364-4-41 cl. 414", LOWER)
            .limit("extra-low-alternating", VOLTAGE, 50, "V", "IEC 60364-4-41 cl. 414", LOWER)
            .passes("frame-bonded", "Frame and penstock are bonded to earth.")
            .fails("frame-not-bonded", "Frame and penstock are not bonded to earth.")
            .fails(
                    "live-frame",
                    "Frame and penstock are not bonded to earth, and the plant is above extra-low voltage: the bus reaches"
                            + " {direct}, the alternator's leads {alternating} rms.")
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
        Safeguards safeguards = DesignParts.safeguards(j);
        boolean pole = safeguards.poleEarthed() != null;
        return j.all(
                () -> frame(j, safeguards.frameEarthed()),
                () -> j.at("/safeguards/pole-earthed").says(pole ? "pole-stated" : "not-stated"));
    }

    private static Outcome frame(Judgement j, @Nullable Boolean earthed) {
        Spot spot = j.at("/safeguards/frame-earthed");
        if (!j.plant().unsolvable().isEmpty()) {
            // what the plant reaches is not known; that the frame is not bonded is
            return spot.as(ERROR).isSo(earthed);
        }
        TouchVoltage highest = j.solved().touchVoltage();
        boolean above = highest.direct() > j.limit("extra-low").value()
                || highest.alternating() > j.limit("extra-low-alternating").value();
        return above
                ? spot.as(ERROR)
                        .saying("frame-bonded", "live-frame")
                        .with("direct", highest.direct(), VOLTAGE)
                        .with("alternating", highest.alternating(), VOLTAGE)
                        .isSo(earthed)
                : spot.isSo(earthed);
    }
}
