package org.leat.rulefile;

import java.util.List;
import org.leat.expression.ExpressionProblem;
import org.leat.file.Position;
import org.leat.file.Positions;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;

/** Collects what is wrong with the rules of a file, each thing at its place. */
final class Wrong {

    private static final int LONGEST = 60;

    private final Positions positions;
    private final List<Problem> problems;

    Wrong(Positions positions, List<Problem> problems) {
        this.positions = positions;
        this.problems = problems;
    }

    /** {@return how many things are wrong so far} */
    int count() {
        return problems.size();
    }

    void add(ProblemKind kind, String path, String found, String expected) {
        add(kind, path, found, expected, "");
    }

    void add(ProblemKind kind, String path, String found, String expected, String hint) {
        add(kind, positions.of(path), path, found, expected, hint);
    }

    /** At the name of a mapping's item. */
    void atName(String path, String name, String expected) {
        Position key = positions.exactly(path + "/");
        add(ProblemKind.IMPOSSIBLE_VALUE, key == null ? positions.of(path) : key, path, name, expected, "");
    }

    void expression(String path, String text, ExpressionProblem problem) {
        problems.add(problem.in(positions.within(path, text, problem.line(), problem.column()), path));
    }

    private void add(ProblemKind kind, Position at, String path, String found, String expected, String hint) {
        String shown = found.codePointCount(0, found.length()) <= LONGEST
                ? found
                : found.substring(0, found.offsetByCodePoints(0, LONGEST)) + "\u2026";
        problems.add(new Problem(kind, at, path, shown, expected, hint, List.of()));
    }
}
