package org.leat.hydraulics;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class FrictionPublishedTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-friction");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void friction_matches_the_published_value(PublishedCase c) {
        c.assertMatches(ours(c));
    }

    private static double ours(PublishedCase c) {
        return switch (c.family()) {
            case "cb" -> ColebrookWhite.frictionFactor(c.in("Re"), c.in("rr"));
            case "lam" -> LaminarFriction.frictionFactor(c.in("Re")).orThrow();
            case "sj" -> SwameeJain.frictionFactor(c.in("Re"), c.in("rr")).orThrow();
            case "moody", "tbf" -> DarcyFriction.frictionFactor(c.in("Re"), c.in("rr"));
            case "pipe", "tb" -> loss(c);
            case "tbx" -> c.has("H") ? flow(c) : loss(c);
            case "qfh" -> flow(c);
            case "dfl" -> LeastBore.forLoss(c.in("h"), c.in("Q"), c.in("L"), c.in("k"), c.in("K"), viscosity(c));
            default -> throw new AssertionError("no law bound to " + c);
        };
    }

    private static double loss(PublishedCase c) {
        double fittings = c.has("K") ? c.in("K") : 0;
        return DarcyWeisbach.headLoss(c.in("Q"), c.in("L"), c.in("D"), c.in("k"), fittings, viscosity(c));
    }

    /** A pipe whose end loses all the head there is: the flow for a given loss. */
    private static double flow(PublishedCase c) {
        PenstockSection pipe = new PenstockSection(c.in("L"), c.in("D"), c.in("k"), c.in("K"));
        return new SteadyPenstock(List.of(pipe), 0, viscosity(c)).flow(c.in("H"), Double.POSITIVE_INFINITY);
    }

    private static double viscosity(PublishedCase c) {
        return c.has("nu_") ? c.in("nu_") : WaterProperties.kinematicViscosity(c.in("T_C"));
    }
}
