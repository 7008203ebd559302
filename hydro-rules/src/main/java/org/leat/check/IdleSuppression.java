package org.leat.check;

import org.apiguardian.api.API;

/**
 * A suppression that suppresses nothing.
 *
 * @param suppression which
 * @param why what keeps it from it
 * @param nearest the rule or place that was probably meant; "" if none is near or it does not apply
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record IdleSuppression(Suppression suppression, Why why, String nearest) {

    /** What keeps a suppression from suppressing. */
    public enum Why {
        /** The rule finds nothing there any more, or never did. */
        NOTHING_THERE,
        /** The place is the number of an item in a list, which is another item once the list is reordered. */
        NUMBER_IN_A_LIST,
        /** No pack has that rule. */
        NO_SUCH_RULE,
        /** Its last day is over. */
        ENDED,
        /** It has a last day, and nobody said which day it is. */
        DAY_NOT_KNOWN,
        /** The finding can hurt someone, and no named person says that the danger is known. */
        NOBODY_ANSWERS
    }
}
