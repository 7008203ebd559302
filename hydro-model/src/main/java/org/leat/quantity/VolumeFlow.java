package org.leat.quantity;

import javax.measure.Quantity;

/** Volume of water per time; SI unit cubic metre per second. */
public interface VolumeFlow extends Quantity<VolumeFlow> {}
