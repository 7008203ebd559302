package org.leat.pack;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.QuantityKind;

/** How well the head is known against what the pressure ratings leave. */
final class SiteMeasurementSpread implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("site/measurement-spread", Level.NOTE)
            .title("how well the head is known")
            .why(
                    "A pass by two per cent means nothing where the head is known to five. Where the measurement spreads wider"
                            + " than the tightest margin, measure again before trusting the pass.")
            .formula("tolerance of the head / head ≤ least margin of the pressure rules")
            .judged("standing and surge pressure, whose failure is an error and which grow with the head")
            .source("ISO/IEC Guide 98-3 (GUM): a value is judged with its uncertainty")
            .message("known-well", "tolerance")
            .message("spreads", "tolerance")
            .message("fails-already")
            .message("unknown-margin")
            .message("no-tolerance")
            .message("measure", "tolerance")
            .build();

    private static final String PATH = "/site/gross-head";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        SiteNumbers site = j.plant().numbers().site();
        if (!(site.grossHeadPlusMinus() > 0) || !(site.grossHead() > 0)) {
            return List.of(j.at(PATH).open(PATH, "no-tolerance"));
        }
        double margin = Double.POSITIVE_INFINITY;
        for (LegacyRule rule : List.of(new PenstockStaticPressure(), new PenstockSurgePressure())) {
            for (Outcome outcome : rule.judge(j)) {
                Comparison comparison = outcome.comparison();
                margin = comparison == null ? margin : Math.min(margin, comparison.margin());
            }
        }
        if (!Double.isFinite(margin)) {
            return List.of(j.at(PATH).open(null, "unknown-margin"));
        }
        if (margin < 0) {
            return List.of(j.at(PATH).notApplicable("fails-already"));
        }
        return List.of(j.at(PATH)
                .compare(
                        Comparison.atMost(site.grossHeadPlusMinus() / site.grossHead(), margin, QuantityKind.RATIO),
                        "known-well",
                        "spreads",
                        Arg.of("tolerance", site.grossHeadPlusMinus(), QuantityKind.LENGTH)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        double head = j.plant().numbers().site().grossHead();
        return List.of(j.advice("measure", Arg.of("tolerance", comparison.high() * head, QuantityKind.LENGTH)));
    }
}
