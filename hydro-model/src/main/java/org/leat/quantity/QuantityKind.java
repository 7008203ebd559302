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

/** What a number with a unit measures. Each kind has one SI unit, in which all computing is done. */
public enum QuantityKind {
    LENGTH("length", Length.class, "m"),
    AREA("area", Area.class, "m²"),
    VOLUME("volume", Volume.class, "m³"),
    VOLUME_FLOW("flow", VolumeFlow.class, "m³/s"),
    SPEED("speed", Speed.class, "m/s"),
    PRESSURE("pressure", Pressure.class, "Pa"),
    TEMPERATURE("temperature", Temperature.class, "K"),
    TEMPERATURE_DIFFERENCE("temperature difference", TemperatureDifference.class, "K"),
    TIME("time", Time.class, "s"),
    MASS("mass", Mass.class, "kg"),
    FORCE("force", Force.class, "N"),
    TORQUE("torque", Torque.class, "N·m"),
    POWER("power", Power.class, "W"),
    ENERGY("energy", Energy.class, "J"),
    CURRENT("current", ElectricCurrent.class, "A"),
    VOLTAGE("voltage", ElectricPotential.class, "V"),
    RESISTANCE("resistance", ElectricResistance.class, "\u03A9"),
    INDUCTANCE("inductance", ElectricInductance.class, "H"),
    CAPACITANCE("capacitance", ElectricCapacitance.class, "F"),
    CHARGE("charge", ElectricCharge.class, "C"),
    FREQUENCY("frequency", Frequency.class, "Hz"),
    ROTATIONAL_SPEED("rotational speed", RotationalSpeed.class, "rad/s"),
    ANGLE("angle", Angle.class, "rad"),
    RATIO("ratio", Dimensionless.class, "1"),
    THERMAL_RESISTANCE("thermal resistance", ThermalResistance.class, "K/W"),
    SPEED_PER_VOLTAGE("speed per voltage", SpeedPerVoltage.class, "rad/(s·V)"),
    VOLTAGE_PER_TEMPERATURE("voltage per temperature", VoltagePerTemperature.class, "V/K"),
    CONDUCTIVITY("conductivity", Conductivity.class, "S/m"),
    SHARE_PER_TEMPERATURE("share per temperature", SharePerTemperature.class, "1/K"),
    INERTIA("moment of inertia", MomentOfInertia.class, "kg·m²");

    private final String label;
    private final Class<? extends Quantity<?>> type;
    private final String siSymbol;

    QuantityKind(String label, Class<? extends Quantity<?>> type, String siSymbol) {
        this.label = label;
        this.type = type;
        this.siSymbol = siSymbol;
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
