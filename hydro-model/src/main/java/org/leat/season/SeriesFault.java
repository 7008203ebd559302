package org.leat.season;

import org.apiguardian.api.API;

/**
 * One thing wrong with a series of flows.
 *
 * @param line in the file, from 1 on
 * @param what is wrong, with what was found and what to write
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record SeriesFault(int line, String what) {}
