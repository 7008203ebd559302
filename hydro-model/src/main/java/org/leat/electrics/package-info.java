/**
 * From the shaft to the wall socket: alternator, diode bridge, cables, regulator, dump load, battery, inverter. One law,
 * one class, plain doubles in SI units; nothing here knows of design files. Uses {@code org.leat.law} and the JDK.
 *
 * <p>Conventions: EMF is the phase value of the equivalent star, peak; phase resistance and inductance are half of what is
 * measured between two leads, whatever the real connection; phase current is rms; d.c. values are means over a period.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@NullMarked
package org.leat.electrics;

import org.apiguardian.api.API;
import org.jspecify.annotations.NullMarked;
