package org.leat.quantity;

import javax.measure.Quantity;
import org.apiguardian.api.API;

/** Volume of water per time; SI unit cubic metre per second. */
@API(status = API.Status.STABLE, since = "0.1")
public interface VolumeFlow extends Quantity<VolumeFlow> {}
