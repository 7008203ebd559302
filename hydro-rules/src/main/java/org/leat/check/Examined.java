package org.leat.check;

import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * A design that was checked, with its plant still at hand. Holds every change that was tried; let go of it when the design is
 * done.
 *
 * @param report what came of it
 * @param trial the plant as designed, for trying changes on it; null if the file could not be read as a design
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Examined(Report report, @Nullable Trial trial) {}
