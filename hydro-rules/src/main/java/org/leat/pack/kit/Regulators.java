package org.leat.pack.kit;

import org.jspecify.annotations.Nullable;
import org.leat.check.Judgement;
import org.leat.design.ChargeRegulator;
import org.leat.design.RegulatorKind;

/** Whether there is a regulator: one of the kind "none" is none, and nothing is asked of it. */
public final class Regulators {

    /** What is said with the text {@code none}. */
    public static final String NONE = "Not judged: there is no regulator.";

    private Regulators() {}

    /** {@return the regulator; null where the design has none or says that there is none} */
    public static @Nullable ChargeRegulator by(Judgement j) {
        ChargeRegulator regulator = j.design().regulator();
        return saidToBeNone(j) ? null : regulator;
    }

    /** {@return whether the design says that there is none} */
    public static boolean saidToBeNone(Judgement j) {
        ChargeRegulator regulator = j.design().regulator();
        return regulator != null && regulator.kind() == RegulatorKind.NONE;
    }
}
