package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.ElectricCurrent;
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
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.design.DeviceKind;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.electrics.ProtectiveDeviceCoordination;
import org.leat.electrics.StandardFuseRatings;
import org.leat.law.Answer;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** A fuse or breaker in every run at the battery, between what flows and what the cable carries. */
final class CableProtection implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("cable/protection", Level.ERROR)
            .title("a fuse or breaker in every run at the battery")
            .why("A battery drives thousands of amperes into a fault. A run without a fuse, or with one larger than the"
                    + " cable stands, is a heating wire through the house.")
            .formula(
                    "I_B ≤ I_n ≤ I_z and I_2 ≤ 1.45 I_z: lasting current, rating, capacity as laid, current that surely"
                            + " opens the device")
            .judged("each run that ends at the battery, at its greatest lasting current")
            .source("IEC 60364-4-43 clause 433.1")
            .source(
                    "operating currents: breakers 1.45 I_n, IEC 60898-1; gG fuses 1.6 I_n from 16 A, IEC 60269 (from memory)")
            .message("protected", "run", "device", "current")
            .message("none", "run")
            .message("too-small", "run", "device", "current")
            .message("too-large", "run", "device", "current")
            .message("cable-too-thin", "run", "device", "current")
            .message("none-at-battery")
            .message("other-rating", "rating")
            .message("add-fuse", "rating")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        if (j.design().cables().isEmpty()) {
            return List.of(j.at("/cables").notGiven("/cables"));
        }
        if (j.design().protection().isEmpty()) {
            return List.of(j.at("/protection").notGiven("/protection"));
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < j.design().cables().size(); i++) {
            Cable cable = j.design().cables().get(i);
            if (Devices.joins(cable, Place.BATTERY)) {
                outcomes.add(judge(j, cable, i));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/cables").notApplicable("none-at-battery")) : outcomes;
    }

    private static Outcome judge(Judgement j, Cable cable, int index) {
        String path = "/cables[" + index + "]";
        Devices.Placed placed = Devices.in(j.design(), cable);
        if (placed == null) {
            return j.at(path).fail("none", Runs.arg("run", cable));
        }
        Spot spot = j.at(placed.path() + "/rated-current");
        CableLoad load = CableLoad.of(j, cable);
        if (load == null) {
            String missing = CableLoad.missing(j, cable);
            return spot.notGiven(missing == null ? "/loads" : missing);
        }
        CableCapacity capacity = CableCapacity.of(cable, path, load);
        if (capacity.missing() != null) {
            return spot.during(load.during()).notGiven(capacity.missing());
        }
        if (!(capacity.answer() instanceof Answer.Value carried)) {
            return spot.during(load.during()).outsideOf((Answer.Outside) capacity.answer());
        }
        double rating = Si.of(placed.device().ratedCurrent());
        double surely = placed.device().kind() == DeviceKind.BREAKER
                ? ProtectiveDeviceCoordination.BREAKER
                : ProtectiveDeviceCoordination.fuse(rating);
        double greatest = ProtectiveDeviceCoordination.greatestRating(carried.value(), surely);
        boolean thin = greatest < load.current();
        Comparison comparison = thin
                ? Comparison.atMost(rating, greatest, QuantityKind.CURRENT)
                : Comparison.within(rating, load.current(), greatest, QuantityKind.CURRENT);
        return spot.during(load.during())
                .compare(
                        comparison,
                        "protected",
                        thin ? "cable-too-thin" : rating < load.current() ? "too-small" : "too-large",
                        Runs.arg("run", cable),
                        placed.name(),
                        Arg.of("current", load.current(), QuantityKind.CURRENT));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison != null) {
            return Rated.larger(
                    this,
                    j,
                    failure,
                    "other-rating",
                    "A",
                    ElectricCurrent.class,
                    StandardFuseRatings.all().stream()
                            .mapToDouble(a -> a)
                            .filter(a -> a <= comparison.high() && a >= comparison.low())
                            .toArray());
        }
        int index = Integer.parseInt(failure.path().replaceAll("\\D", ""));
        Cable cable = j.design().cables().get(index);
        return Search.first(
                        this,
                        j,
                        failure,
                        StandardFuseRatings.all().stream().map(rating -> added(j.design(), cable, rating)))
                .map(List::of)
                .orElse(List.of());
    }

    private static Candidate added(Design design, Cable cable, double rating) {
        List<ProtectiveDevice> devices = new ArrayList<>(design.protection());
        devices.add(new ProtectiveDevice(
                "fuse of the run " + ((Arg.Word) Runs.arg("run", cable).value()).text(),
                DeviceKind.FUSE,
                cable.from(),
                cable.to(),
                Si.quantity(rating, "A", ElectricCurrent.class),
                null,
                null,
                null,
                null,
                null));
        return Candidate.of(
                "add-fuse", new Edit("/protection", devices), Arg.of("rating", rating, QuantityKind.CURRENT));
    }
}
