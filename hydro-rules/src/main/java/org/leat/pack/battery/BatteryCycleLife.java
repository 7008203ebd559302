package org.leat.pack.battery;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.Optional;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.LeanSeason;
import org.leat.pack.kit.SolvedYear;
import org.leat.plant.duties.CycleYears;
import org.leat.season.DesignYear;
import org.leat.season.Year;

/** Years of the battery at its daily use. */
final class BatteryCycleLife {

    static final Rule RULE = Rule.of("battery/cycle-life", NOTE, "years of the battery at its daily use")
            .why("The battery is what is bought again and again. How deep it goes every day settles how often.")
            .formula(
                    "years = cycles at the day's depth · temperature factor / 365.25; of a year: its share of the life by each"
                            + " cycle, counted by rainflow and added (Miner); shallower than the table its age decides")
            .judged(SolvedYear.HOW + "every day a day of full use at the flow of the year that gives least")
            .source(
                    "cycles against depth: makers' curves as tabled with the cells' properties; lead halves for 10 K above"
                            + " 25 °C: a battery education text")
            .limit("least-years", RATIO, 5, "", COMMON_PRACTICE)
            .passes("lasts", "At {depth} a day the battery lasts {value} years by its cycles.")
            .fails("short", "At {depth} a day the battery lasts {value} years by its cycles; good is {limit}.")
            .passes("age-decides", "At {depth} a day its age decides, not its cycles.")
            .passes(
                    "lasts-such-years",
                    "At such years, {depth:%} out at the deepest, the battery lasts {value} years by its cycles.")
            .fails(
                    "short-of-years",
                    "At such years, {depth:%} out at the deepest, the battery lasts {value} years by its cycles; good is {limit}.")
            .passes(
                    "age-decides-such-years",
                    "At such years, {depth:%} out at the deepest, its age decides, not its cycles.")
            .judge(BatteryCycleLife::judge)
            .wayOut("larger", BankSizes.BANK, BankSizes::larger)
            .build();

    private BatteryCycleLife() {}

    private static Outcome judge(Judgement j) {
        Optional<DesignYear.Told> year = j.year();
        if (year.isPresent()) {
            return ofYear(j, year.get());
        }
        Spot spot = j.at("/battery/capacity").during(LeanSeason.running(j));
        CycleYears cycled = CycleYears.of(LeanSeason.day(j, spot), j.numbers());
        Spot told = spot.with("depth", cycled.depth(), RATIO);
        return cycled.years().isEmpty()
                ? told.says("age-decides")
                : told.atLeast(cycled.years().getAsDouble(), j.limit("least-years"));
    }

    private static Outcome ofYear(Judgement j, DesignYear.Told told) {
        Year year = told.year();
        CycleYears cycled = CycleYears.ofDays(
                1 - year.leastCharge(),
                year.lifeUsed(j.design().battery().chemistry()),
                year.series().days(),
                j.numbers());
        Spot spot = j.at("/battery/capacity")
                .during(SolvedYear.CASE)
                .with("depth", cycled.depth(), RATIO)
                .saying("lasts-such-years", "short-of-years");
        return cycled.years().isEmpty()
                ? spot.says("age-decides-such-years")
                : spot.atLeast(cycled.years().getAsDouble(), j.limit("least-years"));
    }
}
