package org.leat.check;

import org.apiguardian.api.API;

/** On which side of a limit's own value people are safer. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum Safer {
    /** A lower limit is the stricter one. */
    LOWER,
    /** A higher limit is the stricter one. */
    HIGHER,
    /** Nobody said: to move it either way is taken to be unsafe. */
    UNSAID
}
