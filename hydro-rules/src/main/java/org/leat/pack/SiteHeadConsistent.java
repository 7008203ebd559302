package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Intake;
import org.leat.design.Section;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The stated head against where the pipe is said to begin and end. */
final class SiteHeadConsistent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("site/head-consistent", Level.WARNING)
            .title("head against the pipe's elevations")
            .why(
                    "Head is what everything else is computed from. Where the head and the pipe's elevations tell different"
                            + " stories, one of them was measured wrong.")
            .formula("|gross head − (elevation of the pipe's top + half its bore + depth of water over it)| ≤ tolerance"
                    + " of the head + what the eye allows")
            .judged("the penstock as laid")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("apart", QuantityKind.LENGTH, 0.3, "m", RuleCard.COMMON_PRACTICE)
            .limit("share", QuantityKind.RATIO, 2, "%", RuleCard.COMMON_PRACTICE)
            .message("agree", "head", "pipe")
            .message("differ", "head", "pipe")
            .message("end-agrees", "elevation")
            .message("end-differs", "elevation")
            .message("as-laid", "head")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Section> sections = j.design().penstock().sections();
        Quantity<Length> top = sections.get(0).fromElevation();
        if (top == null) {
            String path = PipeSizes.path(j.design(), 0);
            return List.of(j.at(path).notGiven(path + "/from-elevation"));
        }
        Intake intake = j.design().intake();
        if (intake == null || intake.submergence() == null) {
            return List.of(j.at("/site/gross-head").notGiven("/intake/submergence"));
        }
        List<Outcome> outcomes = new ArrayList<>();
        double head = j.plant().numbers().site().grossHead();
        double allowed = allowed(j);
        double pipe = pipe(j);
        outcomes.add(j.at("/site/gross-head")
                .compare(
                        Comparison.atMost(Math.abs(head - pipe), allowed, QuantityKind.LENGTH),
                        "agree",
                        "differ",
                        Arg.of("head", head, QuantityKind.LENGTH),
                        Arg.of("pipe", pipe, QuantityKind.LENGTH)));
        int last = sections.size() - 1;
        Quantity<Length> end = sections.get(last).toElevation();
        if (end != null) {
            outcomes.add(j.at(PipeSizes.path(j.design(), last) + "/to-elevation")
                    .compare(
                            Comparison.atMost(Math.abs(Si.of(end)), allowed, QuantityKind.LENGTH),
                            "end-agrees",
                            "end-differs",
                            Arg.of("elevation", Si.of(end), QuantityKind.LENGTH)));
        }
        return outcomes;
    }

    private static double allowed(Judgement j) {
        SiteNumbers site = j.plant().numbers().site();
        double eye = Math.max(j.limit("apart").value(), j.limit("share").value() * Math.abs(site.grossHead()));
        return eye + site.grossHeadPlusMinus();
    }

    /** The head that the pipe's top and the water over it make. */
    private static double pipe(Judgement j) {
        SectionNumbers first = j.plant().numbers().penstock().sections().get(0);
        Intake intake = j.design().intake();
        double depth = intake == null ? 0 : Si.of(intake.submergence(), 0);
        return first.fromElevation() + first.bore() / 2 + depth;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double metres = Math.rint(pipe(j) * 10) / 10;
        return !failure.path().equals("/site/gross-head") || metres <= 0
                ? List.of()
                : List.of(j.advice("as-laid", Arg.of("head", metres, QuantityKind.LENGTH)));
    }
}
