package org.leat.check;

import org.apiguardian.api.API;

/**
 * An assumption that a verdict rests on: at one end of its range the verdict is another.
 *
 * @param field path of the field that would settle it
 * @param atLow what comes of judging with the least value
 * @param atHigh what comes of judging with the greatest value
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record SensitiveVerdict(String field, Kind atLow, Kind atHigh) {}
