package org.leat.design;

import java.lang.annotation.Documented;
import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;
import org.apiguardian.api.API;

/**
 * What a field's value can never pass, in the SI unit of its kind, whatever the unit it is given in; a list is limited
 * item by item. Whatever its limits, a value other than nought has the size of something in a plant: from
 * {@link org.leat.quantity.QuantityKind#least} to {@link org.leat.quantity.QuantityKind#greatest}. Beside {@link About} it is shown at accessors, constructors and the setters of builders.
 *
 * <p>The SI units: {@code Length} m, {@code Area} m², {@code Volume} m³, {@code VolumeFlow} m³/s, {@code Speed} m/s,
 * {@code Pressure} Pa, {@code Temperature} K, {@code TemperatureDifference} K, {@code Time} s, {@code Mass} kg,
 * {@code Force} N, {@code Torque} N·m, {@code Power} W, {@code Energy} J, {@code ElectricCurrent} A,
 * {@code ElectricPotential} V, {@code ElectricResistance} Ω, {@code ElectricInductance} H, {@code ElectricCapacitance} F,
 * {@code ElectricCharge} C, {@code Frequency} Hz, {@code RotationalSpeed} rad/s, {@code Angle} rad,
 * {@code Dimensionless} 1, {@code ThermalResistance} K/W, {@code SpeedPerVoltage} rad/(s·V),
 * {@code VoltagePerTemperature} V/K, {@code Conductivity} S/m, {@code SharePerTemperature} 1/K,
 * {@code MomentOfInertia} kg·m².
 */
@API(status = API.Status.INTERNAL, since = "0.1")
@Documented
@Retention(RetentionPolicy.RUNTIME)
@Target({ElementType.RECORD_COMPONENT, ElementType.METHOD, ElementType.PARAMETER})
public @interface Limits {
    /** {@return the least value allowed} */
    double atLeast() default Double.NEGATIVE_INFINITY;

    /** {@return the value that must be exceeded} */
    double above() default Double.NEGATIVE_INFINITY;

    /** {@return the greatest value allowed} */
    double atMost() default Double.POSITIVE_INFINITY;

    /** {@return the least number of items of a list} */
    int items() default 0;

    /** {@return the greatest number of items of a list} A list without limits of its own has this one. */
    int mostItems() default MOST_ITEMS;

    /** Items at most of a list that states no number of its own. */
    int MOST_ITEMS = 2000;
}
