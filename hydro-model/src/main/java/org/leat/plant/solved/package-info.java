/**
 * What comes of solving the coupled machine: the water to the jets, the operating point with its account of energy, the
 * pressures of a wave in the pipe. Uses the numbers; knows no solver.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@NullMarked
package org.leat.plant.solved;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
