package org.leat.plant.cases;

import org.jspecify.annotations.Nullable;
import org.leat.design.CableInsulation;
import org.leat.design.ConductorMaterial;
import org.leat.design.DeviceKind;
import org.leat.design.ProtectiveDevice;
import org.leat.design.TripCurve;
import org.leat.electrics.AdiabaticHeating;
import org.leat.electrics.BreakerTrip;
import org.leat.law.Answer;
import org.leat.quantity.Si;

/**
 * A short circuit at the far end of a run at the battery, and the device that is meant to clear it.
 *
 * <p>Times of gG fuses: 5 s from five, 0.1 s from ten times the rating, and at the same I²t above (IEC 60269-1, from
 * memory); a breaker opens within 0.1 s from the multiple of its curve, and nothing is sure below it.
 *
 * @param current of the fault, A
 * @param cleared whether the device surely opens within five seconds
 * @param leastArea of conductor that stands the fault until then, m²; of no use where it is not cleared
 */
public record FaultClearing(double current, boolean cleared, Answer leastArea) {

    private static final double QUICK = 10;
    private static final double SLOW = 5;

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
        boolean breaker = device.kind() == DeviceKind.BREAKER;
        boolean cleared = (breaker && curve != null)
                ? BreakerTrip.surely(current, rating, multiple(curve))
                : !breaker && current >= SLOW * rating;
        double time =
                breaker ? BreakerTrip.TIME : current < QUICK * rating ? 5 : 0.1 * Math.pow(QUICK * rating / current, 2);
        return new FaultClearing(current, cleared, AdiabaticHeating.leastArea(current, time, k(insulation, material)));
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
