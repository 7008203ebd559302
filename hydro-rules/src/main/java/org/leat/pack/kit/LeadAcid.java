package org.leat.pack.kit;

import org.leat.check.Judgement;

/** Whether a battery is of lead. */
public final class LeadAcid {

    private LeadAcid() {}

    public static boolean is(Judgement j) {
        return j.numbers().battery().isLead();
    }
}
