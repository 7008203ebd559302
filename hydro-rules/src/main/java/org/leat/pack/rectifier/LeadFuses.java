package org.leat.pack.rectifier;

import static org.leat.quantity.QuantityKind.CURRENT;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.pack.kit.DeviceSizes;
import org.leat.pack.kit.Devices;
import org.leat.pack.kit.NozzlesOnHand;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BrokenBridge;
import org.leat.plant.cases.Running;
import org.leat.plant.loads.DeviceRatings;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;

/** Fuses for the alternator's leads that carry what the turbine gives and open on a shorted diode; told with {@code rating}. */
final class LeadFuses {

    /** What a device that carries current day and night is rated above it: as protection/continuous-load asks. */
    private static final double CONTINUOUS = 1.25;

    private LeadFuses() {}

    /** Ratings that carry the lead's current for ever and surely open before the winding carries too much, the largest first. */
    private static Stream<Double> fuses(Judgement j) {
        return protecting(j)
                .filter(rating -> j.solved().running().stream().allMatch(running -> carries(rating, running)));
    }

    private static Stream<Double> protecting(Judgement j) {
        Amount carries = j.numbers().alternator().currentLimit();
        double full = Worst.most(j.solved().diodeShorted(), BrokenBridge::phaseCurrent)
                .phaseCurrent();
        return DeviceRatings.standard().stream()
                .filter(rating ->
                        DeviceRatings.surelyOpens(DeviceKind.FUSE, rating) <= Math.min(carries.or(full), full))
                .sorted(Comparator.reverseOrder());
    }

    private static boolean carries(double rating, Running running) {
        return rating >= CONTINUOUS * running.operatingPoint().phaseCurrent();
    }

    /** Where no rating fits every set: one that fits some of them, and the others go. */
    static Stream<Change> fewerNozzles(Judgement j, Outcome.Fail failure) {
        List<BrokenBridge> shorted = j.solved().diodeShorted();
        if (Devices.inLeads(j.design()).count() != 1
                || shorted.size() != j.solved().running().size()
                || fuses(j).findAny().isPresent()) {
            return Stream.empty();
        }
        String path = Devices.inLeads(j.design()).findFirst().orElseThrow().ratingPath();
        return protecting(j).flatMap(rating -> {
            List<NozzleGroup> kept = IntStream.range(0, shorted.size())
                    .filter(n -> carries(rating, j.solved().running().get(n)))
                    .mapToObj(n -> shorted.get(n).nozzles())
                    .toList();
            return kept.stream().noneMatch(NozzleGroup::asBuilt)
                    ? Stream.empty()
                    : Stream.of(NozzlesOnHand.only(DeviceSizes.rated(path, rating), j, kept));
        });
    }

    static Stream<Change> smallerDevice(Judgement j, Outcome.Fail failure) {
        return Devices.inLeads(j.design())
                .limit(1)
                .flatMap(device -> fuses(j).map(rating -> DeviceSizes.rated(device.ratingPath(), rating)));
    }

    static Stream<Change> newFuse(Judgement j, Outcome.Fail failure) {
        if (j.design().protection() == null
                || Devices.inLeads(j.design()).findAny().isPresent()) {
            return Stream.empty();
        }
        return fuses(j).map(rating ->
                DeviceSizes.withFuse(j.design(), "fuse in each lead", Place.ALTERNATOR, Place.RECTIFIER, rating));
    }

    /** Where no device is told at all: to tell one makes every other that is missing a failure, so that it cannot be tried alone. */
    static Stream<Change> firstFuse(Judgement j, Outcome.Fail failure) {
        return j.design().protection() == null
                ? fuses(j).limit(1).map(rating -> Change.advice().with("rating", rating, CURRENT))
                : Stream.empty();
    }
}
