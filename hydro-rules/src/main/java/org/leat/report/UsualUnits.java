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
    private static final int MOST_WHOLE = 4;
    private static final double MOST_PERCENT = 1000;
    /** No quantity of a plant reaches it in any unit: what does is one over nothing. */
    private static final double BEYOND_ALL = 1e16;

    private static final double UNFIT = 10_000;

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

    /**
     * {@return a value in a unit, with so many significant digits} Of the digits before the point four are shown at most, the
     * rest are noughts; what is too small or too large for the unit asked for is shown in the usual one; what is nothing but
     * the rounding of a sum is nought.
     */
    public static String show(double si, QuantityKind kind, String unit, int digits) {
        if (!Double.isFinite(si) || Math.abs(si) > BEYOND_ALL) {
            return Double.isNaN(si) ? "unknown" : si > 0 ? "without limit" : "below any limit";
        }
        String known = fitting(si, kind, unit);
        double value = in(si, kind, known);
        if (Math.abs(value) < least(kind)) {
            TradeUnit trade = TradeUnits.find(kind, known);
            return trade == null || trade.symbol().isEmpty() ? "0" : "0 " + trade.symbol();
        }
        if (kind == QuantityKind.RATIO && known.equals("%") && Math.abs(value) > MOST_PERCENT) {
            return QuantityText.show(si, kind, "", Math.max(digits, whole(si))) + " times";
        }
        int most = Math.max(
                kind == QuantityKind.TEMPERATURE ? tenths(value, digits) : digits, Math.min(MOST_WHOLE, whole(value)));
        return QuantityText.show(si, kind, known, most);
    }

    /** {@return the unit asked for, or the usual one where a text asks for none of that kind or the number would not suit it} */
    private static String fitting(double si, QuantityKind kind, String unit) {
        if (TradeUnits.find(kind, unit) == null) {
            return unit(kind, Math.abs(si));
        }
        double asked = Math.abs(in(si, kind, unit));
        String usual = unit(kind, Math.abs(si));
        double shown = Math.abs(in(si, kind, usual));
        boolean unfit = asked >= UNFIT || (asked > 0 && asked < 1 / UNFIT);
        return kind != QuantityKind.RATIO && unfit && shown < UNFIT && shown >= 1 / UNFIT ? usual : unit;
    }

    private static double in(double si, QuantityKind kind, String unit) {
        TradeUnit trade = TradeUnits.find(kind, unit);
        return trade == null ? si : trade.fromSi(si);
    }

    /** What is less in a trade unit is a rounded sum. */
    private static double least(QuantityKind kind) {
        return kind == QuantityKind.TEMPERATURE ? 0.05 : 1e-6;
    }

    /** Nobody reads a hundredth of a degree, unless more digits are asked for to tell two temperatures apart. */
    private static int tenths(double value, int digits) {
        boolean small = Math.abs(value) < 1;
        return digits > DIGITS ? digits : small ? 1 : Math.min(digits, whole(value) + 1);
    }

    private static int whole(double value) {
        double size = Math.abs(value);
        return size < 1 ? 1 : (int) Math.min(15, Math.floor(Math.log10(size)) + 1);
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
            case TIME -> si < 300 ? "s" : si < 7200 ? "min" : "h";
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
