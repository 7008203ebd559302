package org.leat.electrics;

import java.util.List;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Gates of gG fuse-links: currents, A, that a link of a rating must stand for a time, and currents that must have melted it.
 *
 * <p>Range: the ratings 16 to 400 A of the table; no answer for others. Alternating current; on direct current the times hold for
 * links rated for it. A maker's link melts 3 to 17 % below the gate for 5 s (BS 88-2, by read loop impedances): design with the
 * gate. Source: IEC 60269-1, table of gates for specified pre-arcing times (from memory; the table checks itself, what melts in 0.1 s
 * is what two sizes up stands for 0.1 s).
 */
public final class FuseGates {

    private static final String LAW = "IEC 60269-1 gates of gG fuse-links";

    private static final List<Gate> GATES = List.of(
            new Gate(16, 33, 65, 85, 150),
            new Gate(20, 42, 85, 110, 200),
            new Gate(25, 52, 110, 150, 260),
            new Gate(32, 75, 150, 200, 350),
            new Gate(40, 95, 190, 260, 450),
            new Gate(50, 125, 250, 350, 610),
            new Gate(63, 160, 320, 450, 820),
            new Gate(80, 215, 425, 610, 1100),
            new Gate(100, 290, 580, 820, 1450),
            new Gate(125, 355, 715, 1100, 1910),
            new Gate(160, 460, 950, 1450, 2590),
            new Gate(200, 610, 1250, 1910, 3420),
            new Gate(250, 750, 1650, 2590, 4500),
            new Gate(315, 1050, 2200, 3420, 6000),
            new Gate(400, 1420, 2840, 4500, 8060));

    private FuseGates() {}

    private record Gate(double rating, double stands10s, double melts5s, double stands01s, double melts01s) {}

    /** What a gate says. */
    public enum Time {
        /** stands it for 10 s. */
        STANDS_10_S,
        /** has melted within 5 s. */
        MELTS_5_S,
        /** stands it for 0.1 s. */
        STANDS_0_1_S,
        /** has melted within 0.1 s. */
        MELTS_0_1_S
    }

    /** {@return the current, A, of a gate of a rating, A} */
    public static Answer current(Time time, double rating) {
        Physical.positive("rating", rating);
        for (Gate gate : GATES) {
            if (gate.rating() == rating) {
                return Answer.of(
                        switch (time) {
                            case STANDS_10_S -> gate.stands10s();
                            case MELTS_5_S -> gate.melts5s();
                            case STANDS_0_1_S -> gate.stands01s();
                            case MELTS_0_1_S -> gate.melts01s();
                        });
            }
        }
        return Answer.outside(LAW, "rating", rating, 16, 400, "A");
    }

    /** {@return the tabled ratings, A, rising} */
    public static List<Double> ratings() {
        return GATES.stream().map(Gate::rating).toList();
    }

    /** {@return the greatest tabled rating that has surely melted after 5 s at a current, A} Outside where none has. */
    public static Answer greatestThatMelts(double current) {
        Physical.notNegative("current", current);
        return GATES.stream()
                .filter(gate -> gate.melts5s() <= current)
                .reduce((a, b) -> b)
                .map(gate -> Answer.of(gate.rating()))
                .orElseGet(
                        () -> Answer.below(LAW, "current", current, GATES.get(0).melts5s(), "A"));
    }
}
