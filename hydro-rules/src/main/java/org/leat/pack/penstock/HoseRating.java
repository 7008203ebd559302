package org.leat.pack.penstock;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.pack.kit.PipeSizes;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.HighestPressure;
import org.leat.plant.numbers.Amount;

/** Hose in place of pipe: its burst pressure against the highest pressure of any case. */
final class HoseRating {

    static final Rule RULE = Rule.of(
                    "penstock/hose-rating", ERROR, "burst pressure of a hose against the highest it sees")
            .why("A hose bursts at a fold, a clamp or a place the sun has hardened, long before a new one on the test"
                    + " bench. A hose without marks is not a pressure hose.")
            .formula("burst pressure / highest pressure of any case")
            .judged("standing, and the worst of every stop of the water")
            .source(COMMON_PRACTICE)
            .source("ISO 7751: ratios of burst to working pressure of hoses (from memory)")
            .limit("ratio", RATIO, 3, "", COMMON_PRACTICE)
            .passes("holds", "Hose {section} bursts at {value} times the {peak} it sees at the worst.")
            .fails(
                    "too-weak",
                    "Hose {section} bursts at {value} times the {peak} it sees at the worst; good is {limit}"
                            + " times.")
            .notApplicable("no-hose", "No hose under pressure.")
            .judgeAll(HoseRating::judge)
            .advice("needed", "A hose marked to burst at {burst:bar} or more, or pipe.", HoseRating::needed)
            .build();

    private HoseRating() {}

    private static List<Outcome> judge(Judgement j) {
        Cases cases = j.solved();
        List<Section> sections = j.design().penstock().sections();
        List<Integer> hoses = IntStream.range(0, sections.size())
                .filter(i -> sections.get(i).pipe() instanceof Pipe.Hose)
                .boxed()
                .toList();
        return hoses.isEmpty()
                ? List.of(j.at("/penstock").says("no-hose"))
                : j.each(hoses, i -> judge(j, i, (Pipe.Hose) sections.get(i).pipe(), HighestPressure.of(cases, i)));
    }

    private static Outcome judge(Judgement j, int index, Pipe.Hose hose, HighestPressure highest) {
        String path = PipeSizes.path(j.design(), index) + "/pipe";
        double burst = j.at(path).si(path + "/burst-pressure", hose.burstPressure());
        Spot spot = j.at(path).during(highest.during());
        double peak = spot.known(highest.pressure());
        return peak > 0
                ? spot.with(
                                "section",
                                j.numbers().penstock().sections().get(index).name())
                        .with("peak", peak, PRESSURE)
                        .atLeast(burst / peak, j.limit("ratio"))
                : spot.says("no-hose");
    }

    private static Stream<Change> needed(Judgement j, Outcome.Fail failure) {
        Amount highest =
                HighestPressure.of(j.solved(), PipeSizes.of(j, failure)).pressure();
        return Stream.of(Change.advice().with("burst", highest.or(0) * failure.limit(), PRESSURE));
    }
}
