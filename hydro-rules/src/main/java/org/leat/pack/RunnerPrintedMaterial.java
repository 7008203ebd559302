package org.leat.pack;

import java.util.List;
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
import org.leat.design.Buckets;
import org.leat.design.Making;
import org.leat.design.Runner;
import org.leat.quantity.QuantityKind;

/** A printed wheel: heat, water and the direction of its layers, and when to look at it. */
final class RunnerPrintedMaterial implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("runner/printed-material", Level.ERROR)
            .title("printed buckets in heat and water")
            .why(
                    "A printed wheel left in a warm housing creeps out of shape; a nylon one drinks water and goes soft; one"
                            + " printed with its layers across the bending splits along them. Heat fails as an error, water and"
                            + " layers as a warning. Look at the necks at the interval told, with the water shut and the wheel held.")
            .formula(
                    "hottest ≤ heat deflection temperature − margin; water uptake; interval = a tenth of the cycles to a"
                            + " crack over jets passed")
            .judged("the hottest of water and air; the set open as built")
            .source("ISO 75-2 heat deflection at 0.45 MPa (data sheets, from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("margin", QuantityKind.TEMPERATURE_DIFFERENCE, 15, "K", RuleCard.COMMON_PRACTICE)
            .limit("water-uptake", QuantityKind.RATIO, 2, "%", RuleCard.COMMON_PRACTICE)
            .message("not-printed")
            .message("cool-enough", "material")
            .message("too-hot", "material")
            .message("dry-enough", "material")
            .message("drinks", "material")
            .message("along", "hours", "millions")
            .message("across", "hours", "millions")
            .message("stronger", "material")
            .message("turn-the-print")
            .build();

    private static final String LAYERS = "/runner/buckets/layers-across-bending";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Runner runner = j.design().runner();
        Buckets buckets = runner == null ? null : runner.buckets();
        if (buckets == null || buckets.making() == null) {
            return List.of(j.at("/").notGiven("/runner/buckets/making"));
        }
        if (buckets.making() != Making.PRINTED) {
            return List.of(j.at("/runner/buckets/making").notApplicable("not-printed"));
        }
        BucketMaterial material = BucketMaterial.of(j);
        if (material == null || buckets.material() == null) {
            return List.of(BucketMaterial.unknown(j, "/runner/buckets"));
        }
        if (material.deflection() == null) {
            return List.of(j.at("/runner/buckets").notGiven(BucketMaterial.PATH));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Arg name = Arg.of("material", buckets.material());
        Spot spot = j.at(BucketMaterial.PATH);
        double most = material.deflection() - j.limit("margin").value();
        return List.of(
                spot.during("hottest day")
                        .compare(
                                Comparison.atMost(BucketMaterial.hottest(j), most, QuantityKind.TEMPERATURE),
                                "cool-enough",
                                "too-hot",
                                name),
                spot.during("wet")
                        .compare(
                                Level.WARNING,
                                Comparison.atMost(material.waterUptake(), j.limit("water-uptake")),
                                "dry-enough",
                                "drinks",
                                name),
                layers(j, buckets));
    }

    private static Outcome layers(Judgement j, Buckets buckets) {
        if (buckets.layersAcrossBending() == null) {
            return j.at("/runner/buckets").notGiven(LAYERS);
        }
        Spot spot = j.at(LAYERS);
        Arg hours = Arg.of("hours", PrintedInspection.interval(j), QuantityKind.TIME);
        Arg passes = Arg.of("millions", PrintedInspection.passesPerYear(j) / 1e6, QuantityKind.RATIO);
        return buckets.layersAcrossBending()
                ? spot.fail(Level.WARNING, "across", hours, passes)
                : spot.pass("along", hours, passes);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        if (failure.path().equals(LAYERS)) {
            return List.of(j.wayOut("turn-the-print", List.of(new Edit(LAYERS, false))));
        }
        return StrongerBuckets.material(this, j, failure).stream().toList();
    }
}
