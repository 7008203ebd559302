package org.leat.hydraulics;

import java.util.Arrays;
import org.jspecify.annotations.Nullable;
import org.leat.law.Physical;

/**
 * How the open area of the nozzles changes: τ, area over the area of the steady flow, against time; straight between points,
 * constant after the last.
 */
public final class NozzleOpening {

    private final double[] times;
    private final double[] shares;

    private NozzleOpening(double[] times, double[] shares) {
        this.times = times;
        this.shares = shares;
        for (int i = 0; i < times.length; i++) {
            Physical.notNegative("time", times[i]);
            Physical.within("opening", shares[i], 0, 1);
            if (i > 0 && times[i] < times[i - 1]) {
                throw new IllegalArgumentException("times must rise: " + times[i] + " after " + times[i - 1]);
            }
        }
    }

    /** {@return an area that stays} */
    public static NozzleOpening unchanged() {
        return new NozzleOpening(new double[] {0}, new double[] {1});
    }

    /** {@return an area that changes at a stroke, as when one of several nozzles plugs} */
    public static NozzleOpening step(double share) {
        return linear(1, share, 0);
    }

    /** {@return an area that changes evenly over a time, s} A time of 0 changes it at once. */
    public static NozzleOpening linear(double from, double to, double time) {
        return new NozzleOpening(new double[] {0, time}, new double[] {from, to});
    }

    /** {@return an area given at points in time, s, from 0 on} */
    public static NozzleOpening table(double[] times, double[] shares) {
        if (times.length == 0 || times.length != shares.length || times[0] != 0) {
            throw new IllegalArgumentException("a table begins at time 0 and has an opening for each time");
        }
        return new NozzleOpening(times.clone(), shares.clone());
    }

    /** {@return τ at a time, s; after a step at that same time only beyond it} */
    public double at(double time) {
        if (time <= 0) {
            return shares[0];
        }
        int last = times.length - 1;
        if (time > times[last]) {
            return shares[last];
        }
        int after = firstFrom(time);
        double share = (time - times[after - 1]) / (times[after] - times[after - 1]);
        return shares[after - 1] + share * (shares[after] - shares[after - 1]);
    }

    /** The first point at a time or later; there is one. */
    private int firstFrom(double time) {
        int low = 0;
        int high = times.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (time <= times[middle]) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    /** By times and areas. */
    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof NozzleOpening o && Arrays.equals(times, o.times) && Arrays.equals(shares, o.shares);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(times) + Arrays.hashCode(shares);
    }

    /** {@return whether nothing stays open after the last change} */
    public boolean closes() {
        return shares[shares.length - 1] == 0;
    }

    /** {@return time of the last change, s} */
    public double lastChange() {
        return times[times.length - 1];
    }
}
