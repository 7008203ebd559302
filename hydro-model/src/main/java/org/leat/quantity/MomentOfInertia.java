package org.leat.quantity;

import javax.measure.Quantity;

/** Moment of inertia; SI unit kilogram square metre. */
public interface MomentOfInertia extends Quantity<MomentOfInertia> {}
