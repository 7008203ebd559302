package org.leat.pack;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;

/** Other windings to try: turns over the present turns. */
final class OtherTurns {

    private OtherTurns() {}

    /** {@return candidates nearest to the present winding first; the rule says {@code message}} */
    static Stream<Candidate> candidates(Judgement j, String message) {
        return DoubleStream.of(0.9, 1.1, 0.8, 1.25, 0.7, 1.4, 0.6, 1.6, 0.5, 1.8, 2)
                .mapToObj(turns -> candidate(j, message, turns));
    }

    /** {@return candidates with more turns, fewest first} */
    static Stream<Candidate> more(Judgement j, String message) {
        return DoubleStream.of(1.1, 1.25, 1.4, 1.6, 1.8, 2, 2.5, 3).mapToObj(turns -> candidate(j, message, turns));
    }

    /** {@return candidates with fewer turns, most first} */
    static Stream<Candidate> fewer(Judgement j, String message) {
        return DoubleStream.of(0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3).mapToObj(turns -> candidate(j, message, turns));
    }

    private static Candidate candidate(Judgement j, String message, double turns) {
        return new Candidate(
                message, Rewinding.edits(j.design(), turns), List.of(Arg.of("turns", turns, QuantityKind.RATIO)));
    }
}
