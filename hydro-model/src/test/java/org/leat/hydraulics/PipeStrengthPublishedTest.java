package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.tables.MaterialData;
import org.leat.catalogue.tables.MaterialProperty;
import org.leat.published.PublishedCase;

/** Strength, collapse, thrust and expansion of pipe against published and independently computed values. */
class PipeStrengthPublishedTest {

    private static final double PSI = 6894.757293168;

    static Stream<PublishedCase> cases() {
        return Stream.of(
                        PublishedCase.of("hydraulics-buckling").filter(c -> !explained(c)),
                        PublishedCase.of("hydraulics-thrust"),
                        PublishedCase.of("hydraulics-pipe-standards")
                                .filter(c -> c.family().equals("barlow")
                                        || c.family().equals("vin")))
                .flatMap(s -> s);
    }

    /** Another formula for collapse than ours; see the test that explains the difference. */
    private static boolean explained(PublishedCase c) {
        return c.family().equals("golder");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void laws_of_strength_agree_with_what_is_published(PublishedCase c) {
        c.assertMatches(ours(c));
    }

    @Test
    void every_case_of_the_files_is_bound() {
        assertThat(cases()).hasSize(8 + 7 + 2);
        assertThat(PublishedCase.of("hydraulics-buckling")).hasSize(9);
    }

    /**
     * Explained difference: the older American form 2.32 E/SDR³ of this source gives 25.1 psi; the ring formula of the
     * handbooks, which we use, gives 36.1 psi for the same pipe, as the source's own note says.
     */
    @Test
    void the_older_collapse_formula_is_thirty_per_cent_lower_than_ours() {
        PublishedCase c = PublishedCase.of("hydraulics-buckling")
                .filter(PipeStrengthPublishedTest::explained)
                .findFirst()
                .orElseThrow();
        double ours = RingBuckling.critical(c.in("E") * PSI, 0.45, c.in("SDR")) / PSI;
        c.assertMatches(2.32 * c.in("E") / Math.pow(c.in("SDR"), 3));
        c.tell("value", ours);
        assertThat(ours).isEqualTo(36.1, within(0.05));
        assertThat(c.expected() / ours).isEqualTo(0.7, within(0.01));
    }

    private static double ours(PublishedCase c) {
        return switch (c.family()) {
            case "pcr" -> RingBuckling.critical(c.in("E"), c.in("nu_"), c.in("SDR"));
            case "oval" -> OvalityFactor.factor(c.in("x"));
            case "pal" -> RingBuckling.allowed(c.in("E"), c.in("nu_"), c.in("SDR"), c.in("ovality"), c.in("SF"));
            case "tb90" -> BendThrust.force(c.in("p"), 1000, c.in("Q"), c.in("D"), Math.toRadians(c.in("theta_deg")));
            case "tend" -> EndThrust.force(c.in("p"), c.in("D"));
            case "tred" -> ReducerThrust.force(c.in("p1"), 1000, c.in("Q"), c.in("D1"), c.in("D2"));
            case "exp" -> ThermalLengthChange.free(c.in("alpha"), c.in("L"), c.in("dT"));
            case "expub" -> MaterialData.usual(PipeMaterial.PE100, MaterialProperty.THERMAL_EXPANSION);
            case "barlow" -> Barlow.pressure(c.in("sigma"), c.in("e"), c.in("D"));
            case "vin" -> VinsonCycles.toFailure(c.in("S_psi") * PSI).orThrow();
            default -> throw new AssertionError("no law bound to " + c);
        };
    }
}
