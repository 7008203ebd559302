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

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * The register of every unit a design file may use. Indriya's own parser is not used: it reads {@code mm²} as a
 * thousandth of a square metre, refuses {@code rpm} and {@code bar}, and depends on the default locale. Each factor
 * here is held against Indriya's converter by a test.
 *
 * <p>Sources: the International System of Units (BIPM SI Brochure); inch, foot, US gallon and pound-force per square
 * inch by NIST SP 811; metre of water as the conventional 9806.65 Pa (ISO 80000-4 note on conventional units).
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class TradeUnits {

    private static final String PI = "3.14159265358979323846264338327950288";
    private static final Map<QuantityKind, List<TradeUnit>> BY_KIND;
    private static final Map<Unit<?>, TradeUnit> BY_UNIT;

    /** The same for the very objects of the register: hashing a derived unit is dear. */
    private static final Map<Unit<?>, TradeUnit> BY_SAME_UNIT;

    private TradeUnits() {}

    static {
        // Indriya finds its services through the thread's context class loader: lend it ours while it starts
        Thread thread = Thread.currentThread();
        ClassLoader was = thread.getContextClassLoader();
        thread.setContextClassLoader(TradeUnits.class.getClassLoader());
        try {
            Register r = new Register();
            r.fill();
            Map<QuantityKind, List<TradeUnit>> byKind = new EnumMap<>(QuantityKind.class);
            r.byKind.forEach((kind, units) -> byKind.put(kind, List.copyOf(units)));
            BY_KIND = Collections.unmodifiableMap(byKind);
            BY_UNIT = Collections.unmodifiableMap(new LinkedHashMap<>(r.byUnit));
            IdentityHashMap<Unit<?>, TradeUnit> same = new IdentityHashMap<>();
            r.byKind.values().forEach(units -> units.forEach(u -> same.put(u.unit(), r.byUnit.get(u.unit()))));
            BY_SAME_UNIT = Collections.unmodifiableMap(same);
        } finally {
            thread.setContextClassLoader(was);
        }
    }

    /** {@return the units of a kind, the SI or most usual one first} */
    public static List<TradeUnit> of(QuantityKind kind) {
        List<TradeUnit> units = BY_KIND.get(kind);
        return units == null ? List.of() : units;
    }

    /** {@return the unit of that spelling and kind, or null} */
    public static @Nullable TradeUnit find(QuantityKind kind, String spelling) {
        for (TradeUnit unit : of(kind)) {
            if (unit.spellings().contains(spelling)) {
                return unit;
            }
        }
        return null;
    }

    /** {@return every unit of that spelling, of whatever kind: for telling what was meant} */
    public static List<TradeUnit> find(String spelling) {
        List<TradeUnit> found = new ArrayList<>();
        for (QuantityKind kind : QuantityKind.values()) {
            TradeUnit unit = find(kind, spelling);
            if (unit != null) {
                found.add(unit);
            }
        }
        return List.copyOf(found);
    }

    /** {@return the registered unit that is this JSR-385 unit, or null} */
    public static @Nullable TradeUnit find(Unit<?> unit) {
        TradeUnit same = BY_SAME_UNIT.get(unit);
        return same == null ? BY_UNIT.get(unit) : same;
    }

    private static final class Register {
        final Map<QuantityKind, List<TradeUnit>> byKind = new EnumMap<>(QuantityKind.class);
        final Map<Unit<?>, TradeUnit> byUnit = new LinkedHashMap<>();

        void fill() {
            add(QuantityKind.LENGTH, METRE, "1", "1", "m", "metre", "metres", "meter", "meters", "M");
            add(
                    QuantityKind.LENGTH,
                    MILLI(METRE),
                    "1",
                    "1000",
                    "mm",
                    "MM",
                    "millimetre",
                    "millimetres",
                    "millimeter",
                    "millimeters");
            add(
                    QuantityKind.LENGTH,
                    CENTI(METRE),
                    "1",
                    "100",
                    "cm",
                    "CM",
                    "centimetre",
                    "centimetres",
                    "centimeter",
                    "centimeters");
            add(QuantityKind.LENGTH, KILO(METRE), "1000", "1", "km", "KM", "Km");
            add(QuantityKind.LENGTH, MICRO(METRE), "1", "1e6", "\u00B5m", "\u03BCm", "um");
            add(QuantityKind.LENGTH, METRE.multiply(254).divide(10_000), "0.0254", "1", "in", "inch", "inches");
            add(QuantityKind.LENGTH, METRE.multiply(3048).divide(10_000), "0.3048", "1", "ft", "foot", "feet");
            add(QuantityKind.AREA, SQUARE_METRE, "1", "1", "m²", "m2", "m^2", "sq m");
            add(QuantityKind.AREA, MILLI(METRE).pow(2), "1", "1e6", "mm²", "mm2", "mm^2", "sq mm", "sqmm", "qmm");
            add(QuantityKind.AREA, CENTI(METRE).pow(2), "1", "1e4", "cm²", "cm2", "cm^2", "sq cm");
            add(QuantityKind.VOLUME, CUBIC_METRE, "1", "1", "m³", "m3", "m^3");
            add(QuantityKind.VOLUME, LITRE, "1", "1000", "L", "l", "litre", "litres", "liter", "liters");
            add(QuantityKind.VOLUME_FLOW, CUBIC_METRE.divide(SECOND), "1", "1", "m³/s", "m3/s", "m^3/s");
            add(
                    QuantityKind.VOLUME_FLOW,
                    LITRE.divide(SECOND),
                    "1",
                    "1000",
                    "L/s",
                    "l/s",
                    "L/S",
                    "L/sec",
                    "l/sec",
                    "lps",
                    "LPS",
                    "litre/s",
                    "litres/s",
                    "liter/s",
                    "liters/s");
            add(
                    QuantityKind.VOLUME_FLOW,
                    LITRE.divide(MINUTE),
                    "1",
                    "60000",
                    "L/min",
                    "l/min",
                    "lpm",
                    "LPM",
                    "litres/min",
                    "liters/min");
            add(
                    QuantityKind.VOLUME_FLOW,
                    CUBIC_METRE.divide(HOUR),
                    "1",
                    "3600",
                    "m³/h",
                    "m3/h",
                    "m^3/h",
                    "m3/hr",
                    "m³/hr");
            add(
                    QuantityKind.VOLUME_FLOW,
                    LITRE.multiply(3_785_411_784L).divide(1_000_000_000L).divide(MINUTE),
                    "0.003785411784",
                    "60",
                    "gal/min");
            add(QuantityKind.SPEED, METRE.divide(SECOND), "1", "1", "m/s", "m/sec");
            add(QuantityKind.PRESSURE, PASCAL, "1", "1", "Pa");
            add(QuantityKind.PRESSURE, PASCAL.multiply(100_000), "1e5", "1", "bar", "Bar", "BAR", "bars", "Bars");
            add(QuantityKind.PRESSURE, PASCAL.multiply(100), "100", "1", "mbar");
            add(QuantityKind.PRESSURE, KILO(PASCAL), "1000", "1", "kPa", "kpa", "KPa", "KPA");
            add(QuantityKind.PRESSURE, MEGA(PASCAL), "1e6", "1", "MPa");
            add(QuantityKind.PRESSURE, PASCAL.multiply(1_000_000_000L), "1e9", "1", "GPa");
            add(
                    QuantityKind.PRESSURE,
                    PASCAL.multiply(6_894_757_293_168L).divide(1_000_000_000L),
                    "6894.757293168",
                    "1",
                    "psi",
                    "PSI",
                    "Psi");
            add(
                    QuantityKind.PRESSURE,
                    PASCAL.multiply(980_665).divide(100),
                    "9806.65",
                    "1",
                    "m of water",
                    "mH2O",
                    "mH₂O",
                    "m H2O",
                    "mWC");
            add(QuantityKind.TEMPERATURE, KELVIN, "1", "1", "K");
            addOffset(
                    QuantityKind.TEMPERATURE,
                    CELSIUS,
                    "273.15",
                    "°C",
                    "degC",
                    "℃",
                    "C",
                    "°c",
                    "ºC",
                    "deg C",
                    "celsius",
                    "Celsius");
            add(QuantityKind.TEMPERATURE_DIFFERENCE, KELVIN, "1", "1", "K", "°C", "degC");
            add(QuantityKind.TIME, SECOND, "1", "1", "s", "sec", "secs", "second", "seconds");
            add(QuantityKind.TIME, MILLI(SECOND), "1", "1000", "ms");
            add(QuantityKind.TIME, MINUTE, "60", "1", "min", "mins", "minute", "minutes");
            add(QuantityKind.TIME, HOUR, "3600", "1", "h", "hr", "hrs", "hour", "hours");
            add(QuantityKind.TIME, SECOND.multiply(86_400), "86400", "1", "d", "day", "days");
            add(QuantityKind.MASS, KILOGRAM, "1", "1", "kg", "Kg", "KG", "kgs", "kilogram", "kilograms");
            add(QuantityKind.MASS, GRAM, "1", "1000", "g", "gram", "grams");
            add(QuantityKind.FORCE, NEWTON, "1", "1", "N", "newton", "newtons");
            add(QuantityKind.FORCE, KILO(NEWTON), "1000", "1", "kN");
            add(QuantityKind.TORQUE, NEWTON.multiply(METRE), "1", "1", "N·m", "Nm", "N.m", "N m", "N*m");
            add(QuantityKind.POWER, WATT, "1", "1", "W", "w", "watt", "watts", "Watt", "Watts");
            add(QuantityKind.POWER, KILO(WATT), "1000", "1", "kW", "KW", "kw", "Kw", "kilowatt", "kilowatts");
            add(QuantityKind.ENERGY, JOULE, "1", "1", "J");
            add(QuantityKind.ENERGY, WATT.multiply(HOUR), "3600", "1", "Wh", "W·h", "wh", "WH");
            add(
                    QuantityKind.ENERGY,
                    KILO(WATT).multiply(HOUR),
                    "3.6e6",
                    "1",
                    "kWh",
                    "kW·h",
                    "kwh",
                    "KWh",
                    "KWH",
                    "Kwh");
            add(QuantityKind.CURRENT, AMPERE, "1", "1", "A", "amp", "amps", "Amp", "Amps", "ampere", "amperes");
            add(QuantityKind.CURRENT, MILLI(AMPERE), "1", "1000", "mA");
            add(QuantityKind.CURRENT, KILO(AMPERE), "1000", "1", "kA");
            add(
                    QuantityKind.VOLTAGE,
                    VOLT,
                    "1",
                    "1",
                    "V",
                    "v",
                    "volt",
                    "volts",
                    "Volt",
                    "Volts",
                    "VDC",
                    "Vdc",
                    "V DC",
                    "V dc");
            add(QuantityKind.VOLTAGE, MILLI(VOLT), "1", "1000", "mV");
            add(QuantityKind.VOLTAGE, KILO(VOLT), "1000", "1", "kV");
            add(
                    QuantityKind.RESISTANCE,
                    OHM,
                    "1",
                    "1",
                    "\u03A9",
                    "\u2126",
                    "ohm",
                    "Ohm",
                    "OHM",
                    "ohms",
                    "Ohms",
                    "OHMS");
            add(
                    QuantityKind.RESISTANCE,
                    MILLI(OHM),
                    "1",
                    "1000",
                    "m\u03A9",
                    "m\u2126",
                    "mohm",
                    "mOhm",
                    "mohms",
                    "mOhms",
                    "milliohm",
                    "milliohms");
            add(QuantityKind.INDUCTANCE, HENRY, "1", "1", "H");
            add(QuantityKind.INDUCTANCE, MILLI(HENRY), "1", "1000", "mH");
            add(QuantityKind.INDUCTANCE, MICRO(HENRY), "1", "1e6", "\u00B5H", "\u03BCH", "uH");
            add(QuantityKind.CAPACITANCE, FARAD, "1", "1", "F");
            add(QuantityKind.CAPACITANCE, MILLI(FARAD), "1", "1000", "mF");
            add(QuantityKind.CAPACITANCE, MICRO(FARAD), "1", "1e6", "\u00B5F", "\u03BCF", "uF");
            add(QuantityKind.CHARGE, AMPERE.multiply(SECOND), "1", "1", "As", "A·s");
            add(
                    QuantityKind.CHARGE,
                    AMPERE.multiply(HOUR),
                    "3600",
                    "1",
                    "Ah",
                    "A·h",
                    "AH",
                    "ah",
                    "amp-hours",
                    "amp hours");
            add(QuantityKind.CHARGE, MILLI(AMPERE).multiply(HOUR), "3.6", "1", "mAh");
            add(QuantityKind.FREQUENCY, HERTZ, "1", "1", "Hz", "hz", "HZ", "hertz");
            add(QuantityKind.FREQUENCY, KILO(HERTZ), "1000", "1", "kHz");
            Unit<?> radianPerSecond = RADIAN.divide(SECOND);
            Unit<?> revolutionPerMinute = RADIAN.multiply(2 * Math.PI).divide(MINUTE);
            add(QuantityKind.ROTATIONAL_SPEED, radianPerSecond, "1", "1", "rad/s");
            add(
                    QuantityKind.ROTATIONAL_SPEED,
                    revolutionPerMinute,
                    PI,
                    "30",
                    "rpm",
                    "r/min",
                    "1/min",
                    "RPM",
                    "Rpm",
                    "rev/min",
                    "U/min",
                    "min-1",
                    "min⁻¹");
            add(QuantityKind.ANGLE, RADIAN, "1", "1", "rad");
            add(QuantityKind.ANGLE, RADIAN.multiply(Math.PI).divide(180), PI, "180", "°", "deg", "degree", "degrees");
            add(QuantityKind.RATIO, ONE, "1", "1", "");
            add(QuantityKind.RATIO, PERCENT, "1", "100", "%", "percent", "per cent");
            add(QuantityKind.THERMAL_RESISTANCE, KELVIN.divide(WATT), "1", "1", "K/W", "°C/W", "degC/W");
            add(QuantityKind.SPEED_PER_VOLTAGE, radianPerSecond.divide(VOLT), "1", "1", "rad/s/V");
            add(
                    QuantityKind.SPEED_PER_VOLTAGE,
                    revolutionPerMinute.divide(VOLT),
                    PI,
                    "30",
                    "rpm/V",
                    "RPM/V",
                    "rpm/v",
                    "KV",
                    "Kv",
                    "kv");
            add(QuantityKind.VOLTAGE_PER_TEMPERATURE, VOLT.divide(KELVIN), "1", "1", "V/K", "V/°C");
            add(QuantityKind.VOLTAGE_PER_TEMPERATURE, MILLI(VOLT).divide(KELVIN), "1", "1000", "mV/K", "mV/°C");
            add(QuantityKind.CONDUCTIVITY, SIEMENS.divide(METRE), "1", "1", "S/m");
            add(
                    QuantityKind.CONDUCTIVITY,
                    MICRO(SIEMENS).divide(CENTI(METRE)),
                    "1",
                    "10000",
                    "\u00B5S/cm",
                    "\u03BCS/cm",
                    "uS/cm");
            add(QuantityKind.CONDUCTIVITY, MILLI(SIEMENS).divide(CENTI(METRE)), "1", "10", "mS/cm");
            add(QuantityKind.SHARE_PER_TEMPERATURE, ONE.divide(KELVIN), "1", "1", "1/K");
            add(QuantityKind.SHARE_PER_TEMPERATURE, PERCENT.divide(KELVIN), "1", "100", "%/K", "%/°C");
            add(
                    QuantityKind.INERTIA,
                    KILOGRAM.multiply(SQUARE_METRE),
                    "1",
                    "1",
                    "kg·m²",
                    "kg.m²",
                    "kg·m2",
                    "kg.m2",
                    "kgm2",
                    "kgm²",
                    "kg m2",
                    "kg m²");
            add(QuantityKind.INERTIA, KILOGRAM.multiply(CENTI(METRE).pow(2)), "1", "1e4", "kg·cm²", "kg.cm²", "kg.cm2");
        }

        void add(QuantityKind kind, Unit<?> unit, String times, String by, String... spellings) {
            register(kind, unit, times, by, "0", spellings);
        }

        void addOffset(QuantityKind kind, Unit<?> unit, String offset, String... spellings) {
            register(kind, unit, "1", "1", offset, spellings);
        }

        private void register(
                QuantityKind kind, Unit<?> unit, String times, String by, String offset, String... spellings) {
            TradeUnit known = new TradeUnit(
                    kind, List.of(spellings), unit, new BigDecimal(times), new BigDecimal(by), new BigDecimal(offset));
            byKind.computeIfAbsent(kind, k -> new ArrayList<>()).add(known);
            byUnit.putIfAbsent(unit, known);
        }
    }
}
