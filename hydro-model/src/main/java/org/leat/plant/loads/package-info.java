/**
 * The numbers of what stands outside the solved machine, in SI: loads, inverter, protective devices. For the rules of this
 * project.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.plant.loads;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
