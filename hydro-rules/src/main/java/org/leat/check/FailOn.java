package org.leat.check;

/**
 * The least level that makes a run fail.
 *
 * @param level that and worse
 * @param setBy the settings file and line, or a name
 */
public record FailOn(Level level, String setBy) {}
