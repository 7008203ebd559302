package org.leat.check;

import org.jspecify.annotations.Nullable;

/**
 * One value of a design replaced by another.
 *
 * @param path the field, as in {@code /penstock/sections[run]/pipe/sdr}
 * @param value what goes there: a quantity, a number, a word, or a whole record; null takes an optional value out
 */
public record Edit(String path, @Nullable Object value) {}
