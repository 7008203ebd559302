package org.leat.plant;

import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BatteryClamp;
import org.leat.electrics.DiodeLine;

/**
 * The electric side of a plant: alternator, bridge, cables and what holds the bus. The torque curve of the running bus is
 * sampled when first asked for and shared by all nozzle sets.
 */
final class Machine {

    private final PlantNumbers numbers;
    private final AlternatorConstants alternator;
    private final DiodeLine diode;
    private final Once<TorqueCurve> battery;

    Machine(PlantNumbers numbers) {
        this.numbers = numbers;
        AlternatorNumbers given = numbers.alternator();
        this.alternator = new AlternatorConstants(
                given.polePairs(), given.fluxLinkage(), given.phaseResistance(), given.phaseInductance());
        this.diode = new DiodeLine(
                numbers.rectifier().threshold(), numbers.rectifier().slopeResistance());
        this.battery = new Once<>(() -> curve(bus(
                numbers.battery().restingVoltage(),
                numbers.battery().internalResistance()
                        + numbers.busResistance().bridgeToRegulator()
                        + numbers.busResistance().regulatorToBattery())));
    }

    /** {@return whether the electric side of other numbers is the same} Ratings do not enter. */
    boolean sameAs(PlantNumbers other) {
        return numbers.alternator().withoutLimits().equals(other.alternator().withoutLimits())
                && numbers.rectifier().threshold() == other.rectifier().threshold()
                && numbers.rectifier().slopeResistance() == other.rectifier().slopeResistance()
                && numbers.busResistance().equals(other.busResistance())
                && numbers.battery().restingVoltage() == other.battery().restingVoltage()
                && numbers.battery().internalResistance() == other.battery().internalResistance();
    }

    /** {@return torque against speed while the battery clamps the bus} */
    TorqueCurve onBattery() {
        return battery.get();
    }

    /** {@return a bus of a voltage behind a resistance} */
    BatteryClamp bus(double voltage, double resistance) {
        return new BatteryClamp(alternator, numbers.busResistance().phase(), diode, voltage, resistance);
    }

    TorqueCurve curve(BatteryClamp bus) {
        return new TorqueCurve(bus, numbers.alternator());
    }
}
