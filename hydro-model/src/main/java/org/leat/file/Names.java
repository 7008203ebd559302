package org.leat.file;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apiguardian.api.API;

/** Names in Java to names in files, and the nearest of several names. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class Names {

    private static final int LONGEST = 64;
    private static final int SHORTEST_BEGINNING = 3;

    private static final List<Set<String>> OPPOSITES = List.of(
            Set.of("inside", "outside", "inner", "outer", "internal", "external"),
            Set.of("lowest", "highest", "least", "greatest", "most", "low", "high", "min", "max", "minimum", "maximum"),
            Set.of("from", "to"),
            Set.of("above", "below", "over", "under"),
            Set.of("input", "output", "in", "out"),
            Set.of("upper", "lower", "top", "bottom"),
            Set.of("open", "shut", "closed"),
            Set.of("first", "second"),
            Set.of("series", "shunt", "parallel"),
            Set.of("star", "delta"),
            Set.of("hot", "cold", "warm"),
            Set.of("air", "water", "wall"),
            Set.of("voltage", "current", "power", "resistance"),
            Set.of("length", "width", "depth", "height", "diameter"),
            Set.of("entrance", "exit"),
            Set.of("before", "after", "behind"),
            Set.of("charge", "discharge"));

    private Names() {}

    /** {@return {@code outsideDiameter} or {@code PvcU} as {@code outside-diameter}, {@code pvc-u}} */
    public static String ofComponent(String java) {
        StringBuilder out = new StringBuilder();
        for (int i = 0; i < java.length(); i++) {
            char c = java.charAt(i);
            if (Character.isUpperCase(c) && i > 0) {
                out.append('-');
            }
            out.append(Character.toLowerCase(c));
        }
        return out.toString();
    }

    /** {@return {@code LEAD_AND_STAR_POINT} as {@code lead-and-star-point}} */
    public static String ofConstant(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** {@return the known name that was probably meant, or empty} */
    public static String nearest(String given, Collection<String> known) {
        if (given.length() > LONGEST) {
            return "";
        }
        String bare = bare(given);
        String begun = begun(given, known);
        String best = "";
        int least = Math.max(1, given.length() / 3) + 1;
        for (String name : known) {
            if (opposite(given, name)) {
                continue;
            }
            int distance = bare.equals(bare(name)) ? 0 : distance(given, name);
            if (distance < least) {
                least = distance;
                best = name;
            }
        }
        return begun.isEmpty() || least <= 1 ? best : begun;
    }

    /** {@return the one known name that begins with what was given; empty where none or several do} */
    private static String begun(String given, Collection<String> known) {
        List<String> begun = given.length() < SHORTEST_BEGINNING
                ? List.of()
                : known.stream().filter(name -> name.startsWith(given)).limit(2).toList();
        return begun.size() == 1 ? begun.get(0) : "";
    }

    /** Whether a word of one is the contrary of a word of the other: a slip of the fingers does not make one of the other. */
    private static boolean opposite(String a, String b) {
        List<String> one = words(a);
        List<String> other = words(b);
        for (Set<String> pair : OPPOSITES) {
            for (String word : pair) {
                if (one.contains(word)
                        && !other.contains(word)
                        && other.stream().anyMatch(w -> !w.equals(word) && pair.contains(w))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static List<String> words(String name) {
        return List.of(name.toLowerCase(Locale.ROOT).split("[-_. ]", -1));
    }

    private static String bare(String name) {
        return name.toLowerCase(Locale.ROOT).replaceAll("[-_. ]", "");
    }

    /** Edits from one to the other: letters added, dropped, changed, or two neighbours swapped. */
    private static int distance(String a, String b) {
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                if (i == 0 || j == 0) {
                    d[i][j] = i + j;
                    continue;
                }
                boolean same = a.charAt(i - 1) == b.charAt(j - 1);
                d[i][j] = Math.min(Math.min(d[i - 1][j], d[i][j - 1]) + 1, d[i - 1][j - 1] + (same ? 0 : 1));
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    d[i][j] = Math.min(d[i][j], d[i - 2][j - 2] + 1);
                }
            }
        }
        return d[a.length()][b.length()];
    }
}
