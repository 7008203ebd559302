package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.design.Runner;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * Other windings to try: turns over the present turns. On the same bus a machine of more turns turns slower; the wheel
 * grows with the turns, so that its buckets still suit the jet.
 */
final class OtherTurns {

    private OtherTurns() {}

    /**
     * {@return candidates with fewer turns, most first; the rule says {@code message} of {@code turns} and {@code
     * diameter}} None for a wheel that the design does not state.
     */
    static Stream<Candidate> fewerWithWheel(Judgement j, String message) {
        return withWheel(j, message, 0.9, 0.8, 0.7, 0.6, 0.5);
    }

    /** {@return as {@link #fewerWithWheel}, but with more turns, fewest first} */
    static Stream<Candidate> more(Judgement j, String message) {
        return withWheel(j, message, 1.1, 1.25, 1.4, 1.6, 1.8, 2, 2.5, 3);
    }

    /** {@return the winding of either kind that makes a failure go away with the least change} */
    static Optional<WayOut> any(LegacyRule rule, Judgement j, Outcome failure, String message) {
        Optional<WayOut> fewer = Search.least(rule, j, failure, fewerWithWheel(j, message));
        return fewer.isPresent() ? fewer : Search.least(rule, j, failure, more(j, message));
    }

    /** {@return candidates with fewer turns and the wheel as it is, most first; the rule says {@code message}} */
    static Stream<Candidate> fewer(Judgement j, String message) {
        return DoubleStream.of(0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3)
                .mapToObj(turns -> new Candidate(
                        message,
                        Rewinding.edits(j.design(), turns),
                        List.of(Arg.of("turns", turns, QuantityKind.RATIO))));
    }

    private static Stream<Candidate> withWheel(Judgement j, String message, double... factors) {
        Runner runner = j.design().runner();
        return runner == null
                ? Stream.empty()
                : DoubleStream.of(factors).mapToObj(turns -> withWheel(j, message, runner, turns));
    }

    private static Candidate withWheel(Judgement j, String message, Runner runner, double turns) {
        double millimetres = Math.rint(Si.of(runner.pitchDiameter()) * turns * 1000);
        List<Edit> edits = new ArrayList<>(Rewinding.edits(j.design(), turns));
        edits.add(new Edit("/runner/pitch-diameter", Si.quantity(millimetres, "mm", Length.class)));
        return new Candidate(
                message,
                edits,
                List.of(
                        Arg.of("turns", turns, QuantityKind.RATIO),
                        Arg.of("diameter", millimetres / 1000, QuantityKind.LENGTH)));
    }
}
