package org.leat.file;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leat.quantity.QuantityKind;

/**
 * Units that design files do not have, in terms of those they have. Factors: the International System of Units (BIPM SI
 * Brochure) and NIST SP 811, appendix B. Gallons, horsepower and tons are left out where more than one is in use.
 */
final class ReplacedUnits {

    private static final Pattern NUMBER_AND_UNIT = Pattern.compile("([+-]?\\d{1,15}(?:\\.\\d{1,30})?)\\s*(\\D.{0,15})");

    private record Replaced(QuantityKind kind, String spelling, double factor, double offset, String unit) {}

    private static final List<Replaced> ALL = List.of(
            of(QuantityKind.LENGTH, "dm", 10, "cm"),
            of(QuantityKind.LENGTH, "yd|yds|yard|yards", 0.9144, "m"),
            of(QuantityKind.LENGTH, "mil|mils|thou", 0.0254, "mm"),
            of(QuantityKind.LENGTH, "nm", 0.001, "µm"),
            of(QuantityKind.VOLUME, "ml|mL|cc|cm3|cm³", 0.001, "L"),
            of(QuantityKind.VOLUME_FLOW, "mL/s|ml/s", 0.001, "L/s"),
            of(QuantityKind.VOLUME_FLOW, "L/h|l/h", 1 / 60.0, "L/min"),
            of(QuantityKind.VOLUME_FLOW, "m3/min|m³/min", 60, "m³/h"),
            of(QuantityKind.VOLUME_FLOW, "cfs|ft3/s|ft³/s|cusec|cusecs", 28.316846592, "L/s"),
            of(QuantityKind.SPEED, "km/h|kmh|kph", 1 / 3.6, "m/s"),
            of(QuantityKind.SPEED, "ft/s|fps", 0.3048, "m/s"),
            of(QuantityKind.PRESSURE, "hPa", 100, "Pa"),
            of(QuantityKind.PRESSURE, "atm", 1.01325, "bar"),
            of(QuantityKind.PRESSURE, "at|kg/cm2|kg/cm²|kgf/cm2|kgf/cm²", 0.980665, "bar"),
            of(QuantityKind.PRESSURE, "N/mm2|N/mm²", 1, "MPa"),
            of(QuantityKind.PRESSURE, "kN/m2|kN/m²", 1, "kPa"),
            new Replaced(QuantityKind.TEMPERATURE, "°F|F|degF|ºF|deg F|Fahrenheit", 5 / 9.0, -160 / 9.0, "°C"),
            of(QuantityKind.TIME, "week|weeks|wk", 7, "d"),
            of(QuantityKind.TIME, "µs|us", 0.001, "ms"),
            of(QuantityKind.MASS, "mg", 0.001, "g"),
            of(QuantityKind.MASS, "t|tonne|tonnes", 1000, "kg"),
            of(QuantityKind.MASS, "lb|lbs|pound|pounds", 0.45359237, "kg"),
            of(QuantityKind.MASS, "oz|ounce|ounces", 28.349523125, "g"),
            of(QuantityKind.FORCE, "kgf|kp", 9.80665, "N"),
            of(QuantityKind.FORCE, "lbf", 4.4482216152605, "N"),
            of(QuantityKind.FORCE, "MN", 1000, "kN"),
            of(QuantityKind.TORQUE, "Ncm|N cm|N·cm", 0.01, "N·m"),
            of(QuantityKind.POWER, "mW", 0.001, "W"),
            of(QuantityKind.POWER, "MW", 1000, "kW"),
            of(QuantityKind.ENERGY, "kJ", 1000, "J"),
            of(QuantityKind.ENERGY, "MJ", 1e6, "J"),
            of(QuantityKind.ENERGY, "MWh", 1000, "kWh"),
            of(QuantityKind.CURRENT, "µA|uA", 0.001, "mA"),
            of(QuantityKind.VOLTAGE, "µV|uV", 0.001, "mV"),
            of(QuantityKind.RESISTANCE, "kΩ|kohm|kOhm|kohms", 1000, "Ω"),
            of(QuantityKind.RESISTANCE, "µΩ|uohm|µohm", 0.001, "mΩ"),
            of(QuantityKind.CAPACITANCE, "nF", 0.001, "µF"),
            of(QuantityKind.CAPACITANCE, "pF", 1e-6, "µF"),
            of(QuantityKind.CHARGE, "kAh", 1000, "Ah"),
            of(QuantityKind.FREQUENCY, "MHz", 1000, "kHz"),
            of(QuantityKind.ROTATIONAL_SPEED, "rps|rev/s|r/s|1/s", 60, "rpm"),
            of(QuantityKind.ROTATIONAL_SPEED, "krpm", 1000, "rpm"),
            of(QuantityKind.ANGLE, "grad|gon", 0.9, "°"),
            of(QuantityKind.RATIO, "‰|per mille", 0.1, "%"),
            of(QuantityKind.RATIO, "ppm", 1e-4, "%"),
            of(QuantityKind.CONDUCTIVITY, "mS/m", 10, "µS/cm"),
            of(QuantityKind.INERTIA, "g·m²|gm2|g m2", 0.001, "kg·m²"));

    private ReplacedUnits() {}

    private static Replaced of(QuantityKind kind, String spelling, double factor, String unit) {
        return new Replaced(kind, spelling, factor, 0, unit);
    }

    /** {@return the same amount in a unit that design files have; empty where the unit is none of these} */
    static String of(String text, QuantityKind kind) {
        Matcher m = NUMBER_AND_UNIT.matcher(text);
        if (!m.matches()) {
            return "";
        }
        for (Replaced replaced : ALL) {
            if (replaced.kind() == kind
                    && List.of(replaced.spelling().split("\\|", -1))
                            .contains(m.group(2).strip())) {
                double value = Double.parseDouble(m.group(1)) * replaced.factor() + replaced.offset();
                return rounded(value) + " " + replaced.unit();
            }
        }
        return "";
    }

    /** {@return a number to four significant digits, as people write it} */
    static String rounded(double value) {
        return value == 0
                ? "0"
                : new BigDecimal(value)
                        .round(new MathContext(4))
                        .stripTrailingZeros()
                        .toPlainString();
    }
}
