package org.leat.pack.kit;

import static org.leat.quantity.Quantities.mm;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.Runner;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * Other windings to try: turns over the present turns. On the same bus a machine of more turns turns slower; the wheel
 * grows with the turns, so that its buckets still suit the jet.
 */
public final class WindingTurns {

    /** What {@link #fewerWithWheel} and {@link #more} say. */
    public static final String WITH_WHEEL =
            "A winding with {turns} times the turns in the same copper space, and a wheel of {diameter:mm} to suit.";

    /** What {@link #fewer} and {@link #moreAlone} say. */
    public static final String ALONE = "A winding with {turns} times the turns in the same copper space.";

    private WindingTurns() {}

    /**
     * {@return candidates with fewer turns, most first; told with {@code turns} and {@code diameter}} None for a wheel that the design does not state.
     */
    public static Stream<Change> fewerWithWheel(Judgement j, Outcome.Fail failure) {
        return withWheel(j, 0.9, 0.8, 0.7, 0.6, 0.5);
    }

    /** {@return as {@link #fewerWithWheel}, but with more turns, fewest first} */
    public static Stream<Change> more(Judgement j, Outcome.Fail failure) {
        return withWheel(j, 1.1, 1.25, 1.4, 1.6, 1.8, 2, 2.5, 3);
    }

    /** {@return candidates with fewer turns and the wheel as it is, most first; told with {@code turns}} */
    public static Stream<Change> fewer(Judgement j, Outcome.Fail failure) {
        return alone(j, DoubleStream.of(0.9, 0.8, 0.7, 0.6, 0.5, 0.4, 0.3));
    }

    /** {@return as {@link #fewer}, but with more turns, at least so many times those there are, fewest first} */
    public static Stream<Change> moreAlone(Judgement j, double least) {
        return alone(j, DoubleStream.of(1.1, 1.25, 1.4, 1.6, 1.8, 2, 2.5, 3).filter(turns -> turns >= least));
    }

    private static Stream<Change> alone(Judgement j, DoubleStream factors) {
        return factors.mapToObj(
                turns -> Change.of(Rewinding.edits(j.design(), turns)).with("turns", turns, QuantityKind.RATIO));
    }

    private static Stream<Change> withWheel(Judgement j, double... factors) {
        Runner runner = j.design().runner();
        return runner == null
                ? Stream.empty()
                : DoubleStream.of(factors).mapToObj(turns -> withWheel(j, runner, turns));
    }

    private static Change withWheel(Judgement j, Runner runner, double turns) {
        double millimetres = Math.rint(Si.of(runner.pitchDiameter()) * turns * 1000);
        List<Edit> edits = new ArrayList<>(Rewinding.edits(j.design(), turns));
        edits.add(new Edit("/runner/pitch-diameter", mm(millimetres)));
        return Change.of(edits)
                .with("turns", turns, QuantityKind.RATIO)
                .with("diameter", millimetres / 1000, QuantityKind.LENGTH);
    }
}
