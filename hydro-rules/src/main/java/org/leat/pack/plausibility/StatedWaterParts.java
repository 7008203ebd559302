package org.leat.pack.plausibility;

import static org.leat.quantity.QuantityKind.FORCE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.MASS;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.leat.design.Bearings;
import org.leat.design.Buckets;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Fitting;
import org.leat.design.Hub;
import org.leat.design.Intake;
import org.leat.design.Making;
import org.leat.design.Penstock;
import org.leat.design.Pipe;
import org.leat.design.Runner;
import org.leat.design.Section;

/** What is stated of intake, pipe and wheel beside bore, length and diameter. */
final class StatedWaterParts {

    private static final String BUCKET = "size of a bucket";
    private static final String SHAFT = "size of a shaft";
    private static final String RATING = "pressure rating";

    private StatedWaterParts() {}

    static void add(Design design, StatedList all) {
        intake(design.intake(), all);
        penstock(design.penstock(), all);
        all.add(
                "/nozzles/velocity-coefficient",
                "velocity coefficient",
                Optional.ofNullable(design.nozzles().velocityCoefficient()),
                RATIO);
        all.add(
                "/nozzles/contraction-coefficient",
                "contraction coefficient",
                Optional.ofNullable(design.nozzles().contractionCoefficient()),
                RATIO);
        all.add("/nozzles/branch-bore", "branch bore", design.nozzles().branchBore(), LENGTH);
        all.add("/nozzles/shut-off-time", "closing time", design.nozzles().shutOffTime(), TIME);
        Runner runner = design.runner();
        if (runner != null) {
            all.add("/runner/measured-efficiency", "efficiency of a wheel", runner.measuredEfficiency(), RATIO);
            all.add("/runner/runaway-factor", "runaway factor", Optional.ofNullable(runner.runawayFactor()), RATIO);
            all.add("/runner/mass", "mass of a wheel", runner.mass(), MASS);
            all.add("/runner/tailwater-clearance", "clearance of the wheel", runner.tailwaterClearance(), LENGTH);
            all.add("/runner/flood-clearance", "clearance of the wheel", runner.floodClearance(), LENGTH);
            buckets(runner.buckets(), all);
            bearings(runner.bearings(), all);
            hub(runner.hub(), all);
        }
    }

    private static void intake(@Nullable Intake intake, StatedList all) {
        if (intake == null) {
            return;
        }
        all.add("/intake/valve-closing-time", "closing time", intake.valveClosingTime(), TIME);
        all.add("/intake/cleaning-interval", "interval between cleanings", intake.cleaningInterval(), TIME);
        if (intake.vent() != null) {
            all.add("/intake/vent/bore", "vent bore", intake.vent().bore(), LENGTH);
        }
        if (intake.basin() != null) {
            all.add("/intake/basin/length", "size of a basin", intake.basin().length(), LENGTH);
            all.add("/intake/basin/width", "size of a basin", intake.basin().width(), LENGTH);
            all.add("/intake/basin/depth", "size of a basin", intake.basin().depth(), LENGTH);
        }
    }

    private static void penstock(Penstock penstock, StatedList all) {
        all.add("/penstock/rated-fittings", RATING, penstock.ratedFittings(), PRESSURE);
        all.add("/penstock/anchors", "force of anchors", penstock.anchors(), FORCE);
        all.add("/penstock/expansion-allowance", "expansion allowance", penstock.expansionAllowance(), LENGTH);
        all.add("/penstock/filling-time", "filling time", penstock.fillingTime(), TIME);
        List<Section> sections = penstock.sections();
        for (int i = 0; i < sections.size(); i++) {
            String at = ElementPath.item("/penstock/sections", sections, i);
            Pipe pipe = sections.get(i).pipe();
            all.add(at + "/pipe/roughness", "roughness", pipe.roughness(), LENGTH);
            all.add(at + "/pipe/pressure-rating", RATING, pipe.pressureRating(), PRESSURE);
            if (pipe instanceof Pipe.Hose hose) {
                all.add(at + "/pipe/burst-pressure", RATING, hose.burstPressure(), PRESSURE);
            }
            List<Fitting> fittings = sections.get(i).fittings();
            for (int k = 0; k < fittings.size(); k++) {
                String fitting = ElementPath.item(at + "/fittings", fittings, k);
                all.add(
                        fitting + "/closing-time",
                        "closing time",
                        fittings.get(k).closingTime(),
                        TIME);
            }
        }
    }

    private static void buckets(@Nullable Buckets buckets, StatedList all) {
        if (buckets == null) {
            return;
        }
        String at = "/runner/buckets";
        all.add(at + "/width", BUCKET, buckets.width(), LENGTH);
        all.add(at + "/length", BUCKET, buckets.length(), LENGTH);
        all.add(at + "/depth", BUCKET, buckets.depth(), LENGTH);
        all.add(at + "/mass", "mass of a bucket", buckets.mass(), MASS);
        all.add(at + "/root-width", BUCKET, buckets.rootWidth(), LENGTH);
        all.add(at + "/root-thickness", BUCKET, buckets.rootThickness(), LENGTH);
        if (buckets.making() == Making.PRINTED) {
            all.add(at + "/strength", "strength of what is printed", buckets.strength(), PRESSURE);
        }
        all.add(at + "/lever-arm", BUCKET, buckets.leverArm(), LENGTH);
    }

    private static void bearings(@Nullable Bearings bearings, StatedList all) {
        if (bearings == null) {
            return;
        }
        String at = "/runner/bearings";
        all.add(at + "/dynamic-rating", "bearing rating", bearings.dynamicRating(), FORCE);
        all.add(at + "/overhang", SHAFT, bearings.overhang(), LENGTH);
        all.add(at + "/spacing", SHAFT, bearings.spacing(), LENGTH);
    }

    private static void hub(@Nullable Hub hub, StatedList all) {
        if (hub == null) {
            return;
        }
        String at = "/runner/hub";
        all.add(at + "/shaft-diameter", SHAFT, hub.shaftDiameter(), LENGTH);
        if (hub.bolts() != null) {
            all.add(at + "/bolts", "bolts of a hub", hub.bolts(), RATIO);
        }
        all.add(at + "/bolt-diameter", "bolt diameter", hub.boltDiameter(), LENGTH);
        all.add(at + "/bolt-circle", SHAFT, hub.boltCircle(), LENGTH);
    }
}
