package org.leat.pack.site;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Section;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.PipeSizes;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.quantity.Si;

/** The stated head against where the pipe is said to begin and end. */
final class HeadConsistent {

    private static final String HEAD = "/site/gross-head";

    static final Rule RULE = Rule.of("site/head-consistent", WARNING, "head against the pipe's elevations")
            .why(
                    "Head is what everything else is computed from. Where the head and the pipe's elevations tell different"
                            + " stories, one of them was measured wrong.")
            .formula("|gross head − (elevation of the pipe's top + half its bore + depth of water over it)| ≤ tolerance"
                    + " of the head + what the eye allows")
            .judged("the penstock as laid")
            .source(COMMON_PRACTICE)
            .limit("apart", LENGTH, 0.3, "m", COMMON_PRACTICE)
            .limit("share", RATIO, 2, "%", COMMON_PRACTICE)
            .passes("agree", "The head of {head:m} agrees with the pipe's top and the water over it, {pipe:m}.")
            .fails(
                    "differ",
                    "The head is given as {head:m}, but the pipe's top and the water over it make {pipe:m}:"
                            + " {value:m} apart, where {limit:m} can be a matter of reading.")
            .passes("end-agrees", "The pipe ends at the nozzles' height.")
            .fails(
                    "end-differs",
                    "The pipe ends {elevation:m} above the nozzle axis, from which the head counts;"
                            + " {limit:m} can be a matter of reading.")
            .judgeAll(HeadConsistent::judge)
            .advice(
                    "as-laid",
                    "Measure again; a head of {head:m} would agree with the pipe as laid.",
                    HeadConsistent::asLaid)
            .build();

    private HeadConsistent() {}

    private static List<Outcome> judge(Judgement j) {
        List<Section> sections = j.design().penstock().sections();
        String top = PipeSizes.path(j.design(), 0);
        j.at(top).given(top + "/from-elevation", sections.get(0).fromElevation());
        double pipe = pipe(j);
        double head = j.numbers().site().grossHead();
        double allowed = allowed(j);
        List<Outcome> outcomes = new ArrayList<>();
        outcomes.add(j.at(HEAD)
                .with("head", head, LENGTH)
                .with("pipe", pipe, LENGTH)
                .atMost(Math.abs(head - pipe), allowed, LENGTH));
        int last = sections.size() - 1;
        Quantity<Length> end = sections.get(last).toElevation();
        if (end != null) {
            outcomes.add(j.at(PipeSizes.path(j.design(), last) + "/to-elevation")
                    .saying("end-agrees", "end-differs")
                    .with("elevation", Si.of(end), LENGTH)
                    .atMost(Math.abs(Si.of(end)), allowed, LENGTH));
        }
        return outcomes;
    }

    private static double allowed(Judgement j) {
        SiteNumbers site = j.numbers().site();
        double eye = Math.max(j.limit("apart").value(), j.limit("share").value() * Math.abs(site.grossHead()));
        return eye + site.grossHeadPlusMinus();
    }

    /** The head that the pipe's top and the water over it make. */
    private static double pipe(Judgement j) {
        double depth =
                j.at(HEAD).si("/intake/submergence", DesignParts.intake(j).submergence());
        SectionNumbers first = j.numbers().penstock().sections().get(0);
        return first.fromElevation() + first.bore() / 2 + depth;
    }

    private static Stream<Change> asLaid(Judgement j, Outcome.Fail failure) {
        double metres = Math.rint(pipe(j) * 10) / 10;
        return failure.says("differ") && metres > 0
                ? Stream.of(Change.advice().with("head", metres, LENGTH))
                : Stream.empty();
    }
}
