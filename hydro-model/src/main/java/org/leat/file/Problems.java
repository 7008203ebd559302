package org.leat.file;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.leat.design.ElementPath;
import org.leat.design.Texts;

/** Collects problems, a hundred at most. */
final class Problems {

    static final int LIMIT = 100;
    private static final int LONGEST = 60;
    private static final int LONGEST_PATH = 200;
    private static final int LONGEST_EXPECTED = 1000;
    private static final int MOST_CHOICES = 100;

    private final List<Problem> list = new ArrayList<>();
    private boolean more;

    void add(ProblemKind kind, Position at, String path, String found, String expected) {
        add(kind, at, path, found, expected, "", List.of());
    }

    void add(
            ProblemKind kind,
            Position at,
            String path,
            String found,
            String expected,
            String hint,
            List<String> choices) {
        if (list.size() >= LIMIT) {
            more = true;
            return;
        }
        Problem problem = new Problem(
                kind,
                at,
                shortened(path, LONGEST_PATH),
                shortened(found, LONGEST),
                shortened(expected, LONGEST_EXPECTED),
                shortened(hint, LONGEST_EXPECTED),
                choices.stream()
                        .limit(MOST_CHOICES)
                        .map(c -> shortened(c, LONGEST))
                        .toList());
        if (list.stream().noneMatch(told -> same(told, problem))) {
            list.add(problem);
        }
    }

    /** Told before: the same, or the same name at the head of a column, which each of its rows has. */
    private static boolean same(Problem told, Problem problem) {
        boolean name = problem.kind() == ProblemKind.UNKNOWN_FIELD
                && told.kind() == problem.kind()
                && told.position().equals(problem.position())
                && told.found().equals(problem.found());
        return name || told.equals(problem);
    }

    /** {@return whether no more are listed, so that nothing need be thought of to say about them} */
    boolean full() {
        return list.size() >= LIMIT;
    }

    boolean none() {
        return list.isEmpty();
    }

    List<Problem> sorted() {
        List<Problem> sorted = new ArrayList<>(list);
        Collections.sort(sorted);
        if (more) {
            Position last = sorted.get(sorted.size() - 1).position();
            sorted.add(new Problem(
                    ProblemKind.MORE_PROBLEMS, last, ElementPath.ROOT, Integer.toString(LIMIT), "", "", List.of()));
        }
        return List.copyOf(sorted);
    }

    /** No longer than that, and nothing in it that a report cannot hold. */
    static String shortened(String text, int longest) {
        if (text.length() <= longest) {
            return Texts.writable(text);
        }
        int end = Character.isHighSurrogate(text.charAt(longest - 1)) ? longest - 1 : longest;
        return Texts.writable(text.substring(0, end)) + "\u2026";
    }
}
