package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Alternator;
import org.leat.design.InsulationClass;
import org.leat.pack.kit.ChangesForText;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.plant.cases.Cases;
import org.leat.plant.duties.SettledWinding;
import org.leat.quantity.Quantities.ThermalResistance;
import org.leat.quantity.Si;

/** Winding temperature against the class of its insulation. */
final class WindingInsulation {

    private static final String MEASURED = "/alternator/winding/temperature";
    private static final String COOLING = "/alternator/thermal-resistance";

    static final Rule RULE = Rule.of(
                    "alternator/winding-temperature", ERROR, "winding temperature against the class of its insulation")
            .why(
                    "A stream turns day and night: the winding reaches its full temperature and stays there. Past the class of"
                            + " its insulation it ages by half for every ten kelvins, then shorts.")
            .formula("T = T_air + R_th (P_fe + P_cu (234.5 + T)/(234.5 + T_w)), plus the hot spot's allowance ≤ class")
            .judged(
                    "running in the hottest air, the nozzle set with the hottest winding; first what was read on the running machine, where that is too hot")
            .source("IEC 60085 thermal classes")
            .source(
                    "hot spot: what the rises of IEC 60034-1 at 40 °C leave up to the class: A and E 5 K (from memory), B and F 10 K,"
                            + " H 15 K (read)")
            .passes("cool-enough", "The hottest spot of the winding reaches {value} ({mean} in the mean).")
            .fails(
                    "too-hot",
                    "The hottest spot of the winding reaches {value} ({mean} in the mean); its insulation of class"
                            + " {insulation} stands {limit}.")
            .fails(
                    "burns",
                    "The winding warms until it burns: at what it carries it settles at no temperature that copper and varnish of"
                            + " class {insulation} survive.")
            .fails(
                    "told-too-hot",
                    "The winding is told to reach {mean} while running, its hottest spot {value}; its insulation of class"
                            + " {insulation} stands {limit}.")
            .judge(WindingInsulation::judge)
            .wayOut(
                    "cooler",
                    "Cooling that brings winding to air down to {resistance}: fins, a fan, a metal housing.",
                    WindingInsulation::cooler)
            .lastAdvice(
                    "read-again",
                    "Less water until it is cooler, and the temperature read again.",
                    ChangesForText.only("told-too-hot", Change.advice()))
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .build();

    private WindingInsulation() {}

    private static Outcome judge(Judgement j) {
        Cases cases = j.solved();
        Alternator alternator = j.design().alternator();
        Outcome measured = measured(j, alternator);
        if (measured != null) {
            return measured;
        }
        SettledWinding hottest = SettledWinding.hottest(cases, j.at(COOLING).si(alternator.thermalResistance()));
        Spot spot = j.at("/alternator/insulation-class").during(hottest.running());
        InsulationClass insulation = spot.given(alternator.insulationClass());
        if (SettledWinding.burns(hottest.temperature())) {
            return spot.with("insulation", insulation).says("burns");
        }
        double mean = hottest.temperature().getAsDouble();
        double spotTemperature = mean + SettledWinding.hotSpotAllowance(insulation);
        return spot.with("mean", mean, TEMPERATURE)
                .with("insulation", insulation)
                .atMost(spotTemperature, SettledWinding.limit(insulation), TEMPERATURE);
    }

    /** What was felt or read on the running machine counts before what is worked out, where it is too hot. */
    private static @Nullable Outcome measured(Judgement j, Alternator alternator) {
        InsulationClass insulation = alternator.insulationClass();
        double read = Si.of(alternator.winding().temperature(), 0);
        if (insulation == null
                || read + SettledWinding.hotSpotAllowance(insulation) <= SettledWinding.limit(insulation)) {
            return null;
        }
        return j.at(MEASURED)
                .with("mean", read, TEMPERATURE)
                .with("insulation", insulation)
                .saying("cool-enough", "told-too-hot")
                .atMost(
                        read + SettledWinding.hotSpotAllowance(insulation),
                        SettledWinding.limit(insulation),
                        TEMPERATURE);
    }

    private static Stream<Change> cooler(Judgement j, Outcome.Fail failure) {
        double now = j.at(COOLING).si(j.design().alternator().thermalResistance());
        return IntStream.rangeClosed(1, 40)
                .mapToDouble(n -> Math.round(now * (1 - n / 42.0) * 100) / 100.0)
                .mapToObj(kelvins -> FieldChanges.told(COOLING, "resistance", kelvins, "K/W", ThermalResistance.class));
    }
}
