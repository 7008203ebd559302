package org.leat.pack.kit;

import org.leat.check.Judgement;

/** Whether a battery is of lead. */
public final class Lead {

    private Lead() {}

    public static boolean is(Judgement j) {
        return switch (j.design().battery().chemistry()) {
            case FLOODED_LEAD_ACID, AGM_LEAD_ACID, GEL_LEAD_ACID -> true;
            case LITHIUM_IRON_PHOSPHATE, LITHIUM_ION -> false;
        };
    }
}
