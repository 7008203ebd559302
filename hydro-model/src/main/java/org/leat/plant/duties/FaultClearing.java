package org.leat.plant.duties;

import org.jspecify.annotations.Nullable;
import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.DeviceKind;
import org.leat.design.ProtectiveDevice;
import org.leat.design.TripCurve;
import org.leat.electrics.AdiabaticHeating;
import org.leat.electrics.BreakerTrip;
import org.leat.electrics.FuseGates;
import org.leat.law.Answer;
import org.leat.quantity.Si;

/**
 * A short circuit at the far end of a run at the battery, and the device that is meant to clear it.
 *
 * <p>A gG fuse has surely melted after 5 s and after 0.1 s at the gates of its rating, {@link FuseGates}: five and eleven times a
 * rating of 25 A, six and seventeen times one of 200 A; above that at the same I²t. A rating that is not tabled is taken as the next
 * larger one, which melts later; above the table nobody can say. A breaker opens within 0.1 s from the multiple of its curve on
 * direct current, {@link BreakerTrip}, and nothing is sure below it.
 *
 * @param current of the fault, A
 * @param cleared whether the device surely opens within five seconds; of a fuse above the table not known, and then true
 * @param leastArea of conductor that stands the fault until then, m²; of no use where it is not cleared
 */
public record FaultClearing(double current, boolean cleared, Answer leastArea) {

    private static final double SLOW = 5;
    private static final double QUICK = 0.1;

    /**
     * {@return what a device makes of a fault}
     *
     * @param curve of a breaker; null for a fuse
     * @param material of the conductor; copper where it is not stated
     */
    public static FaultClearing of(
            double current,
            ProtectiveDevice device,
            @Nullable TripCurve curve,
            CableInsulation insulation,
            @Nullable ConductorMaterial material) {
        double rating = Si.of(device.ratedCurrent());
        double k = k(insulation, material);
        if (device.kind() == DeviceKind.BREAKER) {
            return new FaultClearing(
                    current,
                    curve != null && BreakerTrip.surely(current, rating, multiple(curve)),
                    AdiabaticHeating.leastArea(current, BreakerTrip.TIME, k));
        }
        return FuseGates.ratings().stream()
                .filter(tabled -> tabled >= rating)
                .findFirst()
                .map(tabled -> fuse(current, tabled, k))
                .orElseGet(() -> new FaultClearing(current, true, FuseGates.current(FuseGates.Time.MELTS_5_S, rating)));
    }

    private static FaultClearing fuse(double current, double tabled, double k) {
        double slowly = tabled(FuseGates.Time.MELTS_5_S, tabled);
        double quickly = tabled(FuseGates.Time.MELTS_0_1_S, tabled);
        double time = current < quickly ? SLOW : QUICK * Math.pow(quickly / current, 2);
        return new FaultClearing(current, current >= slowly, AdiabaticHeating.leastArea(current, time, k));
    }

    private static double tabled(FuseGates.Time time, double rating) {
        if (FuseGates.current(time, rating) instanceof Answer.Value value) {
            return value.value();
        }
        throw new IllegalStateException("no gate of a tabled rating: " + rating);
    }

    private static double multiple(TripCurve curve) {
        return switch (curve) {
            case Z -> BreakerTrip.Z;
            case B -> BreakerTrip.B;
            case C -> BreakerTrip.C;
            case D -> BreakerTrip.D;
        };
    }

    private static double k(CableInsulation insulation, @Nullable ConductorMaterial material) {
        boolean aluminium = material == ConductorMaterial.ALUMINIUM;
        return switch (insulation) {
            case PVC -> aluminium ? AdiabaticHeating.ALUMINIUM_PVC : AdiabaticHeating.COPPER_PVC;
            case XLPE -> aluminium ? AdiabaticHeating.ALUMINIUM_XLPE : AdiabaticHeating.COPPER_XLPE;
        };
    }
}
