package org.leat.pack.protection;

import static org.leat.check.Level.NOTE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.design.Place;
import org.leat.pack.kit.DeviceSizes;
import org.leat.pack.kit.Devices;

/** Which of two devices in series goes first. */
final class Selectivity {

    static final Rule RULE = Rule.of("protection/selectivity", NOTE, "which of two devices in series goes first")
            .why(
                    "A fault in one branch should take that branch off and leave the rest. Where the device nearer to the battery goes"
                            + " first, or both do, the turbine loses its battery for a fault in its dump load.")
            .formula("rating of the device nearer to the battery / rating of the one farther from it ≥ limit")
            .judged("a short circuit beyond both, fed by the battery")
            .source(
                    "IEC 60269: fuses of class gG from 16 A discriminate at 1.6 to 1, two sizes apart (from memory; the gates of the"
                            + " sizes say the same)")
            .limit("least", RATIO, 1.6, "", "IEC 60269 (from memory)")
            .passes("farther-first", "In series, {far} goes before {near}, which is {value} times as large.")
            .fails(
                    "not-sure",
                    "It is not sure that {far} goes before {near}, which is nearer to the battery and {value} times as large; sure is"
                            + " {limit}.")
            .notApplicable("none", "Not judged: no two devices lie one after the other on the way from the battery.")
            .judgeAll(Selectivity::judge)
            .wayOut("larger", "{device} of {rating}.", Selectivity::larger)
            .wayOut("smaller", "{device} of {rating}.", Selectivity::smaller)
            .build();

    private Selectivity() {}

    /** One device behind another, seen from the battery. Ratings in A. */
    private record Pair(
            Spot spot, String near, double nearRating, String nearPath, String far, double farRating, String farPath) {}

    private record RatedDevice(String name, double rating, String path) {}

    private static List<Outcome> judge(Judgement j) {
        List<Pair> pairs = pairs(j);
        return j.eachOr(
                j.at("/protection").says("none"),
                pairs,
                pair -> pair.spot()
                        .with("near", pair.near())
                        .with("far", pair.far())
                        .atLeast(pair.nearRating() / pair.farRating(), j.limit("least")));
    }

    /** A tracking or series regulator lets no fault current of the battery through: nothing beyond it is in series. */
    private static List<Pair> pairs(Judgement j) {
        List<Pair> pairs = new ArrayList<>();
        if (j.numbers().regulator().divides()) {
            return pairs;
        }
        List<Devices.Placed> all =
                Devices.all(j.design()).stream().filter(Devices.Placed::opens).toList();
        List<Devices.Placed> near = all.stream()
                .filter(device ->
                        device.joins(Place.BATTERY) && (device.joins(Place.RECTIFIER) || device.joins(Place.REGULATOR)))
                .toList();
        List<RatedDevice> far = new ArrayList<>();
        all.stream()
                .filter(device -> device.joins(Place.RECTIFIER) && device.joins(Place.REGULATOR))
                .forEach(device -> far.add(placed(device)));
        DumpLoad dump = j.design().dumpLoad();
        if (dump != null && dump.side() == DumpSide.BRIDGE) {
            List<Devices.Placed> branch =
                    all.stream().filter(device -> device.joins(Place.DUMP_LOAD)).toList();
            branch.forEach(device -> far.add(placed(device)));
            if (branch.isEmpty() && !near.isEmpty()) {
                Spot spot = j.at("/dump-load/fuse");
                far.add(new RatedDevice("the dump load's fuse", spot.si(dump.fuse()), spot.path()));
            }
        }
        for (Devices.Placed device : near) {
            RatedDevice nearer = placed(device);
            for (RatedDevice farther : far) {
                pairs.add(new Pair(
                        j.at(farther.path()),
                        nearer.name(),
                        nearer.rating(),
                        nearer.path(),
                        farther.name(),
                        farther.rating(),
                        farther.path()));
            }
        }
        return pairs;
    }

    private static RatedDevice placed(Devices.Placed device) {
        return new RatedDevice(device.device().name(), device.rating(), device.ratingPath());
    }

    private static List<Pair> failed(Judgement j, Outcome.Fail failure) {
        return pairs(j).stream()
                .filter(pair -> pair.farPath().equals(failure.path())
                        && pair.nearRating() < j.limit("least").value() * pair.farRating())
                .toList();
    }

    private static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        return failed(j, failure).stream()
                .flatMap(pair -> DeviceSizes.from(j.limit("least").value() * pair.farRating())
                        .limit(2)
                        .map(rating ->
                                DeviceSizes.rated(pair.nearPath(), rating).with("device", pair.near())));
    }

    private static Stream<Change> smaller(Judgement j, Outcome.Fail failure) {
        List<Pair> failed = failed(j, failure);
        double near = failed.stream().mapToDouble(Pair::nearRating).min().orElse(0);
        return failed.stream()
                .limit(1)
                .flatMap(pair -> DeviceSizes.upTo(near / j.limit("least").value())
                        .limit(2)
                        .map(rating -> DeviceSizes.rated(failure.path(), rating).with("device", pair.far())));
    }
}
