package org.leat.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.QuantityText.Understood;

/** The very words to write in place of a slip, where they can be known; both where it may be one of two. Else empty. */
final class Correction {

    private static final int LONGEST = 60;
    private static final String N = "([+-]?\\d{1,15}(?:\\.\\d{1,30})?)";
    private static final Pattern COMMA = Pattern.compile("([+-]?\\d{1,15}(?:\\.\\d{3})*),(\\d{1,15})(?!\\d)([^,]*)");
    private static final Pattern ABOUT =
            Pattern.compile("(?i)(?:~|≈|ca\\.?|circa|about|approx\\.?|approximately|max\\.?|min\\.?|=)\\s*(\\S.*)");
    private static final Pattern RANGE =
            Pattern.compile(N + "\\s*(\\D{0,15}?)\\s*(?:-|–|to|\\.\\.+|…)\\s*" + N + "\\s*(\\D.{0,15})");
    private static final Pattern TOLERANCE = Pattern.compile("(.+?)\\s*(?:±|\\+/-|\\+-)\\s*(.+)");
    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,4})[ -])?(\\d{1,3})/(\\d{1,3})\\s*(\\D.*)");
    private static final Pattern TURNED = Pattern.compile(N + "\\s*V/(k?)rpm");
    private static final Pattern COUNTED = Pattern.compile(
            "(?i)" + N
                    + "\\s*(?:|x|×|s|pcs?\\.?|pieces?|off|nos?\\.?|times|fold|cells?|pairs?|pole[- ]pairs|holes|buckets|cups|strings?|bolts|stk)");
    private static final Set<String> YES = Set.of("true", "yes", "y", "on", "1", "ja", "oui", "si");
    private static final Set<String> NO = Set.of("false", "no", "n", "off", "0", "nein", "non", "none");

    private Correction() {}

    /** {@return both halves of what is written with a tolerance; nothing where there is none} */
    static List<String> valueAndTolerance(String text) {
        Matcher written = TOLERANCE.matcher(text);
        return written.matches() ? List.of(written.group(1), written.group(2)) : List.of();
    }

    /** {@return a quantity's words} */
    static String quantity(String given, QuantityKind kind, boolean measured) {
        String text = given.strip();
        if (text.length() > LONGEST) {
            return "";
        }
        String tolerance = tolerance(text, kind);
        if (!tolerance.isEmpty()) {
            return measured ? tolerance : TOLERANCE.matcher(tolerance).replaceFirst("$1");
        }
        for (String tried : tries(text, kind)) {
            if (!tried.isEmpty() && reads(tried, kind)) {
                return tried;
            }
        }
        String comma = comma(text);
        if (!comma.isEmpty()) {
            String first = comma.split("\" or \"", 2)[0];
            return reads(first, kind)
                    ? comma
                    : ReplacedUnits.of(first, kind).isEmpty() ? "" : ReplacedUnits.of(first, kind);
        }
        return range(text, kind, measured);
    }

    private static List<String> tries(String text, QuantityKind kind) {
        List<String> tries = new ArrayList<>();
        Matcher about = ABOUT.matcher(text);
        if (about.matches()) {
            tries.add(about.group(1));
        }
        tries.add(text.replaceFirst("^([+-]?)\\.(\\d)", "$10.$2")); // .5 m
        tries.add(text.replaceFirst("^([+-]?\\d+)\\.(?!\\d)", "$1")); // 5. m
        Matcher thousands =
                Pattern.compile("(\\d{1,3}(?:[ '_’]\\d{3})+)(?!\\d)(.*)").matcher(text);
        if (thousands.matches()) {
            tries.add(thousands.group(1).replaceAll("\\D", "") + thousands.group(2));
        }
        tries.add(text.replaceFirst("\\s*(?:\"|''|″|”|“)$", " in"));
        tries.add(text.replaceFirst("\\s*(?:'|′|’)$", " ft"));
        tries.add(fraction(text));
        tries.add(text.replaceFirst("^(\\D{1,12}?)\\s*" + N + "$", "$2 $1")); // mm 8
        tries.add(text.replaceFirst("^\\D{1,20}[=:]?\\s+(?=\\d)", "")); // length 8 m
        Matcher turned = TURNED.matcher(text);
        if (kind == QuantityKind.SPEED_PER_VOLTAGE && turned.matches() && Double.parseDouble(turned.group(1)) > 0) {
            double perVolt = (turned.group(2).isEmpty() ? 1 : 1000) / Double.parseDouble(turned.group(1));
            tries.add(ReplacedUnits.rounded(perVolt) + " rpm/V");
        }
        tries.add(ReplacedUnits.of(text, kind));
        tries.add(sameLetters(text, kind));
        for (int cut = text.lastIndexOf(' '); cut > 0; cut = text.lastIndexOf(' ', cut - 1)) {
            if (!text.substring(cut).matches(".*\\d.*")) {
                tries.add(text.substring(0, cut)); // 84 m long
            }
        }
        tries.add(text.replaceFirst("[.;,]+$", ""));
        return tries;
    }

    /** A unit in other letters, where only one is meant: m and M, thousandth and million, are never taken for each other. */
    private static String sameLetters(String text, QuantityKind kind) {
        Matcher m = Pattern.compile(N + "\\s*(\\D.*)").matcher(text);
        if (!m.matches() || m.group(2).matches("[mM]\\p{L}.*")) {
            return "";
        }
        List<String> alike = QuantityText.fitting(kind).stream()
                .filter(unit -> unit.equalsIgnoreCase(m.group(2)))
                .toList();
        return alike.size() == 1 ? m.group(1) + " " + alike.get(0) : "";
    }

    private static String fraction(String text) {
        String plain = text.replace("½", " 1/2")
                .replace("¼", " 1/4")
                .replace("¾", " 3/4")
                .strip();
        Matcher m = FRACTION.matcher(plain.replaceFirst("\\s*(?:\"|''|″|”)$", " in"));
        if (!m.matches() || Integer.parseInt(m.group(3)) == 0) {
            return "";
        }
        double whole = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
        return ReplacedUnits.rounded(whole + Double.parseDouble(m.group(2)) / Double.parseDouble(m.group(3))) + " "
                + m.group(4).strip();
    }

    /** A value with a tolerance that lacks its unit or is a share. */
    private static String tolerance(String text, QuantityKind kind) {
        Matcher m = TOLERANCE.matcher(text);
        if (!m.matches()) {
            return "";
        }
        String value = m.group(1).strip();
        String spread = m.group(2).strip().replaceFirst("^-", "");
        if (!reads(value, kind)) {
            String unit = spread.replaceFirst("^[\\d.]+\\s*", "");
            return reads(value + " " + unit, kind) && reads(spread, kind) ? value + " " + unit + " ± " + spread : "";
        }
        String unit = value.replaceFirst("^[+-]?[\\d.]+\\s*", "");
        Matcher share = Pattern.compile(N + "\\s*%").matcher(spread);
        if (share.matches() && kind != QuantityKind.RATIO) {
            double part = Math.abs(Double.parseDouble(value.replaceFirst("[^\\d.+-].*", "")))
                    * Double.parseDouble(share.group(1))
                    / 100;
            return value + " ± " + ReplacedUnits.rounded(part) + " " + unit;
        }
        QuantityKind spreadKind = kind == QuantityKind.TEMPERATURE ? QuantityKind.TEMPERATURE_DIFFERENCE : kind;
        String bare = kind == QuantityKind.TEMPERATURE ? "K" : unit;
        return spread.matches("[\\d.]+") && reads(spread + " " + bare, spreadKind)
                ? value + " ± " + spread + " " + bare
                : reads(value + " ± " + spread, kind) ? value + " ± " + spread : "";
    }

    private static String range(String text, QuantityKind kind, boolean measured) {
        Matcher m = RANGE.matcher(text);
        if (!m.matches() || !reads(m.group(3) + " " + m.group(4), kind)) {
            return "";
        }
        double low = Double.parseDouble(m.group(1));
        double high = Double.parseDouble(m.group(3));
        String unit = " " + m.group(4).strip();
        return measured && high > low
                ? ReplacedUnits.rounded((low + high) / 2) + unit + " ± " + ReplacedUnits.rounded((high - low) / 2)
                        + unit
                : or(m.group(1) + unit, m.group(3) + unit);
    }

    /** {@return a number with a decimal comma with its point, or as the two numbers it may be} */
    static String comma(String given) {
        Matcher m = COMMA.matcher(given.strip());
        if (!m.matches()) {
            return "";
        }
        String whole = m.group(1);
        String rest = m.group(3);
        if (whole.contains(".")) {
            return whole.replace(".", "") + "." + m.group(2) + rest; // 1.234,5 m
        }
        String point = whole + "." + m.group(2) + rest;
        boolean thousands = m.group(2).length() == 3 && whole.matches("[+-]?[1-9]\\d{0,2}");
        return thousands ? or(point, whole + m.group(2) + rest) : point;
    }

    /** {@return one of two, as problems print it} */
    static String or(String one, String other) {
        return one + "\" or \"" + other;
    }

    /** {@return a plain value's words} */
    static String plain(ValueType type, String given) {
        String text = given.strip();
        if (text.length() > LONGEST || !(type instanceof ValueType.Simple simple)) {
            return "";
        }
        return switch (simple) {
            case WHOLE, NUMBER -> number(text, simple == ValueType.Simple.WHOLE);
            case YES_NO -> {
                String word = text.toLowerCase(Locale.ROOT);
                yield YES.contains(word) ? "true" : NO.contains(word) ? "false" : "";
            }
            case TEXT -> "'" + text + "'";
            case DAY -> Days.written(text);
            case PLAIN -> "";
        };
    }

    private static String number(String text, boolean whole) {
        String comma = comma(text.replaceFirst("[^\\d.,]+$", ""));
        if (!comma.isEmpty()) {
            return comma;
        }
        Matcher share = Pattern.compile(N + "\\s*(?:%|percent)").matcher(text);
        if (!whole && share.matches()) {
            return ReplacedUnits.rounded(Double.parseDouble(share.group(1)) / 100);
        }
        Matcher m = COUNTED.matcher(text);
        if (m.matches() && (!whole || !m.group(1).contains("."))) {
            return m.group(1);
        }
        return !whole && text.matches("\\.\\d{1,9}") ? "0" + text : "";
    }

    /** {@return a list's words where several items stand in one value} */
    static String list(ValueType item, String given) {
        if (given.length() > 200 || !(item instanceof ValueType.OfQuantity quantity) || reads(given, quantity.kind())) {
            return "";
        }
        String[] parts = given.strip().split("\\s*(?:,|;|/|\\+|&|\\band\\b|\\bund\\b)\\s*", -1);
        String unit = parts[parts.length - 1].replaceFirst("^[\\d.]+\\s*", "");
        List<String> items = new ArrayList<>();
        for (String part : parts) {
            String whole = part.matches("[\\d.]+") ? part + " " + unit : part;
            if (!reads(whole, quantity.kind())) {
                return times(given, quantity.kind());
            }
            items.add(whole);
        }
        boolean comma = parts.length == 2 && given.strip().matches("\\d+,\\d+ ?[^\\d.].*");
        String list = "[" + String.join(", ", items) + "]";
        return comma ? or(comma(given), list) : list;
    }

    /** 2 x 8 mm: the same item several times. */
    private static String times(String given, QuantityKind kind) {
        Matcher m = Pattern.compile("([1-9])\\s*[x×*]\\s*(\\S.*)").matcher(given.strip());
        if (!m.matches() || !reads(m.group(2), kind)) {
            return "";
        }
        return "[" + String.join(", ", java.util.Collections.nCopies(Integer.parseInt(m.group(1)), m.group(2))) + "]";
    }

    /** {@return what to write in place of a list of one where no list belongs, or of a value where a mapping of it does} */
    static String shape(ValueType type, Node node) {
        if (node instanceof Node.Scalar scalar) {
            return mapping(type, scalar.text().strip());
        }
        return node instanceof Node.Items items
                        && items.items().size() == 1
                        && items.items().get(0) instanceof Node.Scalar only
                        && type instanceof ValueType.OfQuantity quantity
                        && reads(only.text(), quantity.kind())
                ? only.text()
                : "";
    }

    /** {@return the mapping whose one required field can hold the value, where only one can} */
    private static String mapping(ValueType type, String text) {
        List<String> fitting = new ArrayList<>();
        if (type instanceof ValueType.OfRecord record) {
            around(Shape.of(record.type()), "", text).ifPresent(fitting::add);
        } else if (type instanceof ValueType.OfChoice choice) {
            choice.kinds()
                    .forEach((kind, each) ->
                            around(Shape.of(each), "kind: " + kind + ", ", text).ifPresent(fitting::add));
        }
        return fitting.size() == 1 ? fitting.get(0) : "";
    }

    private static Optional<String> around(Shape shape, String kind, String text) {
        List<Shape.Field> required =
                shape.fields().stream().filter(Shape.Field::required).toList();
        if (required.size() != 1) {
            return Optional.empty();
        }
        Shape.Field field = required.get(0);
        boolean list = field.type() instanceof ValueType.OfList;
        ValueType item = field.type() instanceof ValueType.OfList of ? of.item() : field.type();
        if (item instanceof ValueType.OfChoice choice && choice.plain() != null) {
            item = Shape.of(choice.plain()).fields().get(0).type();
        }
        boolean fits = (item instanceof ValueType.OfQuantity quantity && reads(text, quantity.kind()))
                || (item instanceof ValueType.OfWord word
                        && (word.words().containsKey(text) || WaysWritten.meant(word.ways(), text) != null));
        return fits
                ? Optional.of("{ " + kind + field.key() + ": " + (list ? "[" + text + "]" : text) + " }")
                : Optional.empty();
    }

    private static boolean reads(String text, QuantityKind kind) {
        return text.length() <= LONGEST && QuantityText.read(text, kind) instanceof Understood;
    }
}
