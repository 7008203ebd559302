package org.leat.file;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.TradeUnits;
import org.snakeyaml.engine.v2.nodes.Tag;
import org.snakeyaml.engine.v2.resolver.CoreScalarResolver;

/** Binds plain values, strictly by YAML's core schema. */
final class Scalars {

    private static final Pattern DECIMAL_COMMA = Pattern.compile("[+-]?\\d+,\\d+.{0,20}");
    private static final Pattern ENDLESS = Pattern.compile("[+-]?(\\.?inf(inity)?|\\.?nan)\\b.{0,20}");
    /** A day, or the moment that a logger writes, of which the day counts. */
    private static final Pattern DAY = Pattern.compile(
            "(\\d{4}-\\d{2}-\\d{2})(?:[T ](\\d{2}:\\d{2}(?::\\d{2}(?:[.]\\d{1,9})?)?) ?(?:Z|[+-]\\d{2}:?\\d{2})?)?");

    private static final Pattern WHOLE = Pattern.compile("[+-]?\\d{1,9}\\.0+");
    private static final CoreScalarResolver TYPES = new CoreScalarResolver(false);
    private static final int LONGEST_NUMBER = 40;

    private final Problems problems;

    Scalars(Problems problems) {
        this.problems = problems;
    }

    /** @param around what may stand around a plain number in this field; null for nothing */
    Object bind(ValueType type, Node.Scalar given, String path, @Nullable String around) {
        String bare = type == ValueType.Simple.NUMBER ? WaysWritten.number(around, given.text()) : null;
        Node.Scalar node =
                bare == null ? given : new Node.Scalar(bare, TYPES.resolve(bare, true), given.inline(), given.at());
        if (node.isNull()) {
            problems.add(ProblemKind.NO_VALUE, node.at(), path, "", type.label());
            return Binder.Failed.ONE;
        }
        if (type instanceof ValueType.OfQuantity quantity) {
            return quantity(quantity, node, path);
        }
        if (type instanceof ValueType.OfWord word) {
            return word(word, node, path);
        }
        return switch ((ValueType.Simple) type) {
            case WHOLE -> whole(node, path);
            case NUMBER -> number(node, path);
            case YES_NO ->
                node.tag().equals(Tag.BOOL)
                        ? (Object) node.text().toLowerCase(Locale.ROOT).equals("true")
                        : fail(ProblemKind.NOT_YES_NO, node, path, type);
            case TEXT ->
                node.tag().equals(Tag.STR)
                        ? node.text()
                        : fail(ProblemKind.NOT_TEXT, node, path, ValueType.Simple.TEXT);
            case DAY -> day(node, path);
            case PLAIN -> new PlainValue(node.text());
        };
    }

    private Object fail(ProblemKind kind, Node.Scalar node, String path, ValueType type) {
        String cells = path.endsWith("/cells-in-series") ? FieldSlips.cells(node.text()) : "";
        String cure = problems.full() ? "" : cells.isEmpty() ? Correction.plain(type, node.text()) : cells;
        problems.add(kind, node.at(), path, node.text(), type.label(), cure, List.of());
        return Binder.Failed.ONE;
    }

    private Object word(ValueType.OfWord type, Node.Scalar node, String path) {
        String text = node.text();
        Object constant = type.words().get(text);
        if (constant == null) {
            constant = WaysWritten.meant(type.ways(), text); // PE100, XLPE, MPPT as people write them
        }
        if (constant != null) {
            return constant;
        }
        List<String> words = List.copyOf(type.words().keySet());
        problems.add(
                ProblemKind.UNKNOWN_WORD,
                node.at(),
                path,
                text,
                "one of the words",
                problems.full() ? "" : Names.nearest(text, words),
                words);
        return Binder.Failed.ONE;
    }

    private Object whole(Node.Scalar node, String path) {
        if (node.tag().equals(Tag.FLOAT) && WHOLE.matcher(node.text()).matches()) {
            return whole(new Node.Scalar(node.text().replaceFirst("\\.0+$", ""), Tag.INT, false, node.at()), path);
        }
        if (!node.tag().equals(Tag.INT)) {
            return fail(wrongNumber(node, ProblemKind.NOT_WHOLE), node, path, ValueType.Simple.WHOLE);
        }
        BigInteger value = integer(node.text());
        if (value == null || value.bitLength() > 31) {
            return fail(ProblemKind.NOT_FINITE, node, path, ValueType.Simple.WHOLE);
        }
        return value.intValue();
    }

    private Object number(Node.Scalar node, String path) {
        String text = node.text();
        double value;
        if (node.tag().equals(Tag.INT)) {
            BigInteger integer = integer(text);
            value = integer == null ? Double.NaN : integer.doubleValue();
        } else if (!node.tag().equals(Tag.FLOAT)) {
            return fail(wrongNumber(node, ProblemKind.NOT_A_NUMBER), node, path, ValueType.Simple.NUMBER);
        } else if (text.length() > LONGEST_NUMBER
                || ENDLESS.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
            value = Double.NaN;
        } else {
            value = Double.parseDouble(text);
        }
        return Double.isFinite(value) ? value : fail(ProblemKind.NOT_FINITE, node, path, ValueType.Simple.NUMBER);
    }

