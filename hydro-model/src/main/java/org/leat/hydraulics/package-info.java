/**
 * Water from the stream to the jet: properties of water and air, gauging, screens and intakes, friction, the steady
 * penstock, surge, and the strength of the pipe that holds it. One published law to a class, on plain SI doubles;
 * temperatures of water are in degrees Celsius and are named so. Uses {@code org.leat.law} and Commons Math.
 */
@NullMarked
package org.leat.hydraulics;

import org.jspecify.annotations.NullMarked;
