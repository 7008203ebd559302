package org.leat.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Unit;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.lazy.Once;

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
    private static final Map<QuantityKind, List<TradeUnit>> BY_KIND = new Register().kinds();

    /** All of them in the order of the register. */
    private static final List<TradeUnit> ALL =
            BY_KIND.values().stream().flatMap(List::stream).toList();

    /** By units made elsewhere, when such a one is first looked for: to hash a derived unit is dear. */
    private static final Once<Map<Unit<?>, TradeUnit>> BY_UNIT = new Once<>(TradeUnits::byUnit);

    private TradeUnits() {}

    private static Map<Unit<?>, TradeUnit> byUnit() {
        Map<Unit<?>, TradeUnit> byUnit = new HashMap<>();
        for (TradeUnit unit : ALL) {
            byUnit.putIfAbsent(unit.unit(), unit);
        }
        return Collections.unmodifiableMap(byUnit);
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
        for (TradeUnit known : ALL) {
            if (known.hasMade(unit)) {
                return known;
            }
        }
        return BY_UNIT.get().get(unit);
    }

    private static final class Register {
        final Map<QuantityKind, List<TradeUnit>> byKind = new EnumMap<>(QuantityKind.class);
        final Map<String, Once<Unit<?>>> bySymbol = new HashMap<>();

        Map<QuantityKind, List<TradeUnit>> kinds() {
            fill();
            byKind.replaceAll((kind, units) -> List.copyOf(units));
            return Collections.unmodifiableMap(byKind);
        }

        void fill() {
            add(QuantityKind.LENGTH, "1", "1", "m", "metre", "metres", "meter", "meters", "M");
            add(QuantityKind.LENGTH, "1", "1000", "mm", "MM", "millimetre", "millimetres", "millimeter", "millimeters");
            add(QuantityKind.LENGTH, "1", "100", "cm", "CM", "centimetre", "centimetres", "centimeter", "centimeters");
            add(QuantityKind.LENGTH, "1000", "1", "km", "KM", "Km");
            add(QuantityKind.LENGTH, "1", "1e6", "\u00B5m", "\u03BCm", "um");
            add(QuantityKind.LENGTH, "0.0254", "1", "in", "inch", "inches");
            add(QuantityKind.LENGTH, "0.3048", "1", "ft", "foot", "feet");
            add(QuantityKind.AREA, "1", "1", "m²", "m2", "m^2", "sq m");
            add(QuantityKind.AREA, "1", "1e6", "mm²", "mm2", "mm^2", "sq mm", "sqmm", "qmm");
            add(QuantityKind.AREA, "1", "1e4", "cm²", "cm2", "cm^2", "sq cm");
            add(QuantityKind.VOLUME, "1", "1", "m³", "m3", "m^3");
            add(QuantityKind.VOLUME, "1", "1000", "L", "l", "litre", "litres", "liter", "liters");
            add(QuantityKind.VOLUME_FLOW, "1", "1", "m³/s", "m3/s", "m^3/s");
            add(
                    QuantityKind.VOLUME_FLOW,
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
            add(QuantityKind.VOLUME_FLOW, "1", "60000", "L/min", "l/min", "lpm", "LPM", "litres/min", "liters/min");
            add(QuantityKind.VOLUME_FLOW, "1", "3600", "m³/h", "m3/h", "m^3/h", "m3/hr", "m³/hr");
            add(QuantityKind.VOLUME_FLOW, "0.003785411784", "60", "gal/min");
            add(QuantityKind.SPEED, "1", "1", "m/s", "m/sec");
            add(QuantityKind.PRESSURE, "1", "1", "Pa");
            add(QuantityKind.PRESSURE, "1e5", "1", "bar", "Bar", "BAR", "bars", "Bars");
            add(QuantityKind.PRESSURE, "100", "1", "mbar");
            add(QuantityKind.PRESSURE, "1000", "1", "kPa", "kpa", "KPa", "KPA");
            add(QuantityKind.PRESSURE, "1e6", "1", "MPa");
            add(QuantityKind.PRESSURE, "1e9", "1", "GPa");
            add(QuantityKind.PRESSURE, "6894.757293168", "1", "psi", "PSI", "Psi");
            add(QuantityKind.PRESSURE, "9806.65", "1", "m of water", "mH2O", "mH₂O", "m H2O", "mWC");
            add(QuantityKind.TEMPERATURE, "1", "1", "K");
            addOffset(
                    QuantityKind.TEMPERATURE,
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
            add(QuantityKind.TEMPERATURE_DIFFERENCE, "1", "1", "K", "°C", "degC");
            add(QuantityKind.TIME, "1", "1", "s", "sec", "secs", "second", "seconds");
            add(QuantityKind.TIME, "1", "1000", "ms");
            add(QuantityKind.TIME, "60", "1", "min", "mins", "minute", "minutes");
            add(QuantityKind.TIME, "3600", "1", "h", "hr", "hrs", "hour", "hours");
            add(QuantityKind.TIME, "86400", "1", "d", "day", "days");
            add(QuantityKind.MASS, "1", "1", "kg", "Kg", "KG", "kgs", "kilogram", "kilograms");
            add(QuantityKind.MASS, "1", "1000", "g", "gram", "grams");
            add(QuantityKind.FORCE, "1", "1", "N", "newton", "newtons");
            add(QuantityKind.FORCE, "1000", "1", "kN");
            add(QuantityKind.TORQUE, "1", "1", "N·m", "Nm", "N.m", "N m", "N*m");
            add(QuantityKind.POWER, "1", "1", "W", "w", "watt", "watts", "Watt", "Watts");
            add(QuantityKind.POWER, "1000", "1", "kW", "KW", "kw", "Kw", "kilowatt", "kilowatts");
            add(QuantityKind.ENERGY, "1", "1", "J");
            add(QuantityKind.ENERGY, "3600", "1", "Wh", "W·h", "wh", "WH");
            add(QuantityKind.ENERGY, "3.6e6", "1", "kWh", "kW·h", "kwh", "KWh", "KWH", "Kwh");
            add(QuantityKind.CURRENT, "1", "1", "A", "amp", "amps", "Amp", "Amps", "ampere", "amperes");
            add(QuantityKind.CURRENT, "1", "1000", "mA");
            add(QuantityKind.CURRENT, "1000", "1", "kA");
            add(
                    QuantityKind.VOLTAGE,
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
            add(QuantityKind.VOLTAGE, "1", "1000", "mV");
            add(QuantityKind.VOLTAGE, "1000", "1", "kV");
            add(QuantityKind.RESISTANCE, "1", "1", "\u03A9", "\u2126", "ohm", "Ohm", "OHM", "ohms", "Ohms", "OHMS");
            add(
                    QuantityKind.RESISTANCE,
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
            add(QuantityKind.INDUCTANCE, "1", "1", "H");
            add(QuantityKind.INDUCTANCE, "1", "1000", "mH");
            add(QuantityKind.INDUCTANCE, "1", "1e6", "\u00B5H", "\u03BCH", "uH");
            add(QuantityKind.CAPACITANCE, "1", "1", "F");
            add(QuantityKind.CAPACITANCE, "1", "1000", "mF");
            add(QuantityKind.CAPACITANCE, "1", "1e6", "\u00B5F", "\u03BCF", "uF");
            add(QuantityKind.CHARGE, "1", "1", "As", "A·s");
            add(QuantityKind.CHARGE, "3600", "1", "Ah", "A·h", "AH", "ah", "amp-hours", "amp hours");
            add(QuantityKind.CHARGE, "3.6", "1", "mAh");
            add(QuantityKind.FREQUENCY, "1", "1", "Hz", "hz", "HZ", "hertz");
            add(QuantityKind.FREQUENCY, "1000", "1", "kHz");
            add(QuantityKind.ROTATIONAL_SPEED, "1", "1", "rad/s");
            add(
                    QuantityKind.ROTATIONAL_SPEED,
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
            add(QuantityKind.ANGLE, "1", "1", "rad");
            add(QuantityKind.ANGLE, PI, "180", "°", "deg", "degree", "degrees");
            add(QuantityKind.RATIO, "1", "1", "");
            add(QuantityKind.RATIO, "1", "100", "%", "percent", "per cent");
            add(QuantityKind.THERMAL_RESISTANCE, "1", "1", "K/W", "°C/W", "degC/W");
            add(QuantityKind.SPEED_PER_VOLTAGE, "1", "1", "rad/s/V");
            add(QuantityKind.SPEED_PER_VOLTAGE, PI, "30", "rpm/V", "RPM/V", "rpm/v", "KV", "Kv", "kv");
            add(QuantityKind.VOLTAGE_PER_TEMPERATURE, "1", "1", "V/K", "V/°C");
            add(QuantityKind.VOLTAGE_PER_TEMPERATURE, "1", "1000", "mV/K", "mV/°C");
            add(QuantityKind.CONDUCTIVITY, "1", "1", "S/m");
            add(QuantityKind.CONDUCTIVITY, "1", "10000", "\u00B5S/cm", "\u03BCS/cm", "uS/cm");
            add(QuantityKind.CONDUCTIVITY, "1", "10", "mS/cm");
            add(QuantityKind.SHARE_PER_TEMPERATURE, "1", "1", "1/K");
            add(QuantityKind.SHARE_PER_TEMPERATURE, "1", "100", "%/K", "%/°C");
            add(QuantityKind.INERTIA, "1", "1", "kg·m²", "kg.m²", "kg·m2", "kg.m2", "kgm2", "kgm²", "kg m2", "kg m²");
            add(QuantityKind.INERTIA, "1", "1e4", "kg·cm²", "kg.cm²", "kg.cm2");
        }

        void add(QuantityKind kind, String times, String by, String... spellings) {
            register(kind, times, by, "0", spellings);
        }

        void addOffset(QuantityKind kind, String offset, String... spellings) {
            register(kind, "1", "1", offset, spellings);
        }

        private void register(QuantityKind kind, String times, String by, String offset, String... spellings) {
            // one unit for a symbol of two kinds: of the same object the first kind is found
            Once<Unit<?>> unit =
                    bySymbol.computeIfAbsent(spellings[0], symbol -> new Once<>(() -> MeasuringUnits.of(symbol)));
            byKind.computeIfAbsent(kind, k -> new ArrayList<>())
                    .add(new TradeUnit(
                            kind,
                            List.of(spellings),
                            unit,
                            new BigDecimal(times),
                            new BigDecimal(by),
                            new BigDecimal(offset)));
        }
    }
}
