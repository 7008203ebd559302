package org.leat.plant.loads;

import java.util.OptionalDouble;
import org.leat.design.Place;
import org.leat.electrics.VoltageSag;
import org.leat.law.Answer;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.numbers.PlantNumbers;

/**
 * What feeds the inverter: the battery at its state of charge through its cables, the turbine not counted.
 *
 * @param restingVoltage of the battery, V
 * @param resistance of battery and cables, Ω
 */
public record InverterSupply(double restingVoltage, double resistance) {

    /** {@return battery and cables of a plant} */
    public static InverterSupply of(PlantNumbers numbers) {
        double resistance = numbers.battery().internalResistance();
        for (CableNumbers cable : numbers.cables()) {
            resistance += cable.joins(Place.BATTERY, Place.INVERTER) ? cable.loopResistance() : 0;
        }
        return new InverterSupply(numbers.battery().restingVoltage(), resistance);
    }

    /** {@return voltage at the inverter while it draws a power, W, in V; empty where no voltage gives that power} */
    public OptionalDouble voltageUnder(double inputPower) {
        return VoltageSag.underPower(restingVoltage, resistance, inputPower) instanceof Answer.Value volts
                ? OptionalDouble.of(volts.value())
                : OptionalDouble.empty();
    }

    /** {@return power drawn at a voltage of the inverter, V, in W; zero above the resting voltage} */
    public double powerAt(double voltage) {
        return Math.max(0, restingVoltage - voltage) / resistance * voltage;
    }
}
