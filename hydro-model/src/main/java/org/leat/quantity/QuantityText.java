package org.leat.quantity;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.measure.Quantity;
import javax.measure.quantity.Area;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * Reads and prints quantities: {@code "1.8 L/s"}, {@code "63 mm"}, {@code "16.5 m ± 0.3 m"}. A decimal point only, no
 * locale anywhere; what is printed reads back equal.
 */
@API(status = API.Status.STABLE, since = "0.1")
public final class QuantityText {

    private static final String NUMBER = "[+-]?\\d{1,15}(?:\\.\\d{1,33})?(?:[eE][+-]?\\d{1,4})?";
    private static final Pattern QUANTITY = Pattern.compile("(" + NUMBER + ")[ \\u00a0\\u202f]?(\\D.{0,15}|)");
    private static final Pattern PLUS_MINUS = Pattern.compile("\\s*(?:\\u00b1|\\+/-|\\+-)\\s*");
    private static final Pattern WIRE_GAUGE = Pattern.compile("(?:AWG ?(\\d{1,2}|[1-4]/0)|(\\d{1,2}|[1-4]/0) ?AWG)");
    private static final Pattern NOMINAL_PRESSURE = Pattern.compile("PN ?(\\d{1,2}(?:\\.\\d{1,2})?)");

    private QuantityText() {}

    /** What came of reading a text. */
    public sealed interface Reading {}

    /** The text is a quantity of the wanted kind. */
    public record Understood(Measured<?> measured) implements Reading {}

    /**
     * The text is not a quantity of the wanted kind.
     *
     * @param why what is wrong, in a few words
     * @param fitting the units that would fit, as they are printed
     */
    public record Refused(Why why, List<String> fitting) implements Reading {}

    /** Why a text was refused. */
    public enum Why {
        NOT_A_NUMBER,
        DECIMAL_COMMA,
        NO_UNIT,
        UNKNOWN_UNIT,
        OTHER_KIND,
        TOLERANCE_NEGATIVE,
        TOO_LARGE
    }

    /** {@return what the text says as a quantity of that kind} */
    public static Reading read(String text, QuantityKind kind) {
        String stripped = text.strip();
        boolean tolerance = stripped.indexOf('\u00b1') >= 0 || stripped.indexOf('+', 1) >= 0;
        String[] parts = tolerance ? PLUS_MINUS.split(stripped, 2) : new String[] {stripped};
        Object value = one(parts[0], kind, false);
        if (value instanceof Refused refused) {
            return refused;
        }
        Quantity<?> plusMinus = null;
        if (parts.length == 2) {
            QuantityKind differenceKind = kind == QuantityKind.TEMPERATURE ? QuantityKind.TEMPERATURE_DIFFERENCE : kind;
            Object spread = one(parts[1], differenceKind, true);
            if (spread instanceof Refused refused) {
                return refused;
            }
            plusMinus = (Quantity<?>) spread;
        }
        return new Understood(measured((Quantity<?>) value, plusMinus));
    }

    /** {@return the units of a kind as they are printed, for messages} */
    public static List<String> fitting(QuantityKind kind) {
        return TradeUnits.of(kind).stream()
                .map(TradeUnit::symbol)
                .filter(symbol -> !symbol.isEmpty())
                .toList();
    }

