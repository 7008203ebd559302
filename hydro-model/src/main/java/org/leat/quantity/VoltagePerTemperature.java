package org.leat.quantity;

import javax.measure.Quantity;

/** Voltage per kelvin, as set-point compensation; SI unit volt per kelvin. */
public interface VoltagePerTemperature extends Quantity<VoltagePerTemperature> {}
