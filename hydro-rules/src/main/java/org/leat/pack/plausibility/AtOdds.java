package org.leat.pack.plausibility;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Buckets;
import org.leat.design.Hub;
import org.leat.design.Penstock;
import org.leat.design.Runner;
import org.leat.design.Site;
import org.leat.design.Sunlight;
import org.leat.quantity.Si;

/** Numbers of a design of which each alone is usual, and which cannot be right together. */
final class AtOdds {

    static final Rule RULE = Rule.of("plausibility/at-odds", ERROR, "numbers that cannot be right together")
            .judgesInput()
            .why(
                    "Each of two numbers may be usual, and both together impossible: necks thicker than the room that the buckets leave"
                            + " them, a pipe in the sun that stays cooler than the air. What is judged on the kinder of the two passes"
                            + " without having earned it.")
            .formula(
                    "count · neck thickness ≤ π (pitch diameter − 2 lever arms); neck width ≤ 1.5 bucket widths; bolts · bolt diameter"
                            + " ≤ π · bolt circle; shaft + bolt diameter ≤ bolt circle; wall at its hottest ≥ hottest air in the open"
                            + " sun, else ≥ hottest water (a warning); clearance in flood ≤ usual clearance (a warning)")
            .judged("the numbers as written, where both are told")
            .source("geometry")
            .source(COMMON_PRACTICE)
            .passes("agree", "No two of the numbers stated contradict each other.")
            .fails(
                    "necks",
                    "Necks {value} thick do not stand side by side on this wheel: its buckets leave each {limit}.")
            .fails("neck-width", "A neck {value} wide does not carry a bucket of this width; it is {limit} wide.")
            .fails("bolts", "Bolts of {value} on this circle would cut into each other: it has room for {limit}.")
            .fails("shaft", "A circle of {value} does not clear shaft and bolts, which take {limit}.")
            .fails(
                    "cooler-than-air",
                    "A wall that is at most {value} while water stands in the open sun is cooler than the air, which reaches"
                            + " {air:°C}.")
            .fails(
                    "cooler-than-water",
                    "A wall that is at most {value} is cooler than the water, which reaches {water:°C}.")
            .fails("flood-below", "In flood the wheel is said to hang {value} clear, higher than the usual {usual}.")
            .judgeAll(AtOdds::judge)
            .advice("measure", "One of the two is another: look again at {field}.", AtOdds::look)
            .build();

    private static final double NECK_OVER_BUCKET = 1.5;

    /** So that sums of what is written in tens are not beyond it by their last bit. */
    private static final double ROUNDED = 1 - 1e-9;

    private AtOdds() {}

    private static List<Outcome> judge(Judgement j) {
        List<Supplier<Outcome>> pairs = new ArrayList<>();
        Runner runner = j.design().runner();
        if (runner != null) {
            clearances(j, runner, pairs);
            buckets(j, runner, pairs);
            hub(j, runner.hub(), pairs);
        }
        wall(j, pairs);
        List<Outcome> odd =
                j.all(pairs).stream().filter(o -> o.kind() != Kind.PASS).toList();
        return odd.isEmpty() ? List.of(j.at("/").says("agree")) : odd;
    }

    private static Spot at(Judgement j, String path, String fails) {
        return j.at(path).saying("agree", fails);
    }

    private static void clearances(Judgement j, Runner runner, List<Supplier<Outcome>> all) {
        if (runner.floodClearance() != null && runner.tailwaterClearance() != null) {
            double usual = Si.of(runner.tailwaterClearance());
            all.add(() -> at(j, "/runner/flood-clearance", "flood-below")
                    .as(WARNING)
                    .with("usual", usual, LENGTH)
                    .atMost(Si.of(runner.floodClearance()), usual, LENGTH));
        }
    }

    private static void buckets(Judgement j, Runner runner, List<Supplier<Outcome>> all) {
        Buckets buckets = runner.buckets();
        if (buckets == null) {
            return;
        }
        String path = "/runner/buckets";
        if (buckets.rootThickness() != null && buckets.count() != null && buckets.leverArm() != null) {
            double around = Math.PI * (Si.of(runner.pitchDiameter()) - 2 * Si.of(buckets.leverArm()));
            all.add(() -> at(j, path + "/root-thickness", "necks")
                    .atMost(Si.of(buckets.rootThickness()), Math.max(0, around) / buckets.count(), LENGTH));
        }
        if (buckets.rootWidth() != null && buckets.width() != null) {
            all.add(() -> at(j, path + "/root-width", "neck-width")
                    .atMost(Si.of(buckets.rootWidth()), NECK_OVER_BUCKET * Si.of(buckets.width()), LENGTH));
        }
    }

    private static void hub(Judgement j, @Nullable Hub hub, List<Supplier<Outcome>> all) {
        if (hub == null || hub.boltDiameter() == null || hub.boltCircle() == null) {
            return;
        }
        double bolt = Si.of(hub.boltDiameter());
        double circle = Si.of(hub.boltCircle());
        if (hub.bolts() != null) {
            all.add(() ->
                    at(j, "/runner/hub/bolt-diameter", "bolts").atMost(bolt, Math.PI * circle / hub.bolts(), LENGTH));
        }
        if (hub.shaftDiameter() != null) {
            all.add(() -> at(j, "/runner/hub/bolt-circle", "shaft")
                    .atLeast(circle, (Si.of(hub.shaftDiameter()) + bolt) * ROUNDED, LENGTH));
        }
    }

    private static void wall(Judgement j, List<Supplier<Outcome>> all) {
        Penstock penstock = j.design().penstock();
        Quantity<?> wall = penstock.highestWallTemperature();
        if (wall == null) {
            return;
        }
        Site site = j.design().site();
        String path = "/penstock/highest-wall-temperature";
        if (penstock.sunlight() == Sunlight.OPEN) {
            all.add(() -> {
                double air = Si.of(j.at("/site")
                        .given("/site/air-temperature", site.airTemperature())
                        .highest());
                return at(j, path, "cooler-than-air")
                        .with("air", air, TEMPERATURE)
                        .atLeast(Si.of(wall), air, TEMPERATURE);
            });
        } else if (site.waterTemperature() != null) {
            double water = Si.of(site.waterTemperature().highest());
            all.add(() -> at(j, path, "cooler-than-water")
                    .as(WARNING)
                    .with("water", water, TEMPERATURE)
                    .atLeast(Si.of(wall), water, TEMPERATURE));
        }
    }

    private static Stream<Change> look(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.advice().with(Arg.at("field", failure.path())));
    }
}
