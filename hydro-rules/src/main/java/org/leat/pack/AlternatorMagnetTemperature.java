package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
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
import org.leat.design.MagnetGrade;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;

/** Magnets against the temperature of their grade. */
final class AlternatorMagnetTemperature implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("alternator/magnet-temperature", Level.ERROR)
            .title("magnets against the temperature of their grade")
            .why("Above the temperature of its grade a magnet loses strength for good. The alternator then makes less"
                    + " voltage, takes more current for the same power and gets hotter still.")
            .formula(
                    "temperature of the winding, which the magnets do not exceed ≤ limit of the grade; 80 °C where it is"
                            + " unknown")
            .judged("running in the hottest air, the nozzle set with the hottest winding")
            .source(
                    "grade letters of sintered NdFeB magnets: makers' tables (from memory); ferrite 250 °C (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("unknown-grade", QuantityKind.TEMPERATURE, 80, "°C", RuleCard.COMMON_PRACTICE)
            .message("cool-enough")
            .message("too-hot")
            .message("better-grade", "grade")
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
        Spot spot = j.at("/alternator/magnet-grade");
        if (resistance == null) {
            return List.of(spot.notGiven("/alternator/thermal-resistance"));
        }
        Running worst =
                Worst.most(j.cases().running(), r -> WindingHeat.temperature(j, r.operatingPoint(), resistance));
        double hottest = WindingHeat.temperature(j, worst.operatingPoint(), resistance);
        MagnetGrade grade = alternator.magnetGrade();
        Comparison comparison = grade == null
                ? Comparison.atMost(hottest, j.limit("unknown-grade"))
                : Comparison.atMost(hottest, highest(grade), QuantityKind.TEMPERATURE);
        Spot during = spot.during(worst.id());
        return List.of(
                grade == null && !comparison.holds()
                        ? during.notGiven("/alternator/magnet-grade")
                        : during.compare(comparison, "cool-enough", "too-hot"));
    }

    private static double highest(MagnetGrade grade) {
        return 273.15
                + switch (grade) {
                    case N -> 80;
                    case M -> 100;
                    case H -> 120;
                    case SH -> 150;
                    case UH -> 180;
                    case EH -> 200;
                    case FERRITE -> 250;
                };
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.first(
                        this,
                        j,
                        failure,
                        Stream.of(MagnetGrade.M, MagnetGrade.H, MagnetGrade.SH, MagnetGrade.UH, MagnetGrade.EH)
                                .map(grade -> Candidate.of(
                                        "better-grade",
                                        new Edit("/alternator/magnet-grade", grade),
                                        Arg.of("grade", grade))))
                .ifPresent(ways::add);
        Search.least(this, j, failure, NozzlesOnHand.smaller(j, "smaller-nozzle"))
                .ifPresent(ways::add);
        return ways;
    }
}
