package org.leat.catalogue.rows;

import org.apiguardian.api.API;

/**
 * A size of plastic pressure pipe as its standard tables it.
 *
 * @param standard that tables it
 * @param material of the wall
 * @param sdr standard dimension ratio, as marked
 * @param nominalPressure PN at 20 °C, Pa
 * @param dimensions diameters and walls
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record PlasticPipe(
        PipeStandard standard, PipeMaterial material, double sdr, double nominalPressure, PipeDimensions dimensions) {}
