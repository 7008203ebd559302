/**
 * The plant as one machine: {@link org.leat.plant.Plant} turns a design into SI numbers with every default written down
 * ({@code derive}, {@code numbers}), and solves it ({@code solve}, {@code solved}) in each situation that matters
 * ({@code cases}). Uses the design, the catalogue and the laws of water, runner and electricity; knows no file.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.plant;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
