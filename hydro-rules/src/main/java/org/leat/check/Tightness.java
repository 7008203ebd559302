package org.leat.check;

import java.util.Comparator;
import java.util.OptionalDouble;

/**
 * How much room an outcome leaves: by its margin; before all of those a failure that compares nothing, behind them what else
 * compares nothing.
 *
 * @param place before those with a margin, among them, behind them
 * @param margin as a share of the limit; 0 where nothing is compared
 */
record Tightness(Place place, double margin) implements Comparable<Tightness> {

    private enum Place {
        BEFORE,
        AMONG,
        BEHIND
    }

    /** Of what compares nothing and does not fail. */
    static final Tightness NOTHING_COMPARED = new Tightness(Place.BEHIND, 0);

    private static final Tightness FAILS_WITHOUT_COMPARISON = new Tightness(Place.BEFORE, 0);
    private static final Comparator<Tightness> LEAST_ROOM_FIRST =
            Comparator.comparing(Tightness::place).thenComparingDouble(Tightness::margin);

    static Tightness of(Finding finding) {
        return of(finding.margin(), finding.outcome().kind() == Kind.FAIL);
    }

    /** {@return that of a failure that was accepted once} */
    static Tightness of(Baseline.Accepted failure) {
        return of(failure.margin(), true);
    }

    private static Tightness of(OptionalDouble margin, boolean fails) {
        return margin.isPresent()
                ? new Tightness(Place.AMONG, margin.getAsDouble())
                : fails ? FAILS_WITHOUT_COMPARISON : NOTHING_COMPARED;
    }

    /** {@return the one with less room} */
    Tightness and(Tightness other) {
        return compareTo(other) <= 0 ? this : other;
    }

    /** {@return whether this leaves less room than another, by more than a leeway of the margin} */
    boolean isBeyond(Tightness other, double leeway) {
        return place == other.place ? margin < other.margin - leeway : place.compareTo(other.place) < 0;
    }

    @Override
    public int compareTo(Tightness other) {
        return LEAST_ROOM_FIRST.compare(this, other);
    }
}
