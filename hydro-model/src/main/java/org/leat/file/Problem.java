package org.leat.file;

import java.util.Comparator;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.design.ElementPath;

/**
 * One thing wrong with a design file. Holds arguments, no sentence: {@link ProblemText} words it.
 *
 * @param kind what is wrong
 * @param position where
 * @param path the element's path, see {@link ElementPath}
 * @param found what stands there, shortened if long; empty where nothing stands
 * @param expected what could stand there, in a few words; may be empty
 * @param hint what else helps, see {@link ProblemKind}; may be empty
 * @param choices words or units that would fit; may be empty
 */
@API(status = API.Status.STABLE, since = "0.1")
public record Problem(
        ProblemKind kind,
        Position position,
        String path,
        String found,
        String expected,
        String hint,
        List<String> choices)
        implements Comparable<Problem> {

    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::position)
            .thenComparing(Problem::kind)
            .thenComparing(Problem::path)
            .thenComparing(Problem::found)
            .thenComparing(Problem::expected)
            .thenComparing(Problem::hint)
            .thenComparing(p -> String.join("\n", p.choices()));

    public Problem {
        choices = List.copyOf(choices);
    }

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }
}
