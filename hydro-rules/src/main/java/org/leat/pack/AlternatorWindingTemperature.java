package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Alternator;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.quantity.ThermalResistance;

/** Winding temperature against the class of its insulation. */
final class AlternatorWindingTemperature implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/winding-temperature", Level.ERROR)
            .title("winding temperature against the class of its insulation")
            .why(
                    "A stream turns day and night: the winding reaches its full temperature and stays there. Past the class of"
                            + " its insulation it ages by half for every ten kelvins, then shorts.")
            .formula("T = T_air + R_th (P_fe + P_cu (234.5 + T)/(234.5 + T_w)), plus the hot spot's allowance ≤ class")
            .judged("running in the hottest air, the nozzle set with the hottest winding")
            .source("IEC 60085 thermal classes")
            .source("IEC 60034-1 table 8, allowance between mean and hot spot (from memory)")
            .limit("hot-spot", QuantityKind.TEMPERATURE_DIFFERENCE, 10, "K", "IEC 60034-1 table 8 (from memory)")
            .message("cool-enough", "mean")
            .message("too-hot", "mean", "insulation")
            .message("cooler", "resistance")
            .message("smaller-nozzle", "bore")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Alternator alternator = j.design().alternator();
        Double resistance = Rated.si(alternator.thermalResistance());
        if (resistance == null) {
            return List.of(j.at("/alternator/thermal-resistance").notGiven("/alternator/thermal-resistance"));
        }
        Running worst =
                Worst.most(j.cases().running(), r -> WindingHeat.temperature(j, r.operatingPoint(), resistance));
        Spot spot = j.at("/alternator/insulation-class").during(worst.id());
        if (alternator.insulationClass() == null) {
            return List.of(spot.notGiven("/alternator/insulation-class"));
        }
        double mean = WindingHeat.temperature(j, worst.operatingPoint(), resistance);
        return List.of(spot.compare(
                Comparison.atMost(
                        mean + j.limit("hot-spot").value(),
                        WindingHeat.highest(alternator.insulationClass()),
                        QuantityKind.TEMPERATURE),
                "cool-enough",
                "too-hot",
                Arg.of("mean", mean, QuantityKind.TEMPERATURE),
                Arg.of("insulation", alternator.insulationClass())));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        double now = Si.of(Objects.requireNonNull(j.design().alternator().thermalResistance()));
        Search.first(
                        this,
                        j,
                        failure,
                        IntStream.rangeClosed(1, 40)
                                .mapToObj(n -> cooler(Math.round(now * (1 - n / 42.0) * 100) / 100.0)))
                .ifPresent(ways::add);
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        return ways;
    }

    private static Candidate cooler(double resistance) {
        return Candidate.of(
                "cooler",
                new Edit("/alternator/thermal-resistance", Si.quantity(resistance, "K/W", ThermalResistance.class)),
                Arg.of("resistance", resistance, QuantityKind.THERMAL_RESISTANCE));
    }
}
