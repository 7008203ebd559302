package org.leat.check;

/**
 * A limit changed by settings.
 *
 * @param value in SI
 * @param grounds who says so and why
 */
public record LimitChange(double value, Grounds grounds) {}
