package org.leat.quantity;

import javax.measure.Quantity;

/** Share by which something changes with temperature; SI unit one per kelvin. */
public interface SharePerTemperature extends Quantity<SharePerTemperature> {}
