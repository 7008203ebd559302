package org.leat.choice;

import org.apiguardian.api.API;
import org.leat.check.Outcome;
import org.leat.check.WayOut;

/**
 * One change of the design.
 *
 * @param way what to do; a way without edits is advice, which nobody could try
 * @param of the failure whose rule words it
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Step(WayOut way, Outcome of) {

    /** {@return whether it is a change that was tried, not advice} */
    public boolean isTried() {
        return !way.edits().isEmpty();
    }
}
