package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class NozzlePublishedTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-nozzle");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void nozzles_and_steady_flow_match_the_published_value(PublishedCase c) {
        c.assertMatches(ours(c));
    }

    private static double ours(PublishedCase c) {
        return switch (c.family()) {
            case "nz" -> coefficient(c);
            case "vj" -> NozzleDischarge.jetVelocity(c.in("Cv"), c.in("H"));
            case "pj" -> NozzleDischarge.jetPower(c.in("rho_"), c.in("Q"), c.in("V"));
            case "pf" -> solved(c).flow();
            case "pnet" -> solved(c).netHead();
            case "pjp" -> solved(c).jetPower();
            case "mxp" ->
                MaximumJetPower.of(penstock(c), c.in("Hg"), c.in("Cv"), density(c))
                        .nozzleBore(1, c.in("Cv"), c.in("Cc"));
            case "mxpf" -> MaximumJetPower.boreForConstantFriction(c.in("f"), c.in("L"), c.in("D"));
            case "ptf" ->
                PartFullPenstock.evenSlope(penstock(c), c.in("Hg"), c.in("Q"), equalNozzles(c), density(c))
                        .level();
            case "cn" ->
                ManningPipe.normalDepthRatio(c.in("Q"), c.in("D"), c.in("n"), c.in("S"))
                        .orThrow();
            case "cy" -> ManningPipe.criticalDepthRatio(c.in("Q"), c.in("D"));
            case "man" -> manifold(c);
            default -> throw new AssertionError("no law bound to " + c);
        };
    }

    private static double coefficient(PublishedCase c) {
        return switch (c.id()) {
            case "nz-1" -> NozzleDischarge.slotContraction();
            case "nz-3" -> NozzleKind.SHARP_HOLE.dischargeCoefficient();
            case "nz-4" -> NozzleKind.SHARP_HOLE.velocityCoefficient();
            case "nz-6" -> NozzleKind.SMOOTH_CONVERGING.velocityCoefficient();
            default -> throw new AssertionError("no coefficient bound to " + c);
        };
    }

    private static SteadyFlow solved(PublishedCase c) {
        return penstock(c).solve(c.in("Hg"), equalNozzles(c), density(c));
    }

    private static double manifold(PublishedCase c) {
        List<Double> open = new ArrayList<>();
        for (double bore : c.list("d_list")) {
            if (bore > 0) {
                open.add(bore);
            }
        }
        OpenNozzles nozzles = new OpenNozzles(open, c.in("Cv"), c.in("Cc"), c.in("Db"), c.in("Kb"));
        SteadyFlow flow = penstock(c).solve(c.in("Hg"), nozzles, density(c));
        int which = (int) c.in("which");
        return which < 0 ? flow.flow() : flow.jets().get(which).flow();
    }

    private static SteadyPenstock penstock(PublishedCase c) {
        PenstockSection pipe = new PenstockSection(c.in("L"), c.in("D"), c.in("k"), c.in("K"));
        return new SteadyPenstock(List.of(pipe), 0, WaterProperties.kinematicViscosity(c.in("T_C")));
    }

    private static OpenNozzles equalNozzles(PublishedCase c) {
        List<Double> bores = Collections.nCopies((int) c.in("n"), c.in("d"));
        return OpenNozzles.withoutBranches(bores, c.in("Cv"), c.in("Cc"));
    }

    private static double density(PublishedCase c) {
        return WaterProperties.density(c.in("T_C"));
    }
}
