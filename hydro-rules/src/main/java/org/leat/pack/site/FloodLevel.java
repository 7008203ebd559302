package org.leat.pack.site;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.m;
import static org.leat.quantity.QuantityKind.LENGTH;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;

/** The lowest electric part against the highest flood. */
final class FloodLevel {

    private static final String PATH = "/site/freeboard";

    static final Rule RULE = Rule.of("site/flood-level", WARNING, "electric parts against the highest flood")
            .warningsHurt()
            .why(
                    "The best fall ends low beside the stream, where the flood of thirty years comes through the door. Under water"
                            + " alternator, bridge and battery are lost, and live parts in water are a danger to whoever wades in.")
            .formula("lowest electric part − highest flood known ≥ limit")
            .judged("the highest flood that marks, neighbours or the authority know of")
            .source(COMMON_PRACTICE)
            .limit("least", LENGTH, 0.3, "m", COMMON_PRACTICE)
            .passes("above", "The lowest electric part lies {value} above the highest flood.")
            .fails("in-reach", "The lowest electric part lies {value} above the highest flood; good is {limit}.")
            .fails(
                    "under",
                    "The highest flood stands {depth:m} over the lowest electric part, which should lie {limit} above it.")
            .judge(FloodLevel::judge)
            .wayOut("raise", "Everything electric {height:m} above the highest flood, or more.", FloodLevel::raise)
            .build();

    private FloodLevel() {}

    private static Outcome judge(Judgement j) {
        double freeboard = j.at("/site").si(PATH, j.design().site().freeboard());
        return j.at(PATH)
                .with("depth", Math.max(0, -freeboard), LENGTH)
                .saying("above", freeboard < 0 ? "under" : "in-reach")
                .atLeast(freeboard, j.limit("least"));
    }

    private static Stream<Change> raise(Judgement j, Outcome.Fail failure) {
        double height = Math.ceil(failure.limit() * 10 - 1e-9) / 10;
        return Stream.of(Change.of(PATH, m(height)).with("height", height, LENGTH));
    }
}
