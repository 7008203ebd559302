package org.leat.check;

/**
 * A way out that takes a failure away and brings another as bad: no way out, but worth knowing where there is no other.
 *
 * @param way what was tried
 * @param brings the rule that fails then
 */
public record RejectedChange(WayOut way, String brings) {}
