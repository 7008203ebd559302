package org.leat.quantity;

import javax.measure.Quantity;

/** Turning moment; SI unit newton metre. */
public interface Torque extends Quantity<Torque> {}
