package org.leat.quantity;

import javax.measure.Quantity;

/** Electric conductivity of water; SI unit siemens per metre. */
public interface Conductivity extends Quantity<Conductivity> {}
