package org.leat.pack.plant;

import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Supplier;
import org.leat.check.Arg;
import org.leat.check.Arg.Worded;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Spot;
import org.leat.design.Bearings;
import org.leat.design.Buckets;
import org.leat.design.Intake;
import org.leat.design.Making;
import org.leat.design.Screen;
import org.leat.law.Answer;
import org.leat.pack.kit.LeanSeason;
import org.leat.pack.kit.NozzleWear;
import org.leat.pack.kit.PrintedNecks;
import org.leat.pack.kit.RunnerParts;
import org.leat.pack.kit.Screens;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.BearingDuty;
import org.leat.plant.duties.CycleYears;
import org.leat.quantity.Si;

/**
 * How long a part goes before somebody must see to it; the plant is solved.
 *
 * @param value as texts tell it
 * @param time s; empty where no number is told
 * @param open why it is not known; empty where it is
 */
record Interval(Arg value, OptionalDouble time, Optional<Outcome> open) {

    private static final double YEAR = 365.25 * 86_400;

    /** Running time after which grease and water rather than load have ended a bearing; common practice. */
    private static final double GREASE = 10 * YEAR;

    private static Interval of(String part, double time) {
        return new Interval(Arg.of(part, time, TIME), OptionalDouble.of(time), Optional.empty());
    }

    private static Interval said(String part, Worded words) {
        return new Interval(Arg.phrase(part, words), OptionalDouble.empty(), Optional.empty());
    }

    /** What the question answers; where an input is absent, that it is not known, and why. */
    private static Interval asked(Judgement j, String part, Supplier<Interval> question) {
        return j.answered(
                question,
                open -> new Interval(
                        Arg.phrase(part, IntervalWord.UNKNOWN), OptionalDouble.empty(), Optional.of(open)));
    }

    /** {@return whether there is an answer} */
    boolean known() {
        return open.isEmpty() && !value.equals(Arg.phrase("bearings", IntervalWord.OVERLOADED));
    }

    /** {@return screen, nozzles, necks of the wheel, bearings and battery} */
    static List<Interval> all(Judgement j) {
        return List.of(
                asked(j, "screen", () -> screen(j)),
                asked(j, "nozzles", () -> nozzles(j)),
                asked(j, "necks", () -> necks(j, wheel(j))),
                asked(j, "bearings", () -> bearings(j, wheel(j))),
                asked(j, "battery", () -> battery(j)));
    }

    private static Spot wheel(Judgement j) {
        return j.at(j.design().runner() == null ? "/" : "/runner");
    }

    /** Blocked evenly in time; the loss goes with the square of what is left open. */
    private static Interval screen(Judgement j) {
        Screen screen = Screens.given(j);
        Spot spot = j.at("/intake");
        double blocked = spot.si(Screens.PATH + "/blocked-share", Screens.blockedShare(screen));
        Intake intake = spot.given(j.design().intake());
        double stated = spot.si("/intake/cleaning-interval", intake.cleaningInterval());
        if (!(blocked > 0)) {
            return of("screen", stated);
        }
        Running running = Worst.most(j.solved().running(), r -> r.water().screenLoss());
        double loss = running.water().screenLoss()
                / running.water().grossHead()
                / j.limit("screen-loss").value();
        double most = j.limit("screen-blocked").value();
        double due = Math.max(0, Math.min(most, 1 - (1 - blocked) * Math.sqrt(loss)));
        return of("screen", stated * due / blocked);
    }

    /** The fastest growing of the open nozzles; growth of the area even in time. */
    private static Interval nozzles(Judgement j) {
        Spot spot = j.at("/nozzles");
        NozzleWear worn = NozzleWear.of(j);
        String missing = worn.missing() == null ? NozzleWear.untimed(j) : worn.missing();
        if (missing != null) {
            spot.given(missing, null);
        }
        OptionalDouble time = NozzleWear.time(j, j.limit("nozzle-area").value());
        return time.isEmpty() ? said("nozzles", IntervalWord.UNWORN) : of("nozzles", time.getAsDouble());
    }

    private static Interval necks(Judgement j, Spot spot) {
        Buckets buckets = spot.given("/runner/buckets/making", RunnerParts.buckets(j));
        return spot.given("/runner/buckets/making", buckets.making()) == Making.PRINTED
                ? of("necks", PrintedNecks.interval(j, spot))
                : said("necks", IntervalWord.YEARLY);
    }

    private static Interval bearings(Judgement j, Spot spot) {
        BearingDuty duty = BearingDuty.worst(j.solved(), RunnerParts.shaft(j, spot));
        if (!duty.turns()) {
            return said("bearings", IntervalWord.GREASE);
        }
        Bearings bearings = spot.given("/runner/bearings", RunnerParts.bearings(j));
        if (!(duty.life(Si.of(bearings.dynamicRating())) instanceof Answer.Value life)) {
            return said("bearings", IntervalWord.OVERLOADED);
        }
        return life.value() < GREASE ? of("bearings", life.value()) : said("bearings", IntervalWord.GREASE);
    }

    /** In years: by its cycles, every day a day of full use at the flow of the year that gives least. */
    private static Interval battery(Judgement j) {
        OptionalDouble years =
                CycleYears.of(LeanSeason.day(j, j.at("/battery")), j.numbers()).years();
        return years.isEmpty()
                ? said("battery", IntervalWord.AGE)
                : new Interval(Arg.of("battery", years.getAsDouble(), RATIO), years, Optional.empty());
    }
}
