package org.leat.pack;

import org.leat.check.Judgement;

/** Whether a battery is of lead. */
final class Lead {

    private Lead() {}

    static boolean is(Judgement j) {
        return switch (j.design().battery().chemistry()) {
            case FLOODED_LEAD_ACID, AGM_LEAD_ACID, GEL_LEAD_ACID -> true;
            case LITHIUM_IRON_PHOSPHATE, LITHIUM_ION -> false;
        };
    }
}
