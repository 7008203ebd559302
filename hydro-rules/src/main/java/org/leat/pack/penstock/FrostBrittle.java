package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.List;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Penstock;
import org.leat.design.Pipe;
import org.leat.design.Sunlight;
import org.leat.pack.kit.PipeSection;

/** Pipe of PVC-U in the open in frost. */
final class FrostBrittle {

    static final Rule RULE = Rule.of("penstock/frost-brittle", WARNING, "blows on PVC-U in frost")
            .why(
                    "In frost PVC-U loses its toughness: a branch, a stone or a boot that it shrugs off in summer breaks it. Pressure alone it"
                            + " holds as well as before.")
            .formula("lowest air temperature ≥ 0 °C, or the pipe buried")
            .judged("the coldest night")
            .source(
                    "a plastics supplier's data: below 0 °C protect PVC-U against blows (read); makers of pipe hold that cold matters"
                            + " where it can be struck (read)")
            .passes("mild", "No frost is met.")
            .passes("covered", "Section {section} is covered against blows.")
            .fails(
                    "brittle",
                    "At {temperature:°C} a blow can break section {section}; in frost PVC-U is to be covered.")
            .notApplicable("no-pvc-u", "No pipe of PVC-U.")
            .judgeAll(FrostBrittle::judge)
            .wayOut("bury", "The pipe buried.", Change.of("/penstock/sunlight", Sunlight.BURIED))
            .build();

    private FrostBrittle() {}

    private static List<Outcome> judge(Judgement j) {
        List<PipeSection> brittle = PipeSection.of(j, Pipe.PvcU.class::isInstance);
        return j.eachOr(j.at("/penstock").says("no-pvc-u"), brittle, section -> judge(j, section));
    }

    private static Outcome judge(Judgement j, PipeSection section) {
        j.at("/site").given("/site/air-temperature", j.design().site().airTemperature());
        Penstock penstock = j.design().penstock();
        Spot spot = section.spot(j);
        if (!j.numbers().site().frost()) {
            return spot.says("mild");
        }
        boolean belowFrost = penstock.sunlight() == null && Boolean.FALSE.equals(penstock.exposed());
        if (penstock.sunlight() == Sunlight.BURIED || belowFrost) {
            return spot.says("covered");
        }
        j.at("/penstock").given("/penstock/sunlight", penstock.sunlight());
        return spot.with("temperature", j.numbers().site().lowestAirTemperature(), TEMPERATURE)
                .says("brittle");
    }
}
