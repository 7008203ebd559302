package org.leat.plant.cases;

import java.util.function.DoublePredicate;
import org.apiguardian.api.API;
import org.leat.plant.numbers.Amount;
import org.leat.plant.solve.Rejoining;

/**
 * The highest pressure that a section sees in a stop, up to what can be said of it. Where the water column parts, the blow of its
 * rejoining is in it, computed on several grids: what all of them reach is certain, what none of them exceeds, with their spread on
 * top, is enough. Between the two nobody can say.
 *
 * @param before highest before a parted column rejoins, Pa; unknown where a wave speed is
 * @param certain what is reached in any case, Pa: it can prove a pipe too weak
 * @param enough what is not exceeded, Pa: it can prove a pipe strong enough; infinite where nothing can
 * @param reason why there is nothing between the two
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record StopPeak(Amount before, double certain, double enough, Amount.Unknown reason) {

    /** The grids disagree, or the blows still grow. */
    public static final Amount.Unknown UNSETTLED = new Amount.Missing("/nozzles/open", "unknown/rejoining-unsettled");

    /** A wall of polyethylene damps the later blows, by how much is not computed. */
    public static final Amount.Unknown DAMPED = new Amount.Missing("/nozzles/open", "unknown/rejoining-damped");

    private static final double SAME = 1 + 1e-9;

    /** Of a column that holds. */
    static StopPeak whole(Amount before) {
        double highest = before.or(0);
        return new StopPeak(before, highest, highest, UNSETTLED);
    }

    /**
     * Of a column that parts and rejoins.
     *
     * @param holds whether the pressure before it parts is known without the gas cavities
     * @param damped whether the wall damps later blows
     */
    static StopPeak parted(Amount before, Rejoining rejoining, int section, boolean holds, boolean damped) {
        if (!(before instanceof Amount.Known known)) {
            return whole(before);
        }
        double bound = Math.max(known.value(), rejoining.bound());
        if (rejoining.sections().isEmpty()) {
            return new StopPeak(before, known.value(), bound, UNSETTLED);
        }
        Rejoining.Peak peak = rejoining.sections().get(section);
        double first = holds ? known.value() : Math.max(known.value(), peak.first());
        double later = rejoining.growing() ? Double.POSITIVE_INFINITY : peak.later();
        double enough = Math.min(bound, Math.max(first, Math.max(peak.after(), later)));
        double certain = Math.min(enough, Math.max(known.value(), damped ? peak.firstAgreed() : peak.agreed()));
        return new StopPeak(Amount.of(first), certain, enough, damped ? DAMPED : UNSETTLED);
    }

    /** {@return whether the highest pressure may be that of a rejoined column} */
    public boolean rejoined() {
        return rejoined(enough);
    }

    /** {@return whether a pressure, Pa, is beyond what is seen before a parted column rejoins} */
    public boolean rejoined(double pressure) {
        return before instanceof Amount.Known known && pressure > known.value() * SAME;
    }

    /**
     * {@return the highest pressure, Pa, as far as it decides whether something holds: what is not exceeded, where that holds or where
     * not even what is certain does; unknown between} Where later blows are damped it is what does not hold for certain.
     *
     * @param holds whether a pressure is held, Pa; a greater one no better
     */
    public Amount against(DoublePredicate holds) {
        if (!before.isKnown()) {
            return before;
        } else if (!Double.isInfinite(enough) && holds.test(enough)) {
            return Amount.of(enough);
        } else if (holds.test(certain)) {
            return reason;
        }
        boolean sure = Double.isInfinite(enough) || reason.equals(DAMPED);
        return !sure ? Amount.of(enough) : holds.test(before.or(certain)) ? Amount.of(certain) : before;
    }

    /** {@return the same against a limit, Pa} */
    public Amount against(double limit) {
        return against(pressure -> pressure <= limit);
    }

    /** {@return what is not exceeded, Pa; unknown where nothing can be said} */
    public Amount highest() {
        return before.isKnown() && Double.isInfinite(enough) ? reason : before.map(pressure -> enough);
    }
}
