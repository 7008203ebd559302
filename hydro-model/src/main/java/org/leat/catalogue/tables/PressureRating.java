package org.leat.catalogue.tables;

import java.util.Comparator;
import org.leat.law.Physical;

/**
 * Pressure a plastic pipe holds for 50 years at 20 °C: {@code p = 2 MRS/(C (SDR − 1))}, Pa, with the minimum required
 * strength MRS [Pa], the overall design coefficient C and the standard dimension ratio SDR.
 *
 * <p>Source: ISO 161-1, ISO 12162 (σ = MRS/C). Valid for SDR above 3.
 */
public final class PressureRating {

    private static final double BAR = 1e5;
    private static final LazyTable<Name> NAMES = LazyTable.of("nominal-pressures", Name.class);

    private PressureRating() {}

    private record Name(double bar) {}

    /** {@return calculated pressure, Pa} */
    public static double calculated(double strength, double designCoefficient, double sdr) {
        Physical.positive("strength", strength);
        Physical.within("designCoefficient", designCoefficient, 1, 10);
        Physical.within("sdr", sdr, 3, 1000);
        return 2 * strength / (designCoefficient * (sdr - 1));
    }

    /** {@return the nominal pressure PN, Pa, whose name a calculated pressure carries: 12.7 bar is PN 12.5, 6.4 is PN 6} */
    public static double nominal(double calculated) {
        Physical.positive("calculated", calculated);
        return BAR
                * NAMES.rows().stream()
                        .map(Name::bar)
                        .min(Comparator.comparingDouble(bar -> Math.abs(Math.log(bar * BAR / calculated))))
                        .orElseThrow();
    }

    /**
     * {@return allowable operating pressure PN fT fA, Pa}
     *
     * <p>Source: EN 12201-1 annex A, ISO 1452-2 annex A.
     *
     * @param nominal PN, Pa
     * @param temperatureFactor fT, share left at the wall's temperature
     * @param applicationFactor fA, 1 unless the standard says otherwise
     */
    public static double allowable(double nominal, double temperatureFactor, double applicationFactor) {
        return Physical.positive("nominal", nominal)
                * Physical.within("temperatureFactor", temperatureFactor, 0, 1)
                * Physical.within("applicationFactor", applicationFactor, 0, 1);
    }
}
