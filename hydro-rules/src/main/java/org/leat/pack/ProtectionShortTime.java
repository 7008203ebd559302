package org.leat.pack;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import javax.measure.quantity.ElectricCurrent;
import org.jspecify.annotations.Nullable;
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
import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.DeviceKind;
import org.leat.design.Installation;
import org.leat.design.Place;
import org.leat.design.TripCurve;
import org.leat.electrics.AdiabaticHeating;
import org.leat.electrics.BreakerTrip;
import org.leat.electrics.StandardFuseRatings;
import org.leat.law.Answer;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.CableNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Conductors at the battery until the device clears a short circuit. */
final class ProtectionShortTime implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/short-time", Level.ERROR)
            .title("conductors at the battery until the device clears a short circuit")
            .why("Until the fuse opens the conductor takes all the heat of the fault. A thin cable behind a large fuse"
                    + " loses its insulation first; a current too small for the fuse goes on for ever.")
            .formula(
                    "S ≥ I √t / k, I = V_full/(R_battery + loop); gG fuse: t = 0.1 s at 10 I_n and at the same I²t above, 5 s"
                            + " down to 5 I_n; breaker: 0.1 s from the multiple of its curve, nothing sure below it")
            .judged("short circuit at the far end of each run at the battery")
            .source("IEC 60364-4-43 clause 434.5.2, k from table 43A")
            .source("IEC 60269-1 gates of gG fuses: 0.1 s near 10 I_n, 5 s near 5 I_n (from memory)")
            .source(
                    "IEC 60898-1 table 7 and IEC 60898-2: instantaneous trip of curves B and C on direct current, Z and D in"
                            + " proportion, IEC 60947-2 (from memory)")
            .message("stands-it", "run", "device", "fault")
            .message("too-thin", "run", "device", "fault")
            .message("never-clears", "run", "device", "fault")
            .message("let-through", "run", "device", "fault")
            .message("no-device")
            .message("thicker", "area")
            .message("smaller-device", "rating")
            .build();

    private static final double QUICK = 10;
    private static final double SLOW = 5;

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Outcome> outcomes = new ArrayList<>();
        for (CableNumbers numbers : j.plant().numbers().cables()) {
            Cable cable = j.design().cables().get(numbers.index());
            Devices.Placed device = Devices.in(j.design(), cable);
            if (device != null && device.joins(Place.BATTERY)) {
                outcomes.add(judge(j, cable, numbers, device));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/protection").notApplicable("no-device")) : outcomes;
    }

    private static Outcome judge(Judgement j, Cable cable, CableNumbers numbers, Devices.Placed device) {
        String path = "/cables[" + numbers.index() + "]";
        Spot spot = j.at(path + "/conductor/area");
        Installation laid = cable.installation();
        if (laid == null || laid.insulation() == null) {
            return spot.notGiven(path + "/installation/insulation");
        }
        double current = BatteryFault.current(j, numbers.loopResistance());
        double rating = Si.of(device.device().ratedCurrent());
        Arg[] args = {Runs.arg("run", cable), device.name(), Arg.of("fault", current, QuantityKind.CURRENT)};
        boolean breaker = device.device().kind() == DeviceKind.BREAKER;
        TripCurve curve = device.device().tripCurve();
        if (breaker && curve == null) {
            return spot.notGiven(device.path() + "/trip-curve");
        }
        if (breaker ? !BreakerTrip.surely(current, rating, multiple(curve)) : current < SLOW * rating) {
            return spot.fail("never-clears", args);
        }
        double time =
                breaker ? BreakerTrip.TIME : current < QUICK * rating ? 5 : 0.1 * Math.pow(QUICK * rating / current, 2);
        Answer least = AdiabaticHeating.leastArea(current, time, k(cable, laid.insulation()));
        if (least instanceof Answer.Outside outside) {
            return spot.outsideOf(outside);
        }
        int parallel =
                cable.conductor().parallel() == null ? 1 : cable.conductor().parallel();
        Comparison comparison =
                Comparison.atLeast(Si.of(cable.conductor().area()) * parallel, least.orThrow(), QuantityKind.AREA);
        if (breaker && !comparison.holds()) {
            // it may well open sooner than it must, but how much it lets through only its maker can say
            return spot.open(device.path(), "let-through", args);
        }
        return spot.compare(comparison, "stands-it", "too-thin", args);
    }

    private static double multiple(@Nullable TripCurve curve) {
        return switch (Objects.requireNonNull(curve)) {
            case Z -> BreakerTrip.Z;
            case B -> BreakerTrip.B;
            case C -> BreakerTrip.C;
            case D -> BreakerTrip.D;
        };
    }

    private static double k(Cable cable, CableInsulation insulation) {
        boolean aluminium = cable.conductor().material() == ConductorMaterial.ALUMINIUM;
        return switch (insulation) {
            case PVC -> aluminium ? AdiabaticHeating.ALUMINIUM_PVC : AdiabaticHeating.COPPER_PVC;
            case XLPE -> aluminium ? AdiabaticHeating.ALUMINIUM_XLPE : AdiabaticHeating.COPPER_XLPE;
        };
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        Search.least(this, j, failure, CableAmpacity.thicker(failure.path(), j)).ifPresent(ways::add);
        int index = Integer.parseInt(failure.path().replaceAll("\\D", ""));
        Devices.Placed device = Devices.in(j.design(), j.design().cables().get(index));
        if (device != null) {
            double now = Si.of(device.device().ratedCurrent());
            Search.first(
                            this,
                            j,
                            failure,
                            StandardFuseRatings.all().stream()
                                    .filter(rating -> rating < now)
                                    .sorted(Comparator.reverseOrder())
                                    .map(rating -> Candidate.of(
                                            "smaller-device",
                                            new Edit(
                                                    device.path() + "/rated-current",
                                                    Si.quantity(rating, "A", ElectricCurrent.class)),
                                            Arg.of("rating", rating, QuantityKind.CURRENT))))
                    .ifPresent(ways::add);
        }
        return ways;
    }
}
