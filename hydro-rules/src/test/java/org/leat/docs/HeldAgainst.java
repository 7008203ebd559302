package org.leat.docs;

import com.fasterxml.jackson.databind.JsonNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.jspecify.annotations.Nullable;

/**
 * One expected number from outside beside ours.
 *
 * @param ours what the tests of hydro-model wrote down; null where they compare it another way
 */
record HeldAgainst(
        String id,
        String name,
        JsonNode json,
        JsonNode expected,
        @Nullable Double ours) {

    private static final double LEAST = 1e-6;

    String origin() {
        String origin = json.get("origin").asText();
        return origin.equals("memory") ? "from memory" : origin;
    }

    /** What an origin says, with which the reader can set the kinds apart: strongest first. */
    static int rank(String origin) {
        return switch (origin) {
            case "published" -> 0;
            case "read" -> 1;
            case "computed-independently" -> 2;
            case "from memory" -> 3;
            case "common practice" -> 4;
            default -> throw new IllegalArgumentException("no such origin: " + origin);
        };
    }

    boolean comparable() {
        return ours != null && expected.get("value").isNumber();
    }

    boolean outside() {
        return comparable() && Math.abs(difference()) > band() * (1 + 1e-9) && !sixDigits();
    }

    /** Files give six digits: a tolerance below that is one on what was printed. */
    private boolean sixDigits() {
        return Math.abs(difference()) <= 5e-6 * Math.abs(expected.get("value").asDouble());
    }

    private boolean relative() {
        return json.at("/tolerance/kind").asText().equals("relative");
    }

    private double band() {
        double by = json.at("/tolerance/value").asDouble();
        return relative() ? by * Math.abs(expected.get("value").asDouble()) : by;
    }

    private double difference() {
        return (ours == null ? Double.NaN : ours) - expected.get("value").asDouble();
    }

    String row() {
        String unit = expected.path("unit").asText();
        String wanted = expected.get("value").isNumber()
                ? number(expected.get("value").asDouble()) + (unit.isEmpty() || unit.equals("-") ? "" : " " + unit)
                : "in the test";
        return "| " + cell(id + (name.equals("value") ? "" : " " + name)) + " | "
                + cell(json.get("what").asText()) + " | " + cell(wanted) + " | "
                + (comparable() ? number(ours == null ? 0 : ours) : "in the test") + " | "
                + deviation() + " | " + allowed() + " | " + origin() + ": "
                + cell(json.get("source").asText()) + " |";
    }

    private String deviation() {
        if (!comparable()) {
            return "–";
        }
        double wanted = expected.get("value").asDouble();
        double difference = difference();
        boolean share = relative() && wanted != 0;
        double size = share ? difference / wanted : difference;
        if (Math.abs(difference) <= LEAST * Math.max(Math.abs(wanted), 1e-12)) {
            return "none";
        }
        String text = signed(share ? size * 100 : size) + (share ? " %" : "");
        return outside() ? "**" + text + "**" : text;
    }

    private String allowed() {
        double by = json.at("/tolerance/value").asDouble();
        return by == 0 ? "exact" : number(relative() ? by * 100 : by) + (relative() ? " %" : "");
    }

    private static String signed(double value) {
        String text = plain(new BigDecimal(value).round(new MathContext(2, RoundingMode.HALF_EVEN)));
        return value > 0 ? "+" + text : text.replace('-', '−');
    }

    private static String number(double value) {
        return plain(new BigDecimal(value).round(new MathContext(6, RoundingMode.HALF_EVEN)));
    }

    private static String plain(BigDecimal value) {
        BigDecimal short_ = value.stripTrailingZeros();
        int exponent = short_.precision() - short_.scale() - 1;
        boolean writeOut = short_.signum() == 0 || (exponent >= -4 && exponent < 7);
        return writeOut
                ? short_.toPlainString()
                : short_.toString().replace("E+", "e").replace('E', 'e');
    }

    /** Text of a data file as a cell of a table: nothing in it is markup. */
    static String cell(String text) {
        return text.replace("|", "/")
                .replace("<", "&lt;")
                .replace("*", "\\*")
                .replace("_", "\\_")
                .replaceAll("\\s+", " ");
    }
}
