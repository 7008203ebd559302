/**
 * Water from the stream to the jet: properties of water and air, gauging, screens and intakes, friction, the steady
 * penstock, surge, and the strength of the pipe that holds it. One published law to a class, on plain SI doubles;
 * temperatures of water are in degrees Celsius and are named so. Uses {@code org.leat.law} and Commons Math.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.hydraulics;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
