package org.leat.pack.alternator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.MagnetGrade;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.plant.cases.Cases;
import org.leat.plant.duties.SettledWinding;

/** Magnets against the temperature of their grade. */
final class MagnetGradeLimit {

    private static final String GRADE = "/alternator/magnet-grade";

    static final Rule RULE = Rule.of(
                    "alternator/magnet-temperature", ERROR, "magnets against the temperature of their grade")
            .why("Above the temperature of its grade a magnet loses strength for good. The alternator then makes less"
                    + " voltage, takes more current for the same power and gets hotter still.")
            .formula(
                    "temperature of the winding, which the magnets do not exceed ≤ limit of the grade; 80 °C where it is"
                            + " unknown")
            .judged("running in the hottest air, the nozzle set with the hottest winding")
            .source(
                    "grade letters of sintered NdFeB magnets: makers' tables (from memory); ferrite 250 °C (from memory)")
            .source(COMMON_PRACTICE)
            .limit("unknown-grade", TEMPERATURE, 80, "°C", COMMON_PRACTICE, LOWER)
            .passes("cool-enough", "The magnets get no hotter than the winding, {value}.")
            .fails("too-hot", "The magnets may get as hot as the winding, {value}; their grade stands {limit}.")
            .fails("burns", "The winding warms until it burns, and the magnets with it.")
            .judge(MagnetGradeLimit::judge)
            .wayOut("better-grade", "Magnets of grade {grade}.", MagnetGradeLimit::better)
            .leastWayOut("smaller-nozzle", NozzlesOnHand.NONE_LARGER, NozzlesOnHand::smaller)
            .build();

    private MagnetGradeLimit() {}

    private static Outcome judge(Judgement j) {
        Cases cases = j.solved();
        Spot spot = j.at(GRADE);
        double resistance = spot.si(
                "/alternator/thermal-resistance", j.design().alternator().thermalResistance());
        SettledWinding hottest = SettledWinding.hottest(cases, resistance);
        Spot during = spot.during(hottest.running());
        if (SettledWinding.burns(hottest.temperature())) {
            return during.saying("cool-enough", "burns").holds(false);
        }
        double kelvin = hottest.temperature().getAsDouble();
        MagnetGrade grade = j.design().alternator().magnetGrade();
        Comparison unknown = Comparison.atMost(kelvin, j.limit("unknown-grade"));
        return grade == null && unknown.holds()
                ? during.compare(unknown)
                : during.atMost(kelvin, SettledWinding.magnetLimit(during.given(grade)), TEMPERATURE);
    }

    private static Stream<Change> better(Judgement j, Outcome.Fail failure) {
        return Stream.of(MagnetGrade.M, MagnetGrade.H, MagnetGrade.SH, MagnetGrade.UH, MagnetGrade.EH)
                .map(grade -> Change.of(GRADE, grade).with(Arg.of("grade", grade.name())));
    }
}
