package org.leat.quantity;

import javax.measure.Quantity;

/** Temperature difference per heat flow; SI unit kelvin per watt. */
public interface ThermalResistance extends Quantity<ThermalResistance> {}
