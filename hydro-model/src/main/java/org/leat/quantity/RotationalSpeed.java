package org.leat.quantity;

import javax.measure.Quantity;

/** Angle turned per time; SI unit radian per second. */
public interface RotationalSpeed extends Quantity<RotationalSpeed> {}
