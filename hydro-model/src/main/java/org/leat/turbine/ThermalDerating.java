package org.leat.turbine;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Strength of a plastic when warm over that at 23 degrees C: a straight line from 1 there to 0 at the heat deflection
 * temperature.
 *
 * <p>Temperatures [K]; heat deflection at 0.45 MPa (ISO 75-2 method B, ASTM D648). Below 23 degrees C the answer is 1: no
 * gain is reckoned with cold, where plastics turn brittle. At and above the deflection temperature: outside, the part does
 * not hold its shape. Source: common practice, on the safe side of short tests on amorphous plastics.
 */
public final class ThermalDerating {

    private ThermalDerating() {}

    private static final double ROOM = 296.15;

    /** {@return strength left [1], or what is outside} */
    public static Answer factor(double temperature, double deflectionTemperature) {
        Physical.positive("temperature", temperature);
        Physical.positive("deflectionTemperature", deflectionTemperature);
        if (temperature >= deflectionTemperature) {
            return Answer.outside("thermal derating", "temperature", temperature, 0, deflectionTemperature, "K");
        }
        if (temperature <= ROOM) {
            return Answer.of(1);
        }
        return Answer.of((deflectionTemperature - temperature) / (deflectionTemperature - ROOM));
    }
}
