package org.leat.report;

import org.apiguardian.api.API;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;

/** The unit in which people read a quantity when a text names none. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class UsualUnits {

    private static final int DIGITS = 3;

    private UsualUnits() {}

    /** {@return a value in a unit that keeps its number readable} */
    public static String show(double si, QuantityKind kind) {
        return show(si, kind, DIGITS);
    }

    /** {@return a value in a unit that keeps its number readable, with so many significant digits} */
    public static String show(double si, QuantityKind kind, int digits) {
        return show(si, kind, unit(kind, Math.abs(si)), digits);
    }

    /** {@return a value in the unit that suits another of its kind} */
    public static String alike(double si, double other, QuantityKind kind) {
        return show(si, kind, unit(kind, Math.abs(other)), DIGITS);
    }

    /** {@return a value in a unit, with so many significant digits; digits before the point are never cut} */
    public static String show(double si, QuantityKind kind, String unit, int digits) {
        if (!Double.isFinite(si)) {
            return Double.isNaN(si) ? "unknown" : si > 0 ? "without limit" : "below any limit";
        }
        // a text may ask for what is no unit of that kind
        String known = TradeUnits.find(kind, unit) == null ? unit(kind, Math.abs(si)) : unit;
        return QuantityText.show(si, kind, known, Math.max(digits, whole(si, kind, known)));
    }

    private static int whole(double si, QuantityKind kind, String unit) {
        TradeUnit trade = TradeUnits.find(kind, unit);
        double value = trade == null ? si : Math.abs(trade.fromSi(si));
        return value < 1 ? 1 : (int) Math.min(15, Math.floor(Math.log10(value)) + 1);
    }

    private static String unit(QuantityKind kind, double si) {
        return switch (kind) {
            case LENGTH -> si < 1 ? "mm" : "m";
            case AREA -> si < 0.01 ? "mm²" : "m²";
            case VOLUME -> si < 1 ? "L" : "m³";
            case VOLUME_FLOW -> "L/s";
            case SPEED -> "m/s";
            case PRESSURE -> si > 1e8 ? "MPa" : "bar";
            case TEMPERATURE -> "°C";
            case TEMPERATURE_DIFFERENCE -> "K";
            case TIME -> si < 7200 ? "s" : "h";
            case MASS -> si < 1 ? "g" : "kg";
            case FORCE -> si < 10_000 ? "N" : "kN";
            case TORQUE -> "N·m";
            case POWER -> si < 10_000 ? "W" : "kW";
            case ENERGY -> si < 36e6 ? "Wh" : "kWh";
            case CURRENT -> si < 0.1 ? "mA" : si < 10_000 ? "A" : "kA";
            case VOLTAGE -> si < 0.1 ? "mV" : "V";
            case RESISTANCE -> si < 0.1 ? "m\u03A9" : "\u03A9";
            case INDUCTANCE -> "mH";
            case CAPACITANCE -> "\u00B5F";
            case CHARGE -> "Ah";
            case FREQUENCY -> "Hz";
            case ROTATIONAL_SPEED -> "rpm";
            case ANGLE -> "°";
            case RATIO -> "";
            case THERMAL_RESISTANCE -> "K/W";
            case SPEED_PER_VOLTAGE -> "rpm/V";
            case VOLTAGE_PER_TEMPERATURE -> "mV/K";
            case CONDUCTIVITY -> "\u00B5S/cm";
            case SHARE_PER_TEMPERATURE -> "%/K";
            case INERTIA -> "kg·m²";
        };
    }
}
