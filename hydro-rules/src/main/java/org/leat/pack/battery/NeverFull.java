package org.leat.pack.battery;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.Optional;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.LeadAcid;
import org.leat.pack.kit.LeanSeason;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.SolvedYear;
import org.leat.plant.duties.FullDay;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.season.DesignYear;

/** A lead-acid bank that is never charged full in some season of the year. */
final class NeverFull {

    static final Rule RULE = Rule.of(
                    "battery/never-full", WARNING, "lead that is never filled in some season of the year")
            .why(
                    "Lead that does not reach its absorption voltage every week or two keeps its sulphate, loses capacity for good and"
                            + " lets its electrolyte lie in layers. Where the stream leaves too little over in its dry season, that lasts for"
                            + " months.")
            .formula(
                    "mean generation − mean use ≥ D · E/(η · days): what fills the bank from its daily depth of discharge D to"
                            + " absorption in that time")
            .judged(SolvedYear.HOW + "a day of full use at each flow of the year, the one that leaves least over")
            .source("energy balance; energy efficiency of cells: battery education text and common practice")
            .source(COMMON_PRACTICE)
            .limit("days", TIME, 14, "d", COMMON_PRACTICE)
            .passes("filled", "In the leanest season {value} are left over; {limit} fill the battery within {time:d}.")
            .fails(
                    "never",
                    "In the leanest season {value} are left over; to fill the battery within {time:d} it takes"
                            + " {limit}. It is never full, and sulphates.")
            .passes("filled-all-year", "The longest stretch of the year without a full battery is {value}.")
            .fails(
                    "never-for-long",
                    "The longest stretch of the year without a full battery is {value}; it should be {limit}, or lead"
                            + " sulphates.")
            .notApplicable("not-lead", "Not judged: only lead must be filled.")
            .judge(NeverFull::judge)
            .wayOut("smaller", BankSizes.BANK, BankSizes::smaller)
            .wayOut("larger-nozzle", "Open the {bore:mm} nozzle on hand.", NozzlesOnHand::larger)
            .advice(
                    "use-less",
                    "Use {power} less, day and night, in the lean season; or fill the battery from a generator now"
                            + " and then.",
                    ChangesForText.only("never", NeverFull::useLess))
            .advice(
                    "fill-by-other-means",
                    "Use less in that season, or fill the battery from a generator now and then.",
                    ChangesForText.except("never", (j, failure) -> Stream.of(Change.advice())))
            .build();

    private NeverFull() {}

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/battery/capacity");
        if (!LeadAcid.is(j)) {
            return spot.says("not-lead");
        }
        Optional<DesignYear.Told> year = j.year();
        if (year.isPresent()) {
            return spot.during(SolvedYear.CASE)
                    .saying("filled-all-year", "never-for-long")
                    .atMost(SolvedYear.longestWithoutFull(year.get()), j.limit("days"));
        }
        FullDay lean = LeanSeason.day(j, spot);
        BatteryNumbers battery = j.numbers().battery();
        double filling = battery.usualDepthOfDischarge() * battery.storedEnergy() / battery.usualEnergyEfficiency();
        double needed = filling / j.limit("days").value();
        return spot.during(lean.running())
                .with("time", j.limit("days").value(), TIME)
                .atLeast(lean.surplus(), needed, POWER);
    }

    private static Stream<Change> useLess(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.advice().with("power", failure.limit() - failure.value(), POWER));
    }
}
