package org.leat.check;

/**
 * A rule switched off by settings, or on again by nearer ones.
 *
 * @param off whether it does not run
 * @param grounds who says so and why
 */
public record Switch(boolean off, Grounds grounds) {}
