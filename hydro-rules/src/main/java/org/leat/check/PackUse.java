package org.leat.check;

import org.leat.file.Position;

/**
 * A pack that settings ask for.
 *
 * @param name as it is asked for
 * @param at where
 */
public record PackUse(String name, Position at) {}
