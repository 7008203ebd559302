package org.leat.expression;

import java.util.List;
import org.leat.file.Position;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.file.ProblemText;

/**
 * What is wrong with an expression.
 *
 * @param kind {@link ProblemKind#EXPRESSION} or {@link ProblemKind#UNKNOWN_NAME}
 * @param line in the expression, from 1
 * @param column from 1, in code points
 * @param found what stands there
 * @param expected what could stand there
 * @param hint what else helps; of a name that is not known, the nearest that is; may be empty
 */
public record ExpressionProblem(ProblemKind kind, int line, int column, String found, String expected, String hint) {

    static ExpressionProblem of(int line, int column, String found, String expected) {
        return new ExpressionProblem(ProblemKind.EXPRESSION, line, column, found, expected, "");
    }

    /** {@return it as a problem of the file that holds the expression} */
    public Problem in(Position position, String path) {
        return new Problem(kind, position, path, found, expected, hint, List.of());
    }

    /** {@return in a sentence without a full stop} */
    public String text() {
        return ProblemText.of(in(Position.startOf(""), "/"));
    }
}
