package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Pipe;
import org.leat.design.Section;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Hose in place of pipe: its burst pressure against the highest pressure of any case. */
final class PenstockHoseRating implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/hose-rating", Level.ERROR)
            .title("burst pressure of a hose against the highest it sees")
            .why("A hose bursts at a fold, a clamp or a place the sun has hardened, long before a new one on the test"
                    + " bench. A hose without marks is not a pressure hose.")
            .formula("burst pressure / highest pressure of any case")
            .judged("standing, and the worst of every stop of the water")
            .source(RuleCard.COMMON_PRACTICE)
            .source("ISO 7751: ratios of burst to working pressure of hoses (from memory)")
            .limit("ratio", QuantityKind.RATIO, 3, "", RuleCard.COMMON_PRACTICE)
            .message("holds", "section", "peak")
            .message("too-weak", "section", "peak")
            .message("no-hose")
            .message("needed", "burst")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().closing().isEmpty()) {
            return Open.unsolved(j);
        }
        List<Section> sections = j.design().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            if (sections.get(i).pipe() instanceof Pipe.Hose hose) {
                outcomes.add(judge(j, i, hose));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/penstock").notApplicable("no-hose")) : outcomes;
    }

    private static Outcome judge(Judgement j, int section, Pipe.Hose hose) {
        String path = PipeSizes.path(j.design(), section) + "/pipe";
        if (hose.burstPressure() == null) {
            return j.at(path).notGiven(path + "/burst-pressure");
        }
        HighestPressure.Peak peak = HighestPressure.of(j, section);
        Spot spot = j.at(path).during(peak.during());
        if (!(peak.pressure() instanceof Amount.Known known)) {
            return Open.because(spot, peak.pressure());
        }
        if (!(known.value() > 0)) {
            return spot.notApplicable("no-hose");
        }
        return spot.compare(
                Comparison.atLeast(Si.of(hose.burstPressure()) / known.value(), j.limit("ratio")),
                "holds",
                "too-weak",
                Arg.of("section", j.design().penstock().sections().get(section).name()),
                Arg.of("peak", known.value(), QuantityKind.PRESSURE));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        List<Section> sections = j.design().penstock().sections();
        for (int i = 0; i < sections.size(); i++) {
            if (comparison != null
                    && failure.path().equals(PipeSizes.path(j.design(), i) + "/pipe")
                    && HighestPressure.of(j, i).pressure() instanceof Amount.Known known) {
                double burst = known.value() * comparison.low();
                return List.of(j.advice("needed", Arg.of("burst", burst, QuantityKind.PRESSURE)));
            }
        }
        return List.of();
    }
}
