package org.leat.pack.kit;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Spot;
import org.leat.plant.cases.Running;
import org.leat.plant.derive.LoadDerivation;
import org.leat.plant.duties.FullDay;
import org.leat.plant.loads.DailyUse;

/** Days of full use through the year, and the season with least power. */
public final class LeanSeason {

    private LeanSeason() {}

    /** {@return running at the flow of the year that gives least, else as built; open where the plant is not solved} */
    public static Running running(Judgement j) {
        return Worst.least(flows(j), running -> running.operatingPoint().batteryPower());
    }

    /** {@return what the loads take in a day; the spot is open where a field of theirs is not stated} */
    public static DailyUse use(Judgement j, Spot spot) {
        LoadDerivation.missing(j.design()).ifPresent(field -> spot.given(field, null));
        return LoadDerivation.of(j.design());
    }

    /** {@return a day of full use where the year gives least; open as {@link #running} and {@link #use} are} */
    public static FullDay day(Judgement j, Spot spot) {
        return FullDay.of(running(j), use(j, spot), j.numbers().battery());
    }

    private static List<Running> flows(Judgement j) {
        List<Running> year = j.solved().overTheYear();
        return year.isEmpty() ? j.solved().running().subList(0, 1) : year;
    }
}
