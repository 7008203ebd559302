package org.leat.plant.cases;

import org.apiguardian.api.API;

/** The plant solved in one situation that matters. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public sealed interface Situation permits BusSituation, Shut, Closing, LeadsShorted {

    /** {@return what to call the situation, the same from run to run: {@code running/10 mm}, {@code shut}} */
    String id();
}
