package org.leat.quantity;

import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCapacitance;
import javax.measure.quantity.ElectricCharge;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricInductance;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Energy;
import javax.measure.quantity.Force;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Power;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Speed;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.apiguardian.api.API;

/**
 * Short names for quantities in code, one for each unit that a design file may use, so that a plant built in code reads
 * like its file: {@code mm(11)}, {@code rpm(1000)}, {@code exactly(volts(23))}. Meant to be imported statically.
 *
 * <p>All throw {@link IllegalArgumentException} for a value that is not finite.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class Quantities {

    private Quantities() {}

    /** {@return a value without a stated tolerance} */
    public static <Q extends Quantity<Q>> Measured<Q> exactly(Quantity<Q> value) {
        return Measured.exactly(value);
    }

    /**
     * {@return a value with its tolerance}
     *
     * @param plusMinus how far the true value may lie either way; of a temperature {@link #kelvinsApart}
     */
    public static <Q extends Quantity<Q>> Measured<Q> plusMinus(Quantity<Q> value, Quantity<?> plusMinus) {
        return new Measured<>(value, plusMinus);
    }

    /**
     * {@return the area of a wire of American wire gauge: 0.127 mm · 92^((36 − n)/39) across (ASTM B258)}
     *
     * @param gauge n from −3, which is 4/0, to 40
     */
    public static Quantity<Area> wireGauge(int gauge) {
        if (gauge < -3 || gauge > 40) {
            throw new IllegalArgumentException("no wire gauge: " + gauge);
        }
        return QuantityText.wireGauge(gauge);
    }

    /** {@return metres} */
    public static Quantity<Length> m(double value) {
        return Si.quantity(value, "m", Length.class);
    }

    /** {@return millimetres} */
    public static Quantity<Length> mm(double value) {
        return Si.quantity(value, "mm", Length.class);
    }

    /** {@return centimetres} */
    public static Quantity<Length> cm(double value) {
        return Si.quantity(value, "cm", Length.class);
    }

    /** {@return kilometres} */
    public static Quantity<Length> km(double value) {
        return Si.quantity(value, "km", Length.class);
    }

    /** {@return micrometres} */
    public static Quantity<Length> micrometres(double value) {
        return Si.quantity(value, "um", Length.class);
    }

    /** {@return inches of 25.4 mm} */
    public static Quantity<Length> inches(double value) {
        return Si.quantity(value, "in", Length.class);
    }

    /** {@return feet of 304.8 mm} */
    public static Quantity<Length> feet(double value) {
        return Si.quantity(value, "ft", Length.class);
    }

    /** {@return square metres} */
    public static Quantity<Area> squareMetres(double value) {
        return Si.quantity(value, "m2", Area.class);
    }

    /** {@return square millimetres} */
    public static Quantity<Area> squareMillimetres(double value) {
        return Si.quantity(value, "mm2", Area.class);
    }

    /** {@return square centimetres} */
    public static Quantity<Area> squareCentimetres(double value) {
        return Si.quantity(value, "cm2", Area.class);
    }

    /** {@return cubic metres} */
    public static Quantity<Volume> cubicMetres(double value) {
        return Si.quantity(value, "m3", Volume.class);
    }

    /** {@return litres} */
    public static Quantity<Volume> litres(double value) {
        return Si.quantity(value, "L", Volume.class);
    }

    /** {@return cubic metres per second} */
    public static Quantity<VolumeFlow> cubicMetresPerSecond(double value) {
        return Si.quantity(value, "m3/s", VolumeFlow.class);
    }

    /** {@return litres per second} */
    public static Quantity<VolumeFlow> litresPerSecond(double value) {
        return Si.quantity(value, "L/s", VolumeFlow.class);
    }

    /** {@return litres per minute} */
    public static Quantity<VolumeFlow> litresPerMinute(double value) {
        return Si.quantity(value, "L/min", VolumeFlow.class);
    }

    /** {@return cubic metres per hour} */
    public static Quantity<VolumeFlow> cubicMetresPerHour(double value) {
        return Si.quantity(value, "m3/h", VolumeFlow.class);
    }

    /** {@return US gallons per minute} */
    public static Quantity<VolumeFlow> gallonsPerMinute(double value) {
        return Si.quantity(value, "gal/min", VolumeFlow.class);
    }

    /** {@return metres per second} */
    public static Quantity<Speed> metresPerSecond(double value) {
        return Si.quantity(value, "m/s", Speed.class);
    }

    /** {@return pascals} */
    public static Quantity<Pressure> pascals(double value) {
        return Si.quantity(value, "Pa", Pressure.class);
    }

    /** {@return bar} */
    public static Quantity<Pressure> bar(double value) {
        return Si.quantity(value, "bar", Pressure.class);
    }

    /** {@return millibar} */
    public static Quantity<Pressure> millibar(double value) {
        return Si.quantity(value, "mbar", Pressure.class);
    }

    /** {@return kilopascals} */
    public static Quantity<Pressure> kilopascals(double value) {
        return Si.quantity(value, "kPa", Pressure.class);
    }

    /** {@return megapascals} */
    public static Quantity<Pressure> megapascals(double value) {
        return Si.quantity(value, "MPa", Pressure.class);
    }

    /** {@return gigapascals} */
    public static Quantity<Pressure> gigapascals(double value) {
        return Si.quantity(value, "GPa", Pressure.class);
    }

    /** {@return pounds-force per square inch} */
    public static Quantity<Pressure> psi(double value) {
        return Si.quantity(value, "psi", Pressure.class);
    }

    /** {@return metres of water of 9806.65 Pa} */
    public static Quantity<Pressure> metresOfWater(double value) {
        return Si.quantity(value, "mH2O", Pressure.class);
    }

    /** {@return kelvins above absolute zero} */
    public static Quantity<Temperature> kelvins(double value) {
        return Si.quantity(value, "K", Temperature.class);
    }

    /** {@return degrees Celsius} */
    public static Quantity<Temperature> celsius(double value) {
        return Si.quantity(value, "degC", Temperature.class);
    }

    /** {@return kelvins between two temperatures} */
    public static Quantity<TemperatureDifference> kelvinsApart(double value) {
        return Si.quantity(value, "K", TemperatureDifference.class);
    }

    /** {@return seconds} */
    public static Quantity<Time> seconds(double value) {
        return Si.quantity(value, "s", Time.class);
    }

    /** {@return milliseconds} */
    public static Quantity<Time> milliseconds(double value) {
        return Si.quantity(value, "ms", Time.class);
    }

    /** {@return minutes} */
    public static Quantity<Time> minutes(double value) {
        return Si.quantity(value, "min", Time.class);
    }

    /** {@return hours} */
    public static Quantity<Time> hours(double value) {
        return Si.quantity(value, "h", Time.class);
    }

    /** {@return days} */
    public static Quantity<Time> days(double value) {
        return Si.quantity(value, "d", Time.class);
    }

    /** {@return kilograms} */
    public static Quantity<Mass> kilograms(double value) {
        return Si.quantity(value, "kg", Mass.class);
    }

    /** {@return grams} */
    public static Quantity<Mass> grams(double value) {
        return Si.quantity(value, "g", Mass.class);
    }

    /** {@return newtons} */
    public static Quantity<Force> newtons(double value) {
        return Si.quantity(value, "N", Force.class);
    }

    /** {@return kilonewtons} */
    public static Quantity<Force> kilonewtons(double value) {
        return Si.quantity(value, "kN", Force.class);
    }

    /** {@return newton metres} */
    public static Quantity<Torque> newtonMetres(double value) {
        return Si.quantity(value, "Nm", Torque.class);
    }

    /** {@return watts} */
    public static Quantity<Power> watts(double value) {
        return Si.quantity(value, "W", Power.class);
    }

    /** {@return kilowatts} */
    public static Quantity<Power> kilowatts(double value) {
        return Si.quantity(value, "kW", Power.class);
    }

    /** {@return joules} */
    public static Quantity<Energy> joules(double value) {
        return Si.quantity(value, "J", Energy.class);
    }

    /** {@return watt-hours} */
    public static Quantity<Energy> wattHours(double value) {
        return Si.quantity(value, "Wh", Energy.class);
    }

    /** {@return kilowatt-hours} */
    public static Quantity<Energy> kilowattHours(double value) {
        return Si.quantity(value, "kWh", Energy.class);
    }

    /** {@return amperes} */
    public static Quantity<ElectricCurrent> amps(double value) {
        return Si.quantity(value, "A", ElectricCurrent.class);
    }

    /** {@return milliamperes} */
    public static Quantity<ElectricCurrent> milliamps(double value) {
        return Si.quantity(value, "mA", ElectricCurrent.class);
    }

    /** {@return kiloamperes} */
    public static Quantity<ElectricCurrent> kiloamps(double value) {
        return Si.quantity(value, "kA", ElectricCurrent.class);
    }

    /** {@return volts} */
    public static Quantity<ElectricPotential> volts(double value) {
        return Si.quantity(value, "V", ElectricPotential.class);
    }

    /** {@return millivolts} */
    public static Quantity<ElectricPotential> millivolts(double value) {
        return Si.quantity(value, "mV", ElectricPotential.class);
    }

    /** {@return kilovolts} */
    public static Quantity<ElectricPotential> kilovolts(double value) {
        return Si.quantity(value, "kV", ElectricPotential.class);
    }

    /** {@return ohms} */
    public static Quantity<ElectricResistance> ohms(double value) {
        return Si.quantity(value, "ohm", ElectricResistance.class);
    }

    /** {@return milliohms} */
    public static Quantity<ElectricResistance> milliohms(double value) {
        return Si.quantity(value, "mohm", ElectricResistance.class);
    }

    /** {@return henries} */
    public static Quantity<ElectricInductance> henries(double value) {
        return Si.quantity(value, "H", ElectricInductance.class);
    }

    /** {@return millihenries} */
    public static Quantity<ElectricInductance> millihenries(double value) {
        return Si.quantity(value, "mH", ElectricInductance.class);
    }

    /** {@return microhenries} */
    public static Quantity<ElectricInductance> microhenries(double value) {
        return Si.quantity(value, "uH", ElectricInductance.class);
    }

    /** {@return farads} */
    public static Quantity<ElectricCapacitance> farads(double value) {
        return Si.quantity(value, "F", ElectricCapacitance.class);
    }

    /** {@return millifarads} */
    public static Quantity<ElectricCapacitance> millifarads(double value) {
        return Si.quantity(value, "mF", ElectricCapacitance.class);
    }

    /** {@return microfarads} */
    public static Quantity<ElectricCapacitance> microfarads(double value) {
        return Si.quantity(value, "uF", ElectricCapacitance.class);
    }

    /** {@return ampere-seconds} */
    public static Quantity<ElectricCharge> ampereSeconds(double value) {
        return Si.quantity(value, "As", ElectricCharge.class);
    }

    /** {@return ampere-hours} */
    public static Quantity<ElectricCharge> ampereHours(double value) {
        return Si.quantity(value, "Ah", ElectricCharge.class);
    }

    /** {@return milliampere-hours} */
    public static Quantity<ElectricCharge> milliampereHours(double value) {
        return Si.quantity(value, "mAh", ElectricCharge.class);
    }

    /** {@return hertz} */
    public static Quantity<Frequency> hertz(double value) {
        return Si.quantity(value, "Hz", Frequency.class);
    }

    /** {@return kilohertz} */
    public static Quantity<Frequency> kilohertz(double value) {
        return Si.quantity(value, "kHz", Frequency.class);
    }

    /** {@return radians per second} */
    public static Quantity<RotationalSpeed> radiansPerSecond(double value) {
        return Si.quantity(value, "rad/s", RotationalSpeed.class);
    }

    /** {@return revolutions per minute} */
    public static Quantity<RotationalSpeed> rpm(double value) {
        return Si.quantity(value, "rpm", RotationalSpeed.class);
    }

    /** {@return radians} */
    public static Quantity<Angle> radians(double value) {
        return Si.quantity(value, "rad", Angle.class);
    }

    /** {@return degrees of angle} */
    public static Quantity<Angle> degrees(double value) {
        return Si.quantity(value, "deg", Angle.class);
    }

    /** {@return a plain number} */
    public static Quantity<Dimensionless> ratio(double value) {
        return Si.quantity(value, "", Dimensionless.class);
    }

    /** {@return hundredths} */
    public static Quantity<Dimensionless> percent(double value) {
        return Si.quantity(value, "%", Dimensionless.class);
    }

    /** {@return kelvins per watt} */
    public static Quantity<ThermalResistance> kelvinsPerWatt(double value) {
        return Si.quantity(value, "K/W", ThermalResistance.class);
    }

    /** {@return radians per second for a volt} */
    public static Quantity<SpeedPerVoltage> radiansPerSecondPerVolt(double value) {
        return Si.quantity(value, "rad/s/V", SpeedPerVoltage.class);
    }

    /** {@return revolutions per minute for a volt} */
    public static Quantity<SpeedPerVoltage> rpmPerVolt(double value) {
        return Si.quantity(value, "rpm/V", SpeedPerVoltage.class);
    }

    /** {@return volts per kelvin} */
    public static Quantity<VoltagePerTemperature> voltsPerKelvin(double value) {
        return Si.quantity(value, "V/K", VoltagePerTemperature.class);
    }

    /** {@return millivolts per kelvin} */
    public static Quantity<VoltagePerTemperature> millivoltsPerKelvin(double value) {
        return Si.quantity(value, "mV/K", VoltagePerTemperature.class);
    }

    /** {@return siemens per metre} */
    public static Quantity<Conductivity> siemensPerMetre(double value) {
        return Si.quantity(value, "S/m", Conductivity.class);
    }

    /** {@return microsiemens per centimetre} */
    public static Quantity<Conductivity> microsiemensPerCentimetre(double value) {
        return Si.quantity(value, "uS/cm", Conductivity.class);
    }

    /** {@return millisiemens per centimetre} */
    public static Quantity<Conductivity> millisiemensPerCentimetre(double value) {
        return Si.quantity(value, "mS/cm", Conductivity.class);
    }

    /** {@return a share per kelvin} */
    public static Quantity<SharePerTemperature> perKelvin(double value) {
        return Si.quantity(value, "1/K", SharePerTemperature.class);
    }

    /** {@return hundredths per kelvin} */
    public static Quantity<SharePerTemperature> percentPerKelvin(double value) {
        return Si.quantity(value, "%/K", SharePerTemperature.class);
    }

    /** {@return kilogram square metres} */
    public static Quantity<MomentOfInertia> kilogramSquareMetres(double value) {
        return Si.quantity(value, "kg.m2", MomentOfInertia.class);
    }

    /** {@return kilogram square centimetres} */
    public static Quantity<MomentOfInertia> kilogramSquareCentimetres(double value) {
        return Si.quantity(value, "kg.cm2", MomentOfInertia.class);
    }

    /** Electric conductivity of water; SI unit siemens per metre. */
    public interface Conductivity extends Quantity<Conductivity> {}

    /** Moment of inertia; SI unit kilogram square metre. */
    public interface MomentOfInertia extends Quantity<MomentOfInertia> {}

    /** Angle turned per time; SI unit radian per second. */
    public interface RotationalSpeed extends Quantity<RotationalSpeed> {}

    /** Share by which something changes with temperature; SI unit one per kelvin. */
    public interface SharePerTemperature extends Quantity<SharePerTemperature> {}

    /** Rotational speed per volt, as motors are marked; SI unit radian per second and volt. */
    public interface SpeedPerVoltage extends Quantity<SpeedPerVoltage> {}

    /** A difference of temperatures, never a temperature; SI unit kelvin. */
    public interface TemperatureDifference extends Quantity<TemperatureDifference> {}

    /** Temperature difference per heat flow; SI unit kelvin per watt. */
    public interface ThermalResistance extends Quantity<ThermalResistance> {}

    /** Turning moment; SI unit newton metre. */
    public interface Torque extends Quantity<Torque> {}

    /** Voltage per kelvin, as set-point compensation; SI unit volt per kelvin. */
    public interface VoltagePerTemperature extends Quantity<VoltagePerTemperature> {}

    /** Volume of water per time; SI unit cubic metre per second. */
    public interface VolumeFlow extends Quantity<VolumeFlow> {}
}
