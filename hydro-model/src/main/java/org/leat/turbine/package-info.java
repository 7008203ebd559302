/**
 * Jet and runner: torque, efficiency and runaway of impulse runners, their geometry, and what keeps them together: bucket
 * root, rim, disc, hub bolts, shaft and bearings, in metal and in printed plastic. One law per small class on plain
 * doubles in SI. Uses {@code org.leat.law} only.
 */
@NullMarked
package org.leat.turbine;

import org.jspecify.annotations.NullMarked;
