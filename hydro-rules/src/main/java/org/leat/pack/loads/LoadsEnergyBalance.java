package org.leat.pack.loads;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.ENERGY;
import static org.leat.quantity.QuantityKind.POWER;

import java.util.Optional;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.BankSizes;
import org.leat.pack.kit.LeanSeason;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.SolvedYear;
import org.leat.plant.duties.FullDay;
import org.leat.season.DesignYear;

/** A day's use against a day's generation through the year. */
final class LoadsEnergyBalance {

    static final Rule RULE = Rule.of(
                    "loads/energy-balance", WARNING, "a day's use against a day's generation through the year")
            .why(
                    "A stream gives little, but day and night. If the dry season does not cover the day's use, the battery ends flat"
                            + " however large it is.")
            .formula("energy needed in a day, the battery's and the inverter's losses counted ≤ battery power · 24 h")
            .judged(SolvedYear.HOW + "a day of full use at each flow of the year, the one that gives least")
            .source("energy balance; energy efficiency of cells: battery education text and common practice")
            .either("covered", "short", "A full day needs {value}, the leanest season gives {limit}.")
            .passes("covered-all-year", "In {when} the loads want {value} a day, and {limit} is there for them.")
            .fails(
                    "short-of-the-year",
                    "In {when} the loads want {value} a day and get {limit}; in {hours} hours of the year something is"
                            + " missing.")
            .judge(LoadsEnergyBalance::judge)
            .wayOut("larger-nozzle", "Nozzles of {bore:mm} in every open position.", NozzlesOnHand::larger)
            .wayOut("larger-bank", BankSizes.BANK, LoadsEnergyBalance::largerBank)
            .advice("use-less", "Use {power} less in the mean.", LoadsEnergyBalance::useLess)
            .build();

    private LoadsEnergyBalance() {}

    private static final double DAY = 86_400;

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/loads").during(LeanSeason.running(j));
        Optional<DesignYear.Told> year = j.year();
        if (year.isPresent()) {
            return ofYear(j.at("/loads").during(SolvedYear.CASE), year.get());
        }
        FullDay lean = LeanSeason.day(j, spot);
        return spot.atMost(lean.needed(), lean.generated(), ENERGY);
    }

    private static Outcome ofYear(Spot spot, DesignYear.Told told) {
        SolvedYear.LoadsOfMonth lean = SolvedYear.leanest(told);
        return spot.saying("covered-all-year", "short-of-the-year")
                .with("when", SolvedYear.name(told, lean.month()))
                .with("hours", (long) told.year().hoursMissing())
                .atMost(lean.wanted(), lean.there(), ENERGY);
    }

    /** Through a few dry weeks a bank can help; through a day that falls short every day it cannot. */
    private static Stream<Change> largerBank(Judgement j, Outcome.Fail failure) {
        return failure.says("short-of-the-year") ? BankSizes.larger(j, failure) : Stream.empty();
    }

    private static Stream<Change> useLess(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.advice().with("power", (failure.value() - failure.limit()) / DAY, POWER));
    }
}
