package org.leat.pack.plausibility;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.RESISTANCE;

import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Judgement;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;

/** The numbers on a dump load's label against its resistance, and its resistance hot against cold. */
final class ElementLabel {

    private static final double CANNOT_BE = 3;

    static final Rule RULE = Rule.of(
                    "plausibility/element-label", WARNING, "numbers of the dump load that contradict one another")
            .canFailAs(ERROR)
            .judgesInput()
            .why(
                    "Power and volts on an element's label say its resistance. Where the stated one is another, one of the three"
                            + " belongs to something else, and what the dump load takes is anybody's guess.")
            .formula(
                    "V_n²/(P_n R_hot) within its range, a warning outside and an error beyond three times that; R_hot/R_cold"
                            + " within its range, an error outside")
            .judged("the numbers as written")
            .source("P = V²/R: Ohm's law; wire of nickel-chromium gains some per cent when red, tungsten twelve to"
                    + " fifteen times (from memory)")
            .source(COMMON_PRACTICE)
            .limit("label-low", RATIO, 0.7, "", COMMON_PRACTICE, Safer.HIGHER)
            .limit("label-high", RATIO, 1.4, "", COMMON_PRACTICE, Safer.LOWER)
            .limit("hot-low", RATIO, 0.95, "", COMMON_PRACTICE, Safer.HIGHER)
            .limit("hot-high", RATIO, 16, "", COMMON_PRACTICE, Safer.LOWER)
            .passes("agrees", "By its label the element has {value} times the resistance that is stated.")
            .fails(
                    "disagrees",
                    "By its label the element has {label}, which is {value} times the resistance that is stated.")
            .passes("warms", "Hot, the element has {value} times the resistance it has cold.")
            .fails("cannot-be", "Hot, the element has {value} times the resistance it has cold; no element does.")
            .notApplicable("none", "Not judged: there is no dump load.")
            .judgeAll(ElementLabel::judge)
            .advice("measure", "Measure the dump load's resistance cold with a meter, and read its label again.")
            .build();

    private ElementLabel() {}

    private static List<Outcome> judge(Judgement j) {
        DumpLoad dump = j.design().dumpLoad();
        return dump == null
                ? List.of(j.at("/dump-load").says("none"))
                : j.all(() -> label(j, dump), () -> warm(j, dump));
    }

    private static Outcome label(Judgement j, DumpLoad dump) {
        Spot spot = j.at("/dump-load/rated-voltage").saying("agrees", "disagrees");
        double volts = spot.si(dump.ratedVoltage());
        double power = spot.si("/dump-load/power-rating", dump.powerRating());
        double hot = spot.si(
                "/dump-load/resistance", dump.resistanceHot() == null ? dump.resistance() : dump.resistanceHot());
        double byLabel = volts * volts / power;
        double times = byLabel / hot;
        boolean far = times < j.limit("label-low").value() / CANNOT_BE
                || times > j.limit("label-high").value() * CANNOT_BE;
        return spot.as(far ? ERROR : WARNING)
                .with(Arg.of("label", byLabel, RESISTANCE))
                .within(times, j.limit("label-low"), j.limit("label-high"));
    }

    private static Outcome warm(Judgement j, DumpLoad dump) {
        Spot spot = j.at("/dump-load/resistance-hot").as(ERROR).saying("warms", "cannot-be");
        double hot = spot.si(dump.resistanceHot());
        double cold = spot.si("/dump-load/resistance", dump.resistance());
        return spot.within(hot / cold, j.limit("hot-low"), j.limit("hot-high"));
    }
}
