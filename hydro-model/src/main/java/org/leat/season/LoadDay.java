package org.leat.season;

import java.util.Arrays;
import org.apiguardian.api.API;
import org.leat.plant.loads.DailyUse;
import org.leat.plant.loads.LoadNumbers;

/**
 * What the loads take in each hour of a day, W at the battery's poles.
 *
 * <p>A design tells how long a load runs, not when. What runs all day is spread evenly; the rest is taken to end at ten in the
 * evening [common practice: lights and cooking]: this asks more of a battery than the same energy spread over the day, and less than
 * all of it before dawn.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class LoadDay {

    private static final int LAST_HOUR = 22;
    private static final double HOUR = 3600;

    private final double[] watts;

    private LoadDay(double[] watts) {
        this.watts = watts;
    }

    /** {@return a day of 24 hours, W each} */
    public static LoadDay of(double[] watts) {
        if (watts.length != 24 || Arrays.stream(watts).anyMatch(w -> !(w >= 0 && w <= Double.MAX_VALUE))) {
            throw new IllegalArgumentException("a day has 24 hours, each with no less than nil");
        }
        return new LoadDay(watts.clone());
    }

    /** {@return the day of a plant's loads} */
    static LoadDay of(DailyUse use) {
        double[] watts = new double[24];
        Arrays.fill(watts, use.standingPower());
        for (LoadNumbers load : use.loads()) {
            double hours = load.time() / HOUR;
            double power = use.atPoles(load) * load.count();
            for (int back = 1; back <= 24 && hours > 0; back++) {
                int hour = Math.floorMod(LAST_HOUR - back, 24);
                watts[hour] += power * Math.min(1, hours);
                hours -= 1;
            }
        }
        return new LoadDay(watts);
    }

    /** {@return what is taken in an hour, 0 to 23, W} */
    public double watts(int hour) {
        return watts[hour];
    }

    /** {@return energy of the day, J} */
    public double energy() {
        return Arrays.stream(watts).sum() * HOUR;
    }
}
