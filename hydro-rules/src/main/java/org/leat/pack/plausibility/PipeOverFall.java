package org.leat.pack.plausibility;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.catalogue.tables.PlausibleRange;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.pack.kit.ChangesForText;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.SiteNumbers;

/** The length of the pipe against the height it falls through. */
final class PipeOverFall {

    static final Rule RULE = Rule.of("plausibility/pipe-over-fall", ERROR, "length of the pipe against its fall")
            .judgesInput()
            .why(
                    "A pipe is no shorter than the height between its ends. Where it is, head or length was measured wrong, or a"
                            + " gauge was read in another unit, and nothing that follows means anything.")
            .formula("length of all sections ≥ gross head less its tolerance and what the eye allows; a warning"
                    + " beyond 50 times the head")
            .judged("the numbers as written, gauge reading turned into head; no elevations are needed")
            .source("geometry")
            .source(COMMON_PRACTICE)
            .limit("apart", LENGTH, 0.5, "m", COMMON_PRACTICE, Safer.LOWER)
            .passes("long-enough", "The pipe of {value} is long enough for a fall of {head}.")
            .fails(
                    "too-short",
                    "The pipe is {value} long and is to fall {head}: no pipe is shorter than its fall. Nothing that follows"
                            + " from head or length means anything.")
            .fails("flat", "The pipe is {value} times as long as it falls: look again at head and length.")
            .judge(PipeOverFall::judge)
            .advice(
                    "measure",
                    "Measure both again: {length} of pipe fall no more than that.",
                    ChangesForText.except("flat", PipeOverFall::most))
            .build();

    private PipeOverFall() {}

    private static Outcome judge(Judgement j) {
        SiteNumbers site = j.numbers().site();
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        double eye = j.limit("apart").value();
        double length = sections.stream().mapToDouble(SectionNumbers::length).sum();
        double head = site.grossHead();
        if (!(head > 0)) {
            j.solved(); // no head: the plant has its reason
        }
        double least = Math.max(0, head - site.grossHeadPlusMinus() - eye);
        PlausibleRange range =
                PlausibleRange.find("penstock length over gross head").orElseThrow();
        boolean flat = head > 0 && length / head > range.oddHigh();
        return flat
                ? j.at("/penstock/sections")
                        .as(WARNING)
                        .saying("long-enough", "flat")
                        .atMost(length / head, range.oddHigh(), RATIO)
                : j.at("/penstock/sections").with("head", head, LENGTH).atLeast(length, least, LENGTH);
    }

    private static Stream<Change> most(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.advice().with("length", failure.value(), LENGTH));
    }
}
