/**
 * Water from the stream to the nozzle: its properties, friction, losses, discharge, surge, air and vacuum, the strength of the
 * pipe that holds it, and how a stream is gauged. One law, one small class, on plain doubles in SI. May use {@code law}
 * and Commons Math.
 */
@NullMarked
package org.leat.hydraulics;

import org.jspecify.annotations.NullMarked;
