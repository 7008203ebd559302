package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Angle turned per time; SI unit radian per second. */
@API(status = API.Status.STABLE, since = "0.1")
public interface RotationalSpeed extends Quantity<RotationalSpeed> {}
