package org.leat.check;

import org.apiguardian.api.API;

/**
 * A limit changed by settings.
 *
 * @param value in SI
 * @param grounds who says so and why
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record LimitChange(double value, Grounds grounds) {}
