package org.leat.check;

import org.apiguardian.api.API;
import org.leat.file.Position;

/**
 * A pack that settings ask for.
 *
 * @param name as it is asked for
 * @param at where
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record PackUse(String name, Position at) {}