    private static ProblemKind wrongNumber(Node.Scalar node, ProblemKind otherwise) {
        return DECIMAL_COMMA.matcher(node.text()).matches() ? ProblemKind.DECIMAL_COMMA : otherwise;
    }

    /** An integer of the core schema; null if it is longer than any that fits. */
    private static @Nullable BigInteger integer(String text) {
        if (text.length() > LONGEST_NUMBER) {
            return null;
        }
        if (text.startsWith("0x")) {
            return new BigInteger(text.substring(2), 16);
        }
        return text.startsWith("0o") ? new BigInteger(text.substring(2), 8) : new BigDecimal(text).toBigIntegerExact();
    }

    private Object day(Node.Scalar node, String path) {
        try {
            Matcher written = DAY.matcher(node.text());
            if (written.matches()) {
                if (written.group(2) != null) {
                    LocalTime.parse(written.group(2));
                }
                return LocalDate.parse(written.group(1));
            }
        } catch (DateTimeParseException e) {
            // no such day in the calendar, or no such time of it
        }
        return fail(ProblemKind.NOT_A_DAY, node, path, ValueType.Simple.DAY);
    }

    private Object quantity(ValueType.OfQuantity type, Node.Scalar node, String path) {
        return quantity(type, node.text(), node.at(), path);
    }

    Object quantity(ValueType.OfQuantity type, String text, Position at, String path) {
        QuantityKind kind = type.kind();
        String label = type.label();
        QuantityText.Reading reading = QuantityText.read(text, kind);
        if (reading instanceof QuantityText.Refused refused) {
            ProblemKind why = why(refused.why(), text);
            String hint = why == ProblemKind.WRONG_UNIT ? measured(text) : "";
            if (hint.isEmpty()) {
                String cure = problems.full() ? "" : Correction.quantity(text, kind, type.measured());
                String part = why == ProblemKind.WRONG_UNIT && cure.isEmpty() ? measuredByPart(text, kind) : "";
                hint = part.isEmpty() ? cure : part;
                why = why == ProblemKind.WRONG_UNIT && part.isEmpty() ? ProblemKind.UNKNOWN_UNIT : why;
            }
            List<String> choices = switch (why) {
                case NO_UNIT, UNKNOWN_UNIT, WRONG_UNIT, NOT_A_QUANTITY -> refused.fitting();
                default -> List.of();
            };
            problems.add(why, at, path, text, label, hint, choices);
            return Binder.Failed.ONE;
        }
        var measured = ((QuantityText.Understood) reading).measured();
        if (type.measured()) {
            return measured;
        }
        if (measured.plusMinus() != null) {
            String value = QuantityText.print(measured.value());
            problems.add(ProblemKind.TOLERANCE, at, path, text, label, value, List.of());
            return Binder.Failed.ONE;
        }
        return measured.value();
    }

    private static ProblemKind why(QuantityText.Why why, String text) {
        if (text.length() <= LONGEST_NUMBER
                && ENDLESS.matcher(text.toLowerCase(Locale.ROOT)).matches()) {
            return ProblemKind.NOT_FINITE;
        }
        return switch (why) {
            case NOT_A_NUMBER -> ProblemKind.NOT_A_QUANTITY;
            case DECIMAL_COMMA -> ProblemKind.DECIMAL_COMMA;
            case NO_UNIT -> ProblemKind.NO_UNIT;
            case UNKNOWN_UNIT -> ProblemKind.UNKNOWN_UNIT;
            case OTHER_KIND -> ProblemKind.WRONG_UNIT;
            case TOLERANCE_NEGATIVE -> ProblemKind.NEGATIVE_TOLERANCE;
            case TOO_LARGE -> ProblemKind.NOT_FINITE;
        };
    }

    /** With a tolerance in another unit than the value: what the one that is not wanted measures, in words. */
    private static String measuredByPart(String text, QuantityKind wanted) {
        return Correction.valueAndTolerance(text).stream()
                .filter(part -> !(QuantityText.read(part, wanted) instanceof QuantityText.Understood))
                .map(Scalars::measured)
                .filter(said -> !said.isEmpty())
                .findFirst()
                .orElse("");
    }

    /** What the unit in a text measures, in words. */
    private static String measured(String text) {
        for (QuantityKind kind : QuantityKind.values()) {
            if (!TradeUnits.of(kind).isEmpty() && QuantityText.read(text, kind) instanceof QuantityText.Understood) {
                return ValueType.OfQuantity.label(kind);
            }
        }
        return "";
    }
}
