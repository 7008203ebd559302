package org.leat.plant.solve;

import java.util.Objects;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BatteryClamp;
import org.leat.electrics.DiodeLine;
import org.leat.lazy.Once;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;

/**
 * The electric side of a plant: alternator, bridge, cables and what holds the bus. The torque curve of the running bus is
 * sampled when first asked for and shared by all nozzle sets.
 */
public final class ElectricSide {

    private final PlantNumbers numbers;
    private final AlternatorNumbers given;
    private final AlternatorConstants alternator;
    private final DiodeLine diode;
    private final Once<TorqueCurve> battery;

    public ElectricSide(PlantNumbers numbers) {
        this(numbers, numbers.alternator());
    }

    private ElectricSide(PlantNumbers numbers, AlternatorNumbers given) {
        this.numbers = numbers;
        this.given = given;
        this.alternator = WarmAlternator.of(given);
        this.diode = new DiodeLine(
                numbers.rectifier().threshold(), numbers.rectifier().slopeResistance());
        this.battery = new Once<>(() -> curve(onItsBattery()));
    }

    /** {@return whether the electric side of other numbers is the same} Ratings do not enter. */
    public boolean sameAs(PlantNumbers other) {
        return (Objects.equals(numbers.alternator(), other.alternator())
                        || numbers.alternator()
                                .withoutLimits()
                                .equals(other.alternator().withoutLimits()))
                && numbers.rectifier().threshold() == other.rectifier().threshold()
                && numbers.rectifier().slopeResistance() == other.rectifier().slopeResistance()
                && Objects.equals(numbers.busResistance(), other.busResistance())
                && numbers.battery().restingVoltage() == other.battery().restingVoltage()
                && numbers.battery().internalResistance() == other.battery().internalResistance();
    }

    /** {@return torque against speed while the battery clamps the bus} */
    TorqueCurve onBattery() {
        return battery.get();
    }

    /** {@return the bus that the battery clamps} */
    @SuppressWarnings("exports") // a law's own type: for the rules of this project
    public BatteryClamp onItsBattery() {
        return bus(
                numbers.battery().restingVoltage(),
                numbers.battery().internalResistance()
                        + numbers.busResistance().bridgeToRegulator()
                        + numbers.busResistance().regulatorToBattery());
    }

    /** {@return a bus of a voltage behind a resistance} */
    public BatteryClamp bus(double voltage, double resistance) {
        return new BatteryClamp(alternator, numbers.busResistance().phase(), diode, voltage, resistance);
    }

    public TorqueCurve curve(BatteryClamp bus) {
        return new TorqueCurve(bus, given);
    }

    /** {@return the same machine with its winding at another temperature, K} */
    public ElectricSide warmedTo(double kelvin) {
        return new ElectricSide(numbers, given.warmedTo(kelvin));
    }

    /** {@return peak voltage between two leads, nothing connected, V} Speed of the alternator in rad/s. */
    double linePeak(double alternatorSpeed) {
        return alternator.linePeak(alternatorSpeed);
    }

    /** {@return iron and friction torque at a speed of the alternator (rad/s), N·m} */
    public double noLoadTorque(double alternatorSpeed) {
        return given.noLoad().at(alternatorSpeed);
    }
}
