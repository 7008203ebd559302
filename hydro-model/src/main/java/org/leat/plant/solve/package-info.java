/**
 * The coupled machine: water to the jets, the runner's torque against that of the alternator on its bus, the tracking
 * regulator, the warm winding, the waves in the pipe. Uses the numbers and the laws; knows no design.
 */
@NullMarked
package org.leat.plant.solve;

import org.jspecify.annotations.NullMarked;
