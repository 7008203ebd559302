package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Moment of inertia; SI unit kilogram square metre. */
@API(status = API.Status.STABLE, since = "0.1")
public interface MomentOfInertia extends Quantity<MomentOfInertia> {}
