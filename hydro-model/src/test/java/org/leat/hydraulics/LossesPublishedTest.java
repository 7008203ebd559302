package org.leat.hydraulics;

import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.catalogue.tables.FittingLoss;
import org.leat.design.FittingKind;
import org.leat.published.PublishedCase;

class LossesPublishedTest {

    /** Fully rough friction of clean 2 in steel pipe: roughness 0.045 mm, bore 52.5 mm. */
    private static final double TWO_INCH_STEEL = LossCoefficient.fullyRoughFriction(4.5e-5 / 0.0525);

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-losses");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void losses_match_the_published_value(PublishedCase c) {
        c.assertMatches(ours(c));
    }

    private static double ours(PublishedCase c) {
        return switch (c.family()) {
            case "k" -> tabled(c);
            case "borda" -> LossCoefficient.suddenEnlargement(c.in("A1"), c.in("A2"));
            case "cc" ->
                LossCoefficient.gradualContraction(c.in("D1"), c.in("D2"), Math.toRadians(c.in("theta_deg")))
                        .orThrow();
            case "kp" -> LossCoefficient.onBore(c.in("K"), c.in("D_from"), c.in("D_to"));
            case "kir" ->
                KirschmerRack.headLoss(
                        c.in("beta"), c.in("s"), c.in("b"), Math.toRadians(c.in("alpha_deg")), c.in("V"));
            case "perf" -> PerforatedPlate.lossCoefficient(c.in("f")).orThrow();
            case "mesh" -> WireMesh.lossCoefficient(c.in("f")).orThrow();
            case "gor" -> Submergence.gordon(c.in("C"), c.in("V"), c.in("D"));
            case "hi" -> Submergence.hydraulicInstitute(c.in("V"), c.in("D"));
            default -> throw new AssertionError("no law bound to " + c);
        };
    }

    private static double tabled(PublishedCase c) {
        return switch (c.id()) {
            case "k-1" -> FittingLoss.of(FittingKind.ENTRANCE_SHARP).usual();
            case "k-3" -> FittingLoss.of(FittingKind.ENTRANCE_ROUNDED).usual();
            case "k-4" -> LossCoefficient.suddenEnlargement(1, 1e12);
            case "k-6" -> 3 * TWO_INCH_STEEL;
            case "k-7" -> 30 * TWO_INCH_STEEL;
            default -> throw new AssertionError("no coefficient bound to " + c);
        };
    }
}
