package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.pack.kit.PipeSection;
import org.leat.pack.kit.WorstStop;
import org.leat.plant.cases.StopPeak;
import org.leat.plant.duties.HighestPressure;
import org.leat.plant.numbers.Amount;

/** Hose in place of pipe: its burst pressure against the highest pressure of any case. */
final class HoseRating {

    static final Rule RULE = Rule.of(
                    "penstock/hose-rating", ERROR, "burst pressure of a hose against the highest it sees")
            .why("A hose bursts at a fold, a clamp or a place the sun has hardened, long before a new one on the test"
                    + " bench. A hose without marks is not a pressure hose.")
            .formula("burst pressure / highest pressure of any case")
            .judged("standing, and the worst of every stop of the water, the blow of a parted column included")
            .source(COMMON_PRACTICE)
            .source("ISO 7751: ratios of burst to working pressure of hoses (from memory)")
            .limit("ratio", RATIO, 3, "", COMMON_PRACTICE, HIGHER)
            .passes("holds", "Hose {section} bursts at {value} times the {peak} it sees at the worst.")
            .fails(
                    "too-weak",
                    "Hose {section} bursts at {value} times the {peak} it sees at the worst; good is {limit}"
                            + " times.")
            .passes(
                    "holds-rejoined",
                    "Hose {section} bursts at {value} times the {peak} it sees at most as a parted water column rejoins.")
            .fails(
                    "rejoins-too-weak",
                    "Hose {section} bursts at {value} times the {peak} it may see as the water column, parted by the worst stop,"
                            + " rejoins; good is {limit} times.")
            .review("damped", "Hose {section}: " + WorstStop.DAMPED)
            .notApplicable("no-hose", "No hose under pressure.")
            .judgeAll(HoseRating::judge)
            .advice("needed", "A hose marked to burst at {burst:bar} or more, or pipe.", HoseRating::needed)
            .build();

    /** Bursting pressures are marked in steps of five bar. */
    private static final double FIVE_BAR = 5e5;

    private HoseRating() {}

    private static List<Outcome> judge(Judgement j) {
        List<PipeSection> hoses = PipeSection.of(j, Pipe.Hose.class::isInstance);
        return j.eachOr(j.at("/penstock").says("no-hose"), hoses, hose -> judge(j, hose));
    }

    private static Outcome judge(Judgement j, PipeSection hose) {
        Spot at = hose.spot(j);
        double burst = at.si(at.path() + "/burst-pressure", ((Pipe.Hose) hose.pipe()).burstPressure());
        double ratio = j.limit("ratio").value();
        HighestPressure highest = HighestPressure.of(j.solved(), hose.index(), p -> p <= 0 || burst / p >= ratio);
        Spot spot = at.during(highest.during());
        if (highest.pressure().equals(StopPeak.DAMPED)) {
            return spot.with("allowed", burst / ratio, PRESSURE).says("damped");
        }
        double peak = spot.known(highest.pressure());
        if (peak <= 0) {
            return spot.says("no-hose");
        }
        Spot told = highest.rejoined() ? spot.saying("holds-rejoined", "rejoins-too-weak") : spot;
        return told.with("peak", peak, PRESSURE).atLeast(burst / peak, j.limit("ratio"));
    }

    private static Stream<Change> needed(Judgement j, Outcome.Fail failure) {
        HighestPressure highest =
                HighestPressure.of(j.solved(), PipeSection.of(j, failure).index(), p -> true);
        return highest.pressure() instanceof Amount.Known most
                ? Stream.of(Change.advice()
                        .with("burst", Math.ceil(most.value() * failure.limit() / FIVE_BAR) * FIVE_BAR, PRESSURE))
                : Stream.empty();
    }
}
