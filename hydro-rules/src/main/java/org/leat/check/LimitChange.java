package org.leat.check;

/**
 * A limit changed by settings.
 *
 * @param value in SI
 * @param by who changed it: the settings file and line, or a name
 * @param reason why
 */
public record LimitChange(double value, String by, String reason) {}
