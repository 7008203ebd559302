package org.leat.check;

import org.apiguardian.api.API;

/** A few words that several texts share, mostly constants of an enum. Meant to be implemented. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public interface Worded {

    /** {@return what machines know it by, as in {@code cause.runaway}; never changes} */
    String key();

    /** {@return what people read; no placeholders} */
    String text();
}
