package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Electric conductivity of water; SI unit siemens per metre. */
@API(status = API.Status.STABLE, since = "0.1")
public interface Conductivity extends Quantity<Conductivity> {}
