package org.leat.check;

import org.apiguardian.api.API;

/**
 * What a baseline knows of a design and is found no more.
 *
 * @param identity rule, element and case
 * @param kind what had come of it
 * @param level how much it mattered
 * @param text what was said then
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record AbsentFinding(Identity identity, Kind kind, Level level, String text) {}
