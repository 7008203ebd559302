package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** A difference of temperatures, never a temperature; SI unit kelvin. */
@API(status = API.Status.STABLE, since = "0.1")
public interface TemperatureDifference extends Quantity<TemperatureDifference> {}
