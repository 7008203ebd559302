package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Share by which something changes with temperature; SI unit one per kelvin. */
@API(status = API.Status.STABLE, since = "0.1")
public interface SharePerTemperature extends Quantity<SharePerTemperature> {}
