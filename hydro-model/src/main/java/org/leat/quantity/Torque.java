package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Turning moment; SI unit newton metre. */
@API(status = API.Status.STABLE, since = "0.1")
public interface Torque extends Quantity<Torque> {}
