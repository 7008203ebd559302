/**
 * Jet and runner: torque, efficiency and runaway of impulse runners, their geometry, and what keeps them together: bucket
 * root, rim, disc, hub bolts, shaft and bearings, in metal and in printed plastic. One law per small class on plain
 * doubles in SI. Uses {@code org.leat.law} only.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.turbine;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
