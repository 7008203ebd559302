package org.leat.cli;

import java.util.List;
import java.util.stream.Collectors;
import org.leat.file.Problem;
import org.leat.file.ProblemText;

/** A settings file or a log that cannot be used: every problem with its place. */
final class WrongInput extends RuntimeException {

    private static final long serialVersionUID = 1;

    WrongInput(List<Problem> problems) {
        super(problems.stream().map(ProblemText::line).collect(Collectors.joining("\n")));
    }
}
