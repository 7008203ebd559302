/**
 * From a design to the numbers of its plant. What the design does not state is taken from the catalogue or common practice
 * and written down as an assumption with its range. Uses the design, the catalogue, the laws and the numbers; solves
 * nothing.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.plant.derive;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