    /** {@return the quantity in text that {@link #read} reads back equal} */
    public static String print(Quantity<?> quantity) {
        TradeUnit unit = TradeUnits.find(quantity.getUnit());
        if (unit == null) {
            throw new IllegalArgumentException("not a unit of the trade: " + quantity.getUnit());
        }
        String number = plain(Si.decimal(quantity.getValue()));
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    /** {@return value and tolerance in text that {@link #read} reads back equal} */
    public static String print(Measured<?> measured) {
        Quantity<?> plusMinus = measured.plusMinus();
        String value = print(measured.value());
        return plusMinus == null ? value : value + " \u00b1 " + print(plusMinus);
    }

    /**
     * {@return an SI value in a unit, rounded to significant digits, for people}
     *
     * @param si the value in the kind's SI unit
     * @param symbol a spelling of the kind
     * @param digits significant digits, at least one
     */
    public static String show(double si, QuantityKind kind, String symbol, int digits) {
        TradeUnit unit = TradeUnits.find(kind, symbol);
        if (unit == null) {
            throw new IllegalArgumentException("not a unit of " + kind.label() + ": " + symbol);
        }
        if (!Double.isFinite(si)) {
            return String.format(Locale.ROOT, "%s %s", si > 0 ? "unlimited" : "undefined", unit.symbol())
                    .strip();
        }
        double value = unit.fromSi(si);
        // the last bit of a temperature in K is no temperature in °C
        boolean nothing = unit.offset().signum() != 0 && Math.abs(value) < 1e-9;
        String number = plain(nothing ? BigDecimal.ZERO : new BigDecimal(value).round(new MathContext(digits)));
        return unit.symbol().isEmpty() ? number : number + " " + unit.symbol();
    }

    private static String plain(BigDecimal value) {
        if (value.signum() == 0) {
            return "0";
        }
        BigDecimal stripped = value.stripTrailingZeros();
        // within what the number pattern reads; beyond it the scientific form does
        boolean readable = stripped.scale() <= 18 && stripped.precision() - stripped.scale() <= 15;
        return readable ? stripped.toPlainString() : scientific(stripped.round(MathContext.DECIMAL128));
    }

    private static String scientific(BigDecimal value) {
        String digits = value.unscaledValue().abs().toString();
        String fraction = digits.length() == 1 ? "" : "." + digits.substring(1);
        String sign = value.signum() < 0 ? "-" : "";
        return sign + digits.charAt(0) + fraction + "E" + (digits.length() - 1 - value.scale());
    }

    private static Object one(String text, QuantityKind kind, boolean tolerance) {
        if (kind == QuantityKind.AREA
                && text.contains("AWG")
                && WIRE_GAUGE.matcher(text).matches()) {
            return wireGauge(text);
        }
        if (kind == QuantityKind.PRESSURE && text.startsWith("PN")) {
            Matcher nominal = NOMINAL_PRESSURE.matcher(text);
            if (nominal.matches()) {
                TradeUnit bar = TradeUnits.find(QuantityKind.PRESSURE, "bar");
                return ofUnit(new BigDecimal(nominal.group(1)), Objects.requireNonNull(bar));
            }
        }
        Matcher m = QUANTITY.matcher(text);
        if (!m.matches()) {
            return refused(Why.NOT_A_NUMBER, kind);
        }
        String spelling = m.group(2).strip();
        if (spelling.startsWith(",")) {
            return refused(Why.DECIMAL_COMMA, kind);
        }
        TradeUnit unit = TradeUnits.find(kind, spelling);
        if (unit == null) {
            Why why = spelling.isEmpty()
                    ? Why.NO_UNIT
                    : TradeUnits.find(spelling).isEmpty() ? Why.UNKNOWN_UNIT : Why.OTHER_KIND;
            return refused(why, kind);
        }
        BigDecimal value = new BigDecimal(m.group(1));
        if (tolerance && value.signum() < 0) {
            return refused(Why.TOLERANCE_NEGATIVE, kind);
        }
        if (!(Math.abs(unit.toSi(value)) <= 1e30)) {
            return refused(Why.TOO_LARGE, kind);
        }
        return ofUnit(value, unit);
    }

    private static Quantity<?> wireGauge(String text) {
        String gauge = text.replace("AWG", "").strip();
        return wireGauge(gauge.endsWith("/0") ? 1 - Integer.parseInt(gauge.substring(0, 1)) : Integer.parseInt(gauge));
    }

    /** American wire gauge: diameter 0.127 mm · 92^((36 − n)/39) (ASTM B258), n/0 counting down from zero. */
    static Quantity<Area> wireGauge(int n) {
        double diameter = 0.127 * Math.pow(92, (36 - n) / 39.0);
        BigDecimal area = new BigDecimal(Math.PI / 4 * diameter * diameter).round(new MathContext(6));
        TradeUnit squareMillimetre = TradeUnits.find(QuantityKind.AREA, "mm2");
        return Si.quantity(area, Objects.requireNonNull(squareMillimetre));
    }

    private static Refused refused(Why why, QuantityKind kind) {
        return new Refused(why, fitting(kind));
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // value and tolerance were both read as the wanted kind
    private static Measured<?> measured(Quantity value, @Nullable Quantity plusMinus) {
        return new Measured(value, plusMinus);
    }

    @SuppressWarnings({"unchecked", "rawtypes"})
    private static Quantity<?> ofUnit(BigDecimal value, TradeUnit unit) {
        return (Quantity) Si.quantity(value, unit);
    }
}
