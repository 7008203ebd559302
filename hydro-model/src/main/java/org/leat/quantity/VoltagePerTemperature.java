package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Voltage per kelvin, as set-point compensation; SI unit volt per kelvin. */
@API(status = API.Status.STABLE, since = "0.1")
public interface VoltagePerTemperature extends Quantity<VoltagePerTemperature> {}
