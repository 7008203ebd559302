package org.leat.pack;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalDouble;
import javax.measure.Quantity;
import javax.measure.quantity.Time;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.design.Bearings;
import org.leat.design.Buckets;
import org.leat.design.Intake;
import org.leat.design.Making;
import org.leat.design.Runner;
import org.leat.design.Screen;
import org.leat.law.Answer;
import org.leat.pack.kit.Lean;
import org.leat.pack.kit.Screens;
import org.leat.pack.kit.WornOpen;
import org.leat.plant.cases.CycleYears;
import org.leat.plant.cases.FullDay;
import org.leat.plant.cases.Running;
import org.leat.plant.derive.LoadDerivation;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/**
 * How long a part goes before somebody must see to it; the plant is solved.
 *
 * @param part what it is called in texts
 * @param path where it stands
 * @param missing field without which it is not known; null where it is known
 * @param time s; infinite where nothing wears, or it is not known
 * @param word phrase in place of a number; null where the number is to be told
 */
record Interval(
        String part,
        String path,
        @Nullable String missing,
        double time,
        @Nullable String word) {

    private static final double YEAR = 365.25 * 86_400;

    /** Running time after which grease and water rather than load have ended a bearing; common practice. */
    private static final double GREASE = 10 * YEAR;

    private static final String OVERLOADED = "interval.overloaded";

    private static Interval of(String part, String path, double time) {
        return new Interval(part, path, null, time, null);
    }

    private static Interval said(String part, String path, String word) {
        return new Interval(part, path, null, Double.POSITIVE_INFINITY, word);
    }

    private static Interval unknown(String part, String path, String missing) {
        return new Interval(part, path, missing, Double.POSITIVE_INFINITY, "interval.unknown");
    }

    /** {@return whether there is an answer} */
    boolean known() {
        return missing == null && !OVERLOADED.equals(word);
    }

    /** {@return as an argument named like the part; the battery's in years} */
    Arg arg() {
        if (word != null) {
            return Arg.phrase(part, word);
        }
        return part.equals("battery")
                ? Arg.of(part, time / YEAR, QuantityKind.RATIO)
                : Arg.of(part, time, QuantityKind.TIME);
    }

    /** Blocked evenly in time; the loss goes with the square of what is left open. */
    static Interval screen(Judgement j, double lossShare, double mostBlocked) {
        Screen screen = Screens.of(j);
        Double blocked = screen == null ? null : Screens.blockedShare(screen);
        if (blocked == null) {
            return unknown("screen", "/intake", screen == null ? Screens.PATH : Screens.PATH + "/blocked-share");
        }
        Intake intake = j.design().intake();
        Quantity<Time> told = intake == null ? null : intake.cleaningInterval();
        if (told == null) {
            return unknown("screen", "/intake", "/intake/cleaning-interval");
        }
        double stated = Si.of(told);
        if (!(blocked > 0)) {
            return of("screen", "/intake", stated);
        }
        Running running = Worst.most(j.cases().running(), r -> r.water().screenLoss());
        double loss = running.water().screenLoss() / running.water().grossHead() / lossShare;
        double due = Math.max(0, Math.min(mostBlocked, 1 - (1 - blocked) * Math.sqrt(loss)));
        return of("screen", "/intake", stated * due / blocked);
    }

    /** The fastest growing of the open nozzles; growth of the area even in time. */
    static Interval nozzles(Judgement j, double areaShare) {
        WornOpen worn = WornOpen.of(j);
        String missing = worn.missing() == null ? WornOpen.untimed(j) : worn.missing();
        return missing == null
                ? of("nozzles", "/nozzles", WornOpen.time(j, areaShare))
                : unknown("nozzles", "/nozzles", missing);
    }

    static Interval necks(Judgement j) {
        Runner runner = j.design().runner();
        Buckets buckets = runner == null ? null : runner.buckets();
        String path = runner == null ? "/" : "/runner";
        if (buckets == null || buckets.making() == null) {
            return unknown("necks", path, "/runner/buckets/making");
        }
        if (buckets.making() != Making.PRINTED) {
            return said("necks", path, "interval.yearly");
        }
        String missing = PrintedInspection.missing(j, buckets);
        return missing == null ? of("necks", path, PrintedInspection.interval(j)) : unknown("necks", path, missing);
    }

    static Interval bearings(Judgement j) {
        String missing = BearingDuty.missing(j);
        if (missing != null) {
            return unknown("bearings", j.design().runner() == null ? "/" : "/runner", missing);
        }
        Runner runner = Objects.requireNonNull(j.design().runner());
        Bearings bearings = Objects.requireNonNull(runner.bearings());
        BearingDuty duty = BearingDuty.worst(j, bearings);
        if (!duty.turns()) {
            return said("bearings", "/runner", "interval.grease");
        }
        if (!(duty.life(bearings) instanceof Answer.Value life)) {
            return said("bearings", "/runner", OVERLOADED);
        }
        return life.value() < GREASE
                ? of("bearings", "/runner", life.value())
                : said("bearings", "/runner", "interval.grease");
    }

    static Interval battery(Judgement j) {
        Optional<String> missing = LoadDerivation.missing(j.design());
        if (missing.isPresent()) {
            return unknown("battery", "/battery", missing.get());
        }
        BatteryNumbers battery = j.numbers().battery();
        FullDay day = FullDay.of(Lean.of(j), LoadDerivation.of(j.design()), battery);
        OptionalDouble years = CycleYears.of(day, j.numbers()).years();
        return years.isEmpty()
                ? said("battery", "/battery", "interval.age")
                : of("battery", "/battery", years.getAsDouble() * YEAR);
    }
}
