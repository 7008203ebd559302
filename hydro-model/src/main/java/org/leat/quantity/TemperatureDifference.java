package org.leat.quantity;

import javax.measure.Quantity;

/** A difference of temperatures, never a temperature; SI unit kelvin. */
public interface TemperatureDifference extends Quantity<TemperatureDifference> {}
