package org.leat.pack.plausibility;

import static org.leat.check.Level.ERROR;
import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.TEMPERATURE;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.Quantity;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Buckets;
import org.leat.design.Hub;
import org.leat.design.Intake;
import org.leat.design.Inverter;
import org.leat.design.Penstock;
import org.leat.design.Runner;
import org.leat.design.Screen;
import org.leat.design.Site;
import org.leat.design.Sunlight;
import org.leat.design.TemperatureRange;
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
                            + " sun; bolt circle ≤ pitch diameter; warnings: wall ≥ hottest water; clearance in flood ≤ usual clearance; bucket"
                            + " length ≤ pitch radius; holes ≤ 0.907 of the plate; winding as it runs ≥ hottest air;"
                            + " what an inverter stands ≥ what it accepts")
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
            .fails("hub-over-wheel", "A bolt circle of {value} is wider than the wheel; on this one it is {limit}.")
            .fails(
                    "bucket-over-wheel",
                    "A bucket {value} long reaches past the middle of this wheel; on it one is {limit} long.")
            .fails(
                    "holes",
                    "Together the holes have {value} times the surface of the plate; circles cover {limit} of one.")
            .fails(
                    "cool-winding",
                    "A winding that runs at {value} is cooler than the air round it, which reaches {air:°C}.")
            .fails(
                    "stands",
                    "An inverter that stands {value} at its input accepts no more; by what is stated for that it stands {limit}.")
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

    /** Share of a plane that circles cover at most, π/(2 √3). */
    private static final double CLOSEST = Math.PI / (2 * Math.sqrt(3));

    /** So that sums of what is written in tens are not beyond it by their last bit. */
    private static final double ROUNDED = 1 - 1e-9;

    private AtOdds() {}

    private static List<Outcome> judge(Judgement j) {
        List<Outcome> pairs = new ArrayList<>();
        Runner runner = j.design().runner();
        if (runner != null) {
            clearances(j, runner, pairs);
            buckets(j, runner, pairs);
            hub(j, runner, pairs);
        }
        wall(j, pairs);
        screen(j, pairs);
        electrics(j, pairs);
        List<Outcome> odd = pairs.stream().filter(o -> o.kind() != Kind.PASS).toList();
        return odd.isEmpty() ? List.of(j.at("/").says("agree")) : odd;
    }

    private static Spot at(Judgement j, String path, String fails) {
        return j.at(path).saying("agree", fails);
    }

    private static void clearances(Judgement j, Runner runner, List<Outcome> all) {
        if (runner.floodClearance() != null && runner.tailwaterClearance() != null) {
            double usual = Si.of(runner.tailwaterClearance());
            double flood = Si.of(runner.floodClearance());
            all.add(at(j, "/runner/flood-clearance", "flood-below")
                    .as(WARNING)
                    .with("usual", usual, LENGTH)
                    .atMost(flood, usual, LENGTH));
        }
    }

    private static void buckets(Judgement j, Runner runner, List<Outcome> all) {
        Buckets buckets = runner.buckets();
        if (buckets == null) {
            return;
        }
        String path = "/runner/buckets";
        if (buckets.rootThickness() != null && buckets.count() != null && buckets.leverArm() != null) {
            double around = Math.PI * (Si.of(runner.pitchDiameter()) - 2 * Si.of(buckets.leverArm()));
            double thickness = Si.of(buckets.rootThickness());
            double room = Math.max(0, around) / buckets.count();
            all.add(at(j, path + "/root-thickness", "necks").atMost(thickness, room, LENGTH));
        }
        if (buckets.length() != null) {
            double length = Si.of(buckets.length());
            all.add(at(j, path + "/length", "bucket-over-wheel")
                    .as(WARNING)
                    .atMost(length, Si.of(runner.pitchDiameter()) / 2, LENGTH));
        }
        if (buckets.rootWidth() != null && buckets.width() != null) {
            double neck = Si.of(buckets.rootWidth());
            double width = Si.of(buckets.width());
            all.add(at(j, path + "/root-width", "neck-width").atMost(neck, NECK_OVER_BUCKET * width, LENGTH));
        }
    }

    private static void hub(Judgement j, Runner runner, List<Outcome> all) {
        Hub hub = runner.hub();
        if (hub == null || hub.boltDiameter() == null || hub.boltCircle() == null) {
            return;
        }
        double bolt = Si.of(hub.boltDiameter());
        double circle = Si.of(hub.boltCircle());
        all.add(at(j, "/runner/hub/bolt-circle", "hub-over-wheel")
                .atMost(circle, Si.of(runner.pitchDiameter()), LENGTH));
        if (hub.bolts() != null) {
            double apart = Math.PI * circle / hub.bolts();
            all.add(at(j, "/runner/hub/bolt-diameter", "bolts").atMost(bolt, apart, LENGTH));
        }
        if (hub.shaftDiameter() != null) {
            double shaft = Si.of(hub.shaftDiameter());
            all.add(at(j, "/runner/hub/bolt-circle", "shaft").atLeast(circle, (shaft + bolt) * ROUNDED, LENGTH));
        }
    }

    private static void wall(Judgement j, List<Outcome> all) {
        Penstock penstock = j.design().penstock();
        Quantity<?> wall = penstock.highestWallTemperature();
        if (wall == null) {
            return;
        }
        Site site = j.design().site();
        String path = "/penstock/highest-wall-temperature";
        if (penstock.sunlight() == Sunlight.OPEN) {
            all.addAll(j.all(() -> {
                double air = Si.of(j.at("/site")
                        .given("/site/air-temperature", site.airTemperature())
                        .highest());
                return at(j, path, "cooler-than-air")
                        .with("air", air, TEMPERATURE)
                        .atLeast(Si.of(wall), air, TEMPERATURE);
            }));
        } else if (site.waterTemperature() != null) {
            double water = Si.of(site.waterTemperature().highest());
            all.add(at(j, path, "cooler-than-water")
                    .as(WARNING)
                    .with("water", water, TEMPERATURE)
                    .atLeast(Si.of(wall), water, TEMPERATURE));
        }
    }

    private static void screen(Judgement j, List<Outcome> all) {
        Intake intake = j.design().intake();
        if (intake != null && intake.screen() instanceof Screen.DrilledHoles drilled && drilled.surface() != null) {
            double diameter = Si.of(drilled.holeDiameter());
            double share = drilled.holes() * Math.PI / 4 * diameter * diameter / Si.of(drilled.surface());
            all.add(at(j, "/intake/screen/holes", "holes").as(WARNING).atMost(share, CLOSEST, RATIO));
        }
    }

    private static void electrics(Judgement j, List<Outcome> all) {
        Quantity<?> winding = j.design().alternator().winding().temperature();
        TemperatureRange air = j.design().site().airTemperature();
        if (winding != null && air != null) {
            double hottest = Si.of(air.highest());
            all.add(at(j, "/alternator/winding/temperature", "cool-winding")
                    .as(WARNING)
                    .with("air", hottest, TEMPERATURE)
                    .atLeast(Si.of(winding), hottest, TEMPERATURE));
        }
        Inverter inverter = j.design().inverter();
        if (inverter != null && inverter.inputVoltageLimit() != null && inverter.inputVoltage() != null) {
            double stands = Si.of(inverter.inputVoltageLimit());
            double accepts = Si.of(inverter.inputVoltage().to());
            all.add(at(j, "/inverter/input-voltage-limit", "stands").as(WARNING).atLeast(stands, accepts, VOLTAGE));
        }
    }

    private static Stream<Change> look(Judgement j, Outcome.Fail failure) {
        return Stream.of(Change.advice().with(Arg.at("field", failure.path())));
    }
}
