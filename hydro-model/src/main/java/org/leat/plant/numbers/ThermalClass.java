package org.leat.plant.numbers;

import org.leat.design.InsulationClass;
import org.leat.quantity.Celsius;

/** Thermal classes of windings, IEC 60085. */
public final class ThermalClass {

    private ThermalClass() {}

    /** {@return the highest temperature that a class stands for long, K} */
    public static double highestTemperature(InsulationClass insulation) {
        return Celsius.toKelvin(
                switch (insulation) {
                    case A -> 105;
                    case E -> 120;
                    case B -> 130;
                    case F -> 155;
                    case H -> 180;
                });
    }
}
