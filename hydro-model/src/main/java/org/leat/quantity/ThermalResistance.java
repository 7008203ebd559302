package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Temperature difference per heat flow; SI unit kelvin per watt. */
@API(status = API.Status.STABLE, since = "0.1")
public interface ThermalResistance extends Quantity<ThermalResistance> {}
