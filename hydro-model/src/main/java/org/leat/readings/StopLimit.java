package org.leat.readings;

import org.apiguardian.api.API;

/**
 * A reading beyond which a start is broken off: it comes from a rule's limit, never from what is expected.
 *
 * @param what is read
 * @param most SI; above it the water is shut
 * @param rule whose limit it is, as {@code penstock/static-pressure}
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record StopLimit(ReadingKind what, double most, String rule) {}
