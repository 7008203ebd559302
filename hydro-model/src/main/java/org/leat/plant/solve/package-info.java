/**
 * The solvers of the coupled machine: water to the jets, the runner's torque against that of the alternator on its bus, the
 * tracking regulator, the warm winding, the waves in the pipe. Uses the numbers and the laws; knows no design. What they
 * find is in {@code solved}.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.plant.solve;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
