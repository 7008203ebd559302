package org.leat.check;

import org.apiguardian.api.API;

/**
 * A way out that takes a failure away and brings another as bad: no way out, but worth knowing where there is no other.
 *
 * @param way what was tried
 * @param brings the rule that fails then
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record RejectedChange(WayOut way, String brings) {}
