package org.leat.quantity;

import static javax.measure.MetricPrefix.CENTI;
import static javax.measure.MetricPrefix.KILO;
import static javax.measure.MetricPrefix.MEGA;
import static javax.measure.MetricPrefix.MICRO;
import static javax.measure.MetricPrefix.MILLI;
import static tech.units.indriya.AbstractUnit.ONE;
import static tech.units.indriya.unit.Units.AMPERE;
import static tech.units.indriya.unit.Units.CELSIUS;
import static tech.units.indriya.unit.Units.CUBIC_METRE;
import static tech.units.indriya.unit.Units.FARAD;
import static tech.units.indriya.unit.Units.GRAM;
import static tech.units.indriya.unit.Units.HENRY;
import static tech.units.indriya.unit.Units.HERTZ;
import static tech.units.indriya.unit.Units.HOUR;
import static tech.units.indriya.unit.Units.JOULE;
import static tech.units.indriya.unit.Units.KELVIN;
import static tech.units.indriya.unit.Units.KILOGRAM;
import static tech.units.indriya.unit.Units.LITRE;
import static tech.units.indriya.unit.Units.METRE;
import static tech.units.indriya.unit.Units.MINUTE;
import static tech.units.indriya.unit.Units.NEWTON;
import static tech.units.indriya.unit.Units.OHM;
import static tech.units.indriya.unit.Units.PASCAL;
import static tech.units.indriya.unit.Units.PERCENT;
import static tech.units.indriya.unit.Units.RADIAN;
import static tech.units.indriya.unit.Units.SECOND;
import static tech.units.indriya.unit.Units.SIEMENS;
import static tech.units.indriya.unit.Units.SQUARE_METRE;
import static tech.units.indriya.unit.Units.VOLT;
import static tech.units.indriya.unit.Units.WATT;

import javax.measure.Unit;

/**
 * The JSR-385 units of the trade's symbols. Indriya takes its time to begin, and a derived unit is dear to make and to hash, so each
 * is made when it is first wanted: {@link TradeUnit#unit()}.
 */
final class MeasuringUnits {

    private MeasuringUnits() {}

    /** {@return the unit of the symbol that is printed} The same for every kind that has that symbol. */
    static Unit<?> of(String symbol) {
        // Indriya finds its services through the thread's context class loader: lend it ours while it starts
        Thread thread = Thread.currentThread();
        ClassLoader was = thread.getContextClassLoader();
        thread.setContextClassLoader(MeasuringUnits.class.getClassLoader());
        try {
            return made(symbol);
        } finally {
            thread.setContextClassLoader(was);
        }
    }

    private static Unit<?> made(String symbol) {
        return switch (symbol) {
            case "m" -> METRE;
            case "mm" -> MILLI(METRE);
            case "cm" -> CENTI(METRE);
            case "km" -> KILO(METRE);
            case "\u00B5m" -> MICRO(METRE);
            case "in" -> METRE.multiply(254).divide(10_000);
            case "ft" -> METRE.multiply(3048).divide(10_000);
            case "m²" -> SQUARE_METRE;
            case "mm²" -> MILLI(METRE).pow(2);
            case "cm²" -> CENTI(METRE).pow(2);
            case "m³" -> CUBIC_METRE;
            case "L" -> LITRE;
            case "m³/s" -> CUBIC_METRE.divide(SECOND);
            case "L/s" -> LITRE.divide(SECOND);
            case "L/min" -> LITRE.divide(MINUTE);
            case "m³/h" -> CUBIC_METRE.divide(HOUR);
            case "gal/min" ->
                LITRE.multiply(3_785_411_784L).divide(1_000_000_000L).divide(MINUTE);
            case "m/s" -> METRE.divide(SECOND);
            case "Pa" -> PASCAL;
            case "bar" -> PASCAL.multiply(100_000);
            case "mbar" -> PASCAL.multiply(100);
            case "kPa" -> KILO(PASCAL);
            case "MPa" -> MEGA(PASCAL);
            case "GPa" -> PASCAL.multiply(1_000_000_000L);
            case "psi" -> PASCAL.multiply(6_894_757_293_168L).divide(1_000_000_000L);
            case "m of water" -> PASCAL.multiply(980_665).divide(100);
            case "K" -> KELVIN;
            case "°C" -> CELSIUS;
            case "s" -> SECOND;
            case "ms" -> MILLI(SECOND);
            case "min" -> MINUTE;
            case "h" -> HOUR;
            case "d" -> SECOND.multiply(86_400);
            case "kg" -> KILOGRAM;
            case "g" -> GRAM;
            case "N" -> NEWTON;
            case "kN" -> KILO(NEWTON);
            case "N·m" -> NEWTON.multiply(METRE);
            case "W" -> WATT;
            case "kW" -> KILO(WATT);
            case "J" -> JOULE;
            case "Wh" -> WATT.multiply(HOUR);
            case "kWh" -> KILO(WATT).multiply(HOUR);
            case "A" -> AMPERE;
            case "mA" -> MILLI(AMPERE);
            case "kA" -> KILO(AMPERE);
            case "V" -> VOLT;
            case "mV" -> MILLI(VOLT);
            case "kV" -> KILO(VOLT);
            case "\u03A9" -> OHM;
            case "m\u03A9" -> MILLI(OHM);
            case "H" -> HENRY;
            case "mH" -> MILLI(HENRY);
            case "\u00B5H" -> MICRO(HENRY);
            case "F" -> FARAD;
            case "mF" -> MILLI(FARAD);
            case "\u00B5F" -> MICRO(FARAD);
            case "As" -> AMPERE.multiply(SECOND);
            case "Ah" -> AMPERE.multiply(HOUR);
            case "mAh" -> MILLI(AMPERE).multiply(HOUR);
            case "Hz" -> HERTZ;
            case "kHz" -> KILO(HERTZ);
            case "rad/s" -> RADIAN.divide(SECOND);
            case "rpm" -> RADIAN.multiply(2 * Math.PI).divide(MINUTE);
            case "rad" -> RADIAN;
            case "°" -> RADIAN.multiply(Math.PI).divide(180);
            case "" -> ONE;
            case "%" -> PERCENT;
            case "K/W" -> KELVIN.divide(WATT);
            case "rad/s/V" -> RADIAN.divide(SECOND).divide(VOLT);
            case "rpm/V" -> RADIAN.multiply(2 * Math.PI).divide(MINUTE).divide(VOLT);
            case "V/K" -> VOLT.divide(KELVIN);
            case "mV/K" -> MILLI(VOLT).divide(KELVIN);
            case "S/m" -> SIEMENS.divide(METRE);
            case "\u00B5S/cm" -> MICRO(SIEMENS).divide(CENTI(METRE));
            case "mS/cm" -> MILLI(SIEMENS).divide(CENTI(METRE));
            case "1/K" -> ONE.divide(KELVIN);
            case "%/K" -> PERCENT.divide(KELVIN);
            case "kg·m²" -> KILOGRAM.multiply(SQUARE_METRE);
            case "kg·cm²" -> KILOGRAM.multiply(CENTI(METRE).pow(2));
            default -> throw new IllegalArgumentException("no unit is printed as " + symbol);
        };
    }
}
