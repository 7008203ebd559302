package org.leat.check;

import org.apiguardian.api.API;

/**
 * A rule switched off by settings, or on again by nearer ones.
 *
 * @param off whether it does not run
 * @param grounds who says so and why
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Switch(boolean off, Grounds grounds) {}
