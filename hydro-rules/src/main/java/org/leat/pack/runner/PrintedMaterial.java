package org.leat.pack.runner;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.NamedLimit.Safer.HIGHER;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TEMPERATURE;
import static org.leat.quantity.QuantityKind.TEMPERATURE_DIFFERENCE;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.OptionalDouble;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Buckets;
import org.leat.design.Making;
import org.leat.pack.kit.BucketMaterials;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.PrintedNecks;
import org.leat.pack.kit.RunnerParts;
import org.leat.plant.duties.BucketStrength;

/** Printed buckets in heat and water, and when to look at them. */
final class PrintedMaterial {

    private static final String LAYERS = "/runner/buckets/layers-across-bending";

    static final Rule RULE = Rule.of("runner/printed-material", ERROR, "printed buckets in heat and water")
            .why(
                    "A printed wheel left in a warm housing creeps out of shape; a nylon one drinks water and goes soft; one"
                            + " printed with its layers across the bending splits along them. Heat fails as an error, water and"
                            + " layers as a warning. Look at the necks at the interval told, with the water shut and the wheel held.")
            .formula(
                    "hottest ≤ heat deflection temperature − margin; water uptake; interval = a tenth of the cycles to a"
                            + " crack over jets passed")
            .judged("the hottest of water and air; the nozzle set that wears the necks most")
            .source("ISO 75-2 heat deflection at 0.45 MPa (data sheets, from memory)")
            .source(COMMON_PRACTICE)
            .limit("margin", TEMPERATURE_DIFFERENCE, 15, "K", COMMON_PRACTICE, HIGHER)
            .limit("water-uptake", RATIO, 2, "%", COMMON_PRACTICE, LOWER)
            .notApplicable("not-printed", "The buckets are not printed.")
            .either("cool-enough", "too-hot", "The wheel gets {value:°C} warm; {material} may get {limit:°C}.")
            .passes("dry-enough", "{material} takes up {value:%} of water.")
            .fails("drinks", "{material} takes up {value:%} of water and goes soft; good is {limit}.")
            .passes(
                    "along",
                    "The layers lie along the bending. Look at the necks for cracks every {hours:h} of running; a bucket passes"
                            + " a jet {millions} million times a year.")
            .fails(
                    "across",
                    "Bending pulls the printed layers apart. Until it is changed look at the necks for cracks every {hours:h} of"
                            + " running; a bucket passes a jet {millions} million times a year.")
            .fails(
                    "apart",
                    "Bending pulls the printed layers apart. How often to look at the necks for cracks cannot be told before"
                            + " their sizes are; a bucket passes a jet {millions} million times a year.")
            .judgeAll(PrintedMaterial::judge)
            .wayOut(
                    "stronger",
                    BucketMaterials.OF_MATERIAL,
                    FieldChanges.onlyAt(RunnerParts.MATERIAL, BucketMaterials::materials))
            .wayOut(
                    "turn-the-print",
                    "Buckets printed on their side, the layers along the neck.",
                    FieldChanges.onlyAt(LAYERS, FieldChanges.to(false)))
            .build();

    private PrintedMaterial() {}

    private static List<Outcome> judge(Judgement j) {
        Spot nowhere = j.at("/");
        Buckets buckets = nowhere.given("/runner/buckets/making", RunnerParts.buckets(j));
        if (nowhere.given("/runner/buckets/making", buckets.making()) != Making.PRINTED) {
            return List.of(j.at("/runner/buckets/making").says("not-printed"));
        }
        Spot unstated = j.at("/runner/buckets");
        BucketStrength strength = RunnerParts.strength(j, unstated);
        OptionalDouble tabled = strength.material().deflectionLow();
        double deflection = unstated.given(RunnerParts.MATERIAL, tabled.isPresent() ? tabled.getAsDouble() : null);
        j.solved();
        Spot spot = j.at(RunnerParts.MATERIAL).with("material", unstated.given(buckets.material()));
        return j.all(
                () -> spot.during("hottest day")
                        .saying("cool-enough", "too-hot")
                        .atMost(
                                strength.hottest(),
                                deflection - j.limit("margin").value(),
                                TEMPERATURE),
                () -> spot.during("wet")
                        .as(WARNING)
                        .saying("dry-enough", "drinks")
                        .atMost(strength.material().waterUptake(), j.limit("water-uptake")),
                () -> layers(j, unstated, buckets));
    }

    private static Outcome layers(Judgement j, Spot unstated, Buckets buckets) {
        boolean across = unstated.given(LAYERS, buckets.layersAcrossBending());
        Spot spot = j.at(LAYERS).as(WARNING).with("millions", PrintedNecks.passesPerYear(j, buckets) / 1e6, RATIO);
        return j.answered(
                () -> spot.with("hours", PrintedNecks.interval(j, unstated), TIME)
                        .saying("along", "across")
                        .holds(!across),
                open -> across ? spot.says("apart") : open);
    }
}
