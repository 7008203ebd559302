package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.leat.design.Place;

/**
 * One run, in SI.
 *
 * @param index place in the design's list of cables, from zero
 * @param from where it begins
 * @param to where it ends
 * @param length one way, m
 * @param coreResistance of one core at its working temperature, parallel cores counted, Ω
 * @param conductorTemperature at which that holds, K
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record CableNumbers(
        int index, Place from, Place to, double length, double coreResistance, double conductorTemperature)
        implements CableNumbersBuilder.With {

    /** {@return resistance there and back, Ω} */
    public double loopResistance() {
        return 2 * coreResistance;
    }

    /** {@return the path of the cable in the design} */
    public String path() {
        return "/cables[" + index + "]";
    }

    /** {@return whether the run begins or ends at a part} */
    public boolean joins(Place place) {
        return from == place || to == place;
    }

    /** {@return whether the run joins two parts, either way round} */
    public boolean joins(Place one, Place other) {
        return (from == one && to == other) || (from == other && to == one);
    }
}
