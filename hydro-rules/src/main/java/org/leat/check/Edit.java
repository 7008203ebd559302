package org.leat.check;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * One value of a design replaced by another.
 *
 * @param path the field, as in {@code /penstock/sections[run]/pipe/sdr}
 * @param value what goes there: a quantity, a number, a word, or a whole record; null takes an optional value out
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Edit(String path, @Nullable Object value) {}
