package org.leat.plant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

/** A design file with a few things done to it that hands, editors and programs do to files. */
final class Mutant {

    private static final Pattern NUMBER =
            Pattern.compile("(?<=[ :\\[{(,-])-?\\d+(\\.\\d+)?([eE][+-]?\\d+)?(?![\\w.-])");
    private static final Pattern VALUE = Pattern.compile("(?<=: )[^\\s{\\[#,}\\]][^#,}\\]\\n]*");
    private static final List<String> EXTREMES = List.of(
            "0",
            "-1",
            "1",
            "1e-9",
            "1e-12",
            "1e-30",
            "4.9e-324",
            "0.0001",
            "1000",
            "1e6",
            "1e9",
            "1e15",
            "1e29",
            "1e30",
            "1e31",
            "1500",
            "99999999",
            "2147483647",
            "-0",
            "0.5",
            "100",
            "1e300",
            "999999999999999");
    private static final double[] FACTORS = {0.001, 0.01, 0.1, 0.5, 0.9, 1.1, 2, 3, 10, 30, 100, 1000, 1e6, 1e-6, -1};
    private static final List<String> ODD = List.of(
            "\uD83D",
            "\uDE00",
            "\uFFFE",
            "\uFFFF",
            "\u0000",
            "\t",
            "\"",
            "'",
            "{",
            "}",
            "[",
            "]",
            ",",
            ":",
            "#",
            "&a ",
            "*a",
            "\u202E",
            "\uFEFF",
            "\u2028",
            "\uD83D\uDCA7",
            "-",
            "|",
            ">",
            "%",
            "!",
            "\\",
            "\r",
            "\n",
            "\u00A0",
            "~",
            "½");
    private static final List<String> UNITS = List.of(
            "mm", "m", "km", "in", "bar", "V", "mV", "kV", "A", "kA", "W", "kW", "s", "h", "d", "L/s", "m³/h", "rpm",
            "%", "ohm", "mohm", "mH", "H", "°C", "K", "Ah", "mm²", "m²", "K/W", "rpm/V", "kg", "g", "GPa");

    private final Random random;
    private String text;

    private Mutant(String text, long seed) {
        this.text = text;
        this.random = new Random(seed);
    }

    /** {@return a text with one to four things done to it, the same for the same seed} */
    static String of(String text, long seed) {
        Mutant mutant = new Mutant(text, seed);
        boolean values = mutant.random.nextInt(3) > 0; // most of these are still designs
        int times = 1 + mutant.random.nextInt(4);
        for (int i = 0; i < times; i++) {
            if (values) {
                mutant.replace(NUMBER, mutant::spread);
            } else {
                mutant.change();
            }
        }
        return mutant.text;
    }

    private void change() {
        switch (random.nextInt(20)) {
            case 0 -> lines(lines -> lines.remove(random.nextInt(lines.size())));
            case 1 -> lines(lines -> lines.add(random.nextInt(lines.size()), lines.get(random.nextInt(lines.size()))));
            case 2 ->
                lines(lines -> {
                    int at = random.nextInt(lines.size());
                    lines.add(at, lines.get(at));
                });
            case 3 -> text = random.nextInt(4) == 0 ? text.substring(0, random.nextInt(text.length() + 1)) : text;
            case 4 -> insert(ODD.get(random.nextInt(ODD.size())));
            case 5, 6 -> swap(VALUE);
            case 7, 8 -> swap(NUMBER);
            case 9 -> replace(VALUE, was -> pick(UNITS));
            case 10, 11 -> replace(VALUE, was -> was.replaceFirst("[^\\d.]+$", " " + pick(UNITS)));
            case 12, 13, 14 -> replace(NUMBER, was -> pick(EXTREMES));
            default -> replace(NUMBER, this::times);
        }
    }

    private String spread(String number) {
        boolean whole = number.matches("\\d{1,4}");
        double factor = Math.pow(10, 4 * random.nextDouble() * random.nextDouble() * (random.nextBoolean() ? 1 : -1));
        double value = Double.parseDouble(number) * factor;
        return whole && random.nextInt(3) > 0 ? Long.toString(Math.round(value)) : Double.toString(value);
    }

    private String times(String number) {
        double value = Double.parseDouble(number) * FACTORS[random.nextInt(FACTORS.length)];
        return value == Math.rint(value) && Math.abs(value) < 1e12
                ? Long.toString((long) value)
                : Double.toString(value);
    }

    private String pick(List<String> from) {
        return from.get(random.nextInt(from.size()));
    }

    private void lines(java.util.function.Consumer<List<String>> change) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        change.accept(lines);
        text = String.join("\n", lines);
    }

    private void insert(String odd) {
        int at = random.nextInt(text.length() + 1);
        text = text.substring(0, at) + odd + text.substring(at);
    }

    private List<MatchResult> found(Pattern pattern) {
        return pattern.matcher(text).results().toList();
    }

    private void replace(Pattern pattern, java.util.function.UnaryOperator<String> by) {
        List<MatchResult> found = found(pattern);
        if (!found.isEmpty()) {
            MatchResult one = found.get(random.nextInt(found.size()));
            text = text.substring(0, one.start()) + by.apply(one.group()) + text.substring(one.end());
        }
    }

    private void swap(Pattern pattern) {
        List<MatchResult> found = found(pattern);
        if (found.size() > 1) {
            int i = random.nextInt(found.size() - 1);
            MatchResult a = found.get(i);
            MatchResult b = found.get(i + 1 + random.nextInt(found.size() - i - 1));
            text = text.substring(0, a.start())
                    + b.group()
                    + text.substring(a.end(), b.start())
                    + a.group()
                    + text.substring(b.end());
        }
    }
}
