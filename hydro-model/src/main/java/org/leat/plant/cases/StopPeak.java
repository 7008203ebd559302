package org.leat.plant.cases;

import java.util.OptionalDouble;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.apiguardian.api.API;
import org.leat.lazy.Once;
import org.leat.plant.numbers.Amount;
import org.leat.plant.solve.Rejoining;

/**
 * The highest pressure that a section sees in a stop, up to what can be said of it. Where the water column parts, the blow of its
 * rejoining is in it, computed on several grids: what all of them reach is certain, what none of them exceeds, with their spread on
 * top, is enough. Between the two nobody can say.
 *
 * <p>The gas cavities run when something is asked that they decide, and once.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class StopPeak {

    /** The grids disagree, or the blows still grow. */
    public static final Amount.Unknown UNSETTLED = new Amount.Missing("/nozzles/open", "unknown/rejoining-unsettled");

    /** A wall of polyethylene damps the later blows, by how much is not computed. */
    public static final Amount.Unknown DAMPED = new Amount.Missing("/nozzles/open", "unknown/rejoining-damped");

    private static final double SAME = 1 + 1e-9;

    private final Amount whole;
    private final boolean holds;
    private final boolean damped;
    private final Once<Range> range;

    /**
     * What is known of the pressure.
     *
     * @param before highest before a parted column rejoins, Pa; unknown where a wave speed is
     * @param certain what is reached in any case, Pa
     * @param enough what is not exceeded, Pa; empty where nothing can be said
     * @param reason why there is nothing between the two
     */
    private record Range(Amount before, double certain, OptionalDouble enough, Amount.Unknown reason) {}

    private StopPeak(Amount whole, boolean holds, boolean damped, Once<Range> range) {
        this.whole = whole;
        this.holds = holds;
        this.damped = damped;
        this.range = range;
    }

    /** Of a column that holds. */
    static StopPeak whole(Amount before) {
        double highest = before.or(0);
        return new StopPeak(
                before,
                true,
                false,
                new Once<>(() -> new Range(before, highest, OptionalDouble.of(highest), UNSETTLED)));
    }

    /**
     * Of a column that parts and rejoins.
     *
     * @param holds whether the pressure before it parts is known without the gas cavities
     * @param damped whether the wall damps later blows, which are then followed
     */
    static StopPeak parted(Amount before, Once<Rejoining> rejoining, int section, boolean holds, boolean damped) {
        return before instanceof Amount.Known known
                ? new StopPeak(
                        before, holds, damped, new Once<>(() -> range(known, rejoining.get(), section, holds, damped)))
                : whole(before);
    }

    private static Range range(Amount.Known before, Rejoining rejoining, int section, boolean holds, boolean damped) {
        OptionalDouble bound = map(rejoining.bound(), most -> Math.max(before.value(), most));
        if (rejoining.sections().isEmpty()) {
            return new Range(before, before.value(), bound, UNSETTLED);
        }
        Rejoining.Peak peak = rejoining.sections().get(section);
        double first = holds ? before.value() : Math.max(before.value(), peak.first());
        double seen = Math.max(
                first, Math.max(peak.after().orElse(first), peak.later().orElse(first)));
        // while the blows still grow only the bound says what is not exceeded
        OptionalDouble enough = rejoining.growing() ? bound : OptionalDouble.of(Math.min(bound.orElse(seen), seen));
        double agreed = Math.max(before.value(), damped ? peak.firstAgreed() : peak.agreed());
        double certain = Math.min(enough.orElse(agreed), agreed);
        return new Range(Amount.of(first), certain, enough, damped ? DAMPED : UNSETTLED);
    }

    private static OptionalDouble map(OptionalDouble pressure, DoubleUnaryOperator change) {
        return pressure.isPresent()
                ? OptionalDouble.of(change.applyAsDouble(pressure.getAsDouble()))
                : OptionalDouble.empty();
    }

    /** {@return highest before a parted column rejoins, Pa; unknown where a wave speed is} */
    public Amount before() {
        return holds ? whole : range.get().before();
    }

    /** {@return what is reached in any case, Pa: it can prove a pipe too weak} */
    public double certain() {
        return range.get().certain();
    }

    /** {@return what is not exceeded, Pa: it can prove a pipe strong enough; empty where nothing can} */
    public OptionalDouble enough() {
        return range.get().enough();
    }

    /** {@return whether the highest pressure may be that of a rejoined column} */
    public boolean rejoined() {
        OptionalDouble enough = enough();
        return enough.isPresent() ? rejoined(enough.getAsDouble()) : before().isKnown();
    }

    /** {@return whether a pressure, Pa, is beyond what is seen before a parted column rejoins} */
    public boolean rejoined(double pressure) {
        return before() instanceof Amount.Known known && pressure > known.value() * SAME;
    }

    /**
     * {@return the highest pressure, Pa, as far as it decides whether something holds: what is not exceeded, where that holds or where
     * not even what is certain does; unknown between} Where later blows are damped it is what does not hold for certain.
     *
     * @param held whether a pressure is held, Pa; a greater one no better
     */
    public Amount against(DoublePredicate held) {
        if (!(whole instanceof Amount.Known first)) {
            return whole;
        } else if (damped && holds && !held.test(first.value())) {
            return whole; // whatever the blows: where those are damped, it is what fails for certain
        }
        Range known = range.get();
        OptionalDouble enough = known.enough();
        if (enough.isPresent() && held.test(enough.getAsDouble())) {
            return Amount.of(enough.getAsDouble());
        } else if (held.test(known.certain())) {
            return known.reason();
        } else if (enough.isPresent() && !known.reason().equals(DAMPED)) {
            return Amount.of(enough.getAsDouble());
        }
        return held.test(known.before().or(known.certain())) ? Amount.of(known.certain()) : known.before();
    }

    /** {@return the same against a limit, Pa} */
    public Amount against(double limit) {
        return against(pressure -> pressure <= limit);
    }

    /** {@return what is not exceeded, Pa; unknown where nothing can be said} */
    public Amount highest() {
        Range known = range.get();
        if (!known.before().isKnown()) {
            return known.before();
        }
        return known.enough().isPresent() ? Amount.of(known.enough().getAsDouble()) : known.reason();
    }
}
