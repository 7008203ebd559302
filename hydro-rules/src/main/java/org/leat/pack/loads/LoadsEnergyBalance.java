package org.leat.pack.loads;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.ENERGY;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.Lean;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.plant.duties.FullDay;

/** A day's use against a day's generation through the year. */
final class LoadsEnergyBalance {

    static final Rule RULE = Rule.of(
                    "loads/energy-balance", WARNING, "a day's use against a day's generation through the year")
            .why(
                    "A stream gives little, but day and night. If the dry season does not cover the day's use, the battery ends flat"
                            + " however large it is.")
            .formula("energy needed in a day, the battery's and the inverter's losses counted ≤ battery power · 24 h")
            .judged("a day of full use at each flow of the year, the one that gives least")
            .source("energy balance; energy efficiency of cells: battery education text and common practice")
            .passes("covered", "A full day needs {value}, the leanest season gives {limit}.")
            .fails(
                    "short",
                    "A full day needs {value}, the leanest season gives {limit}; {share:%} of the flows stated fall"
                            + " short.")
            .judge(LoadsEnergyBalance::judge)
            .wayOut("larger-nozzle", "Nozzles of {bore:mm} in every open position.", NozzlesOnHand::larger)
            .advice("use-less", "Use {power} less in the mean.", LoadsEnergyBalance::useLess)
            .build();

    private LoadsEnergyBalance() {}

    private static final double DAY = 86_400;

    private static Outcome judge(Judgement j) {
        Spot spot = j.at("/loads").during(Lean.of(j));
        FullDay lean = Lean.day(j, spot);
        List<FullDay> days = Lean.days(j, spot);
        long fallShort = days.stream().filter(day -> day.surplus() < 0).count();
        return spot.with("share", (double) fallShort / days.size(), RATIO)
                .atMost(lean.needed(), lean.generated(), ENERGY);
    }

    private static Stream<Change> useLess(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.advice().with("power", (failure.value() - failure.limit()) / DAY, POWER));
    }
}
