package org.leat.quantity;

import javax.measure.Quantity;

/** Rotational speed per volt, as motors are marked; SI unit radian per second and volt. */
public interface SpeedPerVoltage extends Quantity<SpeedPerVoltage> {}
