package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Rotational speed per volt, as motors are marked; SI unit radian per second and volt. */
@API(status = API.Status.STABLE, since = "0.1")
public interface SpeedPerVoltage extends Quantity<SpeedPerVoltage> {}
