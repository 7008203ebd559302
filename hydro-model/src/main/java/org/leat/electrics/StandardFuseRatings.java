package org.leat.electrics;

import java.util.List;
import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Preferred rated currents of fuse-links, A: 2, 4, 6, 8, 10, 12, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315,
 * 400, 500, 630, 800, 1000, 1250; from 10 A upwards the R10 series of ISO 3 with 12 added. Breakers come in the same steps
 * from 6 A, with 13 A added.
 *
 * <p>Source: IEC 60269-1:2006, 5.3.1, with IEC 60059 (from memory).
 */
public final class StandardFuseRatings {

    private static final String LAW = "IEC 60269-1 preferred rated currents";
    private static final List<Double> RATINGS = List.of(
            2.0, 4.0, 6.0, 8.0, 10.0, 12.0, 16.0, 20.0, 25.0, 32.0, 40.0, 50.0, 63.0, 80.0, 100.0, 125.0, 160.0, 200.0,
            250.0, 315.0, 400.0, 500.0, 630.0, 800.0, 1000.0, 1250.0);

    private StandardFuseRatings() {}

    /** {@return all, rising} */
    public static List<Double> all() {
        return RATINGS;
    }

    /** {@return the least rating of at least a current, A} */
    public static Answer atLeast(double current) {
        Physical.notNegative("current", current);
        return RATINGS.stream()
                .filter(rating -> rating >= current)
                .findFirst()
                .map(Answer::of)
                .orElseGet(() -> Answer.outside(LAW, "current", current, 2, 1250, "A"));
    }

    /** {@return the gG fuse ratings that protect a cable: I_B ≤ I_n ≤ I_z and I_2 ≤ 1.45 I_z, rising; empty where none} */
    public static List<Double> protecting(double designCurrent, double capacity) {
        return RATINGS.stream()
                .filter(rating -> ProtectiveDeviceCoordination.of(
                                designCurrent, rating, capacity, ProtectiveDeviceCoordination.fuse(rating))
                        .holds())
                .toList();
    }
}
