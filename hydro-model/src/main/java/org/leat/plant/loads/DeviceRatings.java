package org.leat.plant.loads;

import java.util.List;
import org.leat.design.DeviceKind;
import org.leat.electrics.FuseClass;
import org.leat.electrics.ProtectiveDeviceCoordination;
import org.leat.electrics.StandardFuseRatings;

/** Rated currents of fuses and breakers: which can be bought, and which protect a cable. */
public final class DeviceRatings {

    private DeviceRatings() {}

    /** {@return rated currents that fuses are made in, A, rising; IEC 60269-1} */
    public static List<Double> standard() {
        return StandardFuseRatings.all();
    }

    /**
     * {@return the current that surely opens a device within the time its standard has for it, A}
     *
     * @param kind fuse or breaker
     * @param rating of the device, A: small fuses open at more times their rating
     */
    public static double surelyOpens(DeviceKind kind, double rating) {
        return rating * ratio(kind, rating);
    }

    /** {@return the least current, A, that a back-up link of a rating, A, surely breaks: that of the class which breaks least} */
    public static double backUpBreaks(double rating) {
        return rating * Math.max(FuseClass.AM.leastBreaking(), FuseClass.AR.leastBreaking());
    }

    private static double ratio(DeviceKind kind, double rating) {
        return kind == DeviceKind.BREAKER
                ? ProtectiveDeviceCoordination.BREAKER
                : ProtectiveDeviceCoordination.fuse(rating);
    }

    /**
     * {@return the greatest rated current of a device that protects a cable, A; IEC 60364-4-43 clause 433.1}
     *
     * @param kind fuse or breaker: they differ in the current that surely opens them
     * @param rating of the device looked at, A: small fuses open at more times their rating
     * @param capacity of the cable as laid, A
     */
    public static double greatestProtecting(DeviceKind kind, double rating, double capacity) {
        return ProtectiveDeviceCoordination.greatestRating(capacity, ratio(kind, rating));
    }
}
