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
import org.leat.quantity.Quantities.Conductivity;
import org.leat.quantity.Quantities.MomentOfInertia;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Quantities.SharePerTemperature;
import org.leat.quantity.Quantities.SpeedPerVoltage;
import org.leat.quantity.Quantities.TemperatureDifference;
import org.leat.quantity.Quantities.ThermalResistance;
import org.leat.quantity.Quantities.Torque;
import org.leat.quantity.Quantities.VoltagePerTemperature;
import org.leat.quantity.Quantities.VolumeFlow;

/** What a number with a unit measures. Each kind has one SI unit, in which all computing is done. */
@API(status = API.Status.STABLE, since = "0.1")
public enum QuantityKind {
    LENGTH("length", Length.class, "m", 1e-8, 1e6),
    AREA("area", Area.class, "m²", 1e-10, 1e6),
    VOLUME("volume", Volume.class, "m³", 1e-7, 1e6),
    VOLUME_FLOW("flow", VolumeFlow.class, "m³/s", 1e-9, 1e5),
    SPEED("speed", Speed.class, "m/s", 1e-6, 1e4),
    PRESSURE("pressure", Pressure.class, "Pa", 1e-3, 1e13),
    TEMPERATURE("temperature", Temperature.class, "K", 1e-6, 1e4),
    TEMPERATURE_DIFFERENCE("temperature difference", TemperatureDifference.class, "K", 1e-6, 1e4),
    TIME("time", Time.class, "s", 1e-6, 1e10),
    MASS("mass", Mass.class, "kg", 1e-6, 1e7),
    FORCE("force", Force.class, "N", 1e-6, 1e10),
    TORQUE("torque", Torque.class, "N·m", 1e-6, 1e9),
    POWER("power", Power.class, "W", 1e-6, 1e10),
    ENERGY("energy", Energy.class, "J", 1e-3, 1e15),
    CURRENT("current", ElectricCurrent.class, "A", 1e-6, 1e7),
    VOLTAGE("voltage", ElectricPotential.class, "V", 1e-6, 1e7),
    RESISTANCE("resistance", ElectricResistance.class, "\u03A9", 1e-9, 1e9),
    INDUCTANCE("inductance", ElectricInductance.class, "H", 1e-12, 1e4),
    CAPACITANCE("capacitance", ElectricCapacitance.class, "F", 1e-15, 1e4),
    CHARGE("charge", ElectricCharge.class, "C", 1e-3, 1e11),
    FREQUENCY("frequency", Frequency.class, "Hz", 1e-3, 1e9),
    ROTATIONAL_SPEED("rotational speed", RotationalSpeed.class, "rad/s", 1e-6, 1e6),
    ANGLE("angle", Angle.class, "rad", 1e-9, 1e4),
    RATIO("ratio", Dimensionless.class, "1", 1e-9, 1e9),
    THERMAL_RESISTANCE("thermal resistance", ThermalResistance.class, "K/W", 1e-6, 1e6),
    SPEED_PER_VOLTAGE("speed per voltage", SpeedPerVoltage.class, "rad/(s·V)", 1e-6, 1e6),
    VOLTAGE_PER_TEMPERATURE("voltage per temperature", VoltagePerTemperature.class, "V/K", 1e-9, 1e4),
    CONDUCTIVITY("conductivity", Conductivity.class, "S/m", 1e-9, 1e6),
    SHARE_PER_TEMPERATURE("share per temperature", SharePerTemperature.class, "1/K", 1e-9, 100),
    INERTIA("moment of inertia", MomentOfInertia.class, "kg·m²", 1e-12, 1e9);

    private final String label;
    private final Class<? extends Quantity<?>> type;
    private final String siSymbol;
    private final double least;
    private final double greatest;

    QuantityKind(String label, Class<? extends Quantity<?>> type, String siSymbol, double least, double greatest) {
        this.label = label;
        this.type = type;
        this.siSymbol = siSymbol;
        this.least = least;
        this.greatest = greatest;
    }

    /** {@return the kind's name in plain words} */
    public String label() {
        return label;
    }

    /** {@return the JSR-385 quantity type} */
    public Class<? extends Quantity<?>> type() {
        return type;
    }

    /** {@return the symbol of the kind's SI unit, "1" for a ratio} */
    public String siSymbol() {
        return siSymbol;
    }

    /** {@return the least there can be of it in any plant, unless there is none, in SI: far below what anybody measures} */
    public double least() {
        return least;
    }

    /** {@return the most there can be of it in any plant, in SI: far above what anybody builds} */
    public double greatest() {
        return greatest;
    }

    /**
     * {@return the kind of a JSR-385 quantity type}
     *
     * @throws IllegalArgumentException for a type the trade units do not know
     */
    public static QuantityKind of(Class<?> type) {
        for (QuantityKind kind : values()) {
            if (kind.type == type) {
                return kind;
            }
        }
        throw new IllegalArgumentException("no trade unit measures " + type.getName());
    }
}
