package org.leat.check;

import org.apiguardian.api.API;

/**
 * The least level that makes a run fail.
 *
 * @param level that and worse
 * @param setBy the settings file and line, or a name
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record FailOn(Level level, String setBy) {}
