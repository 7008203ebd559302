package org.leat.hydraulics;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

/** Surge against published values and independently computed envelopes. */
class TransientPublishedTest {

    private static final int REACHES = 400;

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("hydraulics-transient");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void surge_agrees_with_what_is_published(PublishedCase c) {
        c.assertMatches(ours(c));
    }

    @Test
    void every_case_of_the_file_is_bound() {
        assertThat(cases()).hasSize(47);
    }

    private static double ours(PublishedCase c) {
        return switch (c.family()) {
            case "a" ->
                WaveSpeed.thinWall(
                        c.in("K"),
                        c.in("rho_"),
                        c.in("E"),
                        c.in("D"),
                        c.in("e"),
                        restraint(c).factor(c.in("nu_")));
            case "athick" ->
                WaveSpeed.thickWall(
                        c.in("K"), c.in("rho_"), c.in("E"), c.in("nu_"), c.in("D"), c.in("e"), restraint(c));
            case "apub" -> WaveSpeed.rigid(c.in("K"), c.in("rho_"));
            case "aconv" -> WallRestraint.UPSTREAM_ONLY.olderFactor(c.in("nu_"));
            case "jk" -> Joukowsky.head(c.in("a"), c.in("dV"));
            // the case states no wave speed; any that returns within the closing time has the same answer
            case "mic" -> Michaud.head(c.in("L"), c.in("V"), c.in("Tc"), 300).orThrow();
            case "mse", "mch" -> series(c);
            default -> single(c);
        };
    }

    private static WallRestraint restraint(PublishedCase c) {
        return WallRestraint.values()[(int) c.in("restraint") - 1];
    }

    private static double single(PublishedCase c) {
        SurgeLine line =
                new SurgeLine(List.of(new SurgeSection(c.in("L"), c.in("D"), c.in("a"), c.in("f"), 0, 0)), c.in("Hr"));
        UpperEnd upper = c.family().equals("mic0") ? new UpperEnd.Shutting(c.in("Tc")) : new UpperEnd.Open();
        LowerEnd lower = switch (c.family()) {
            case "mic0" -> new LowerEnd.Nozzles(NozzleOpening.unchanged());
            case "mop" -> new LowerEnd.OpeningNozzles(c.in("To"));
            case "mfc" -> new LowerEnd.FallingFlow(c.in("Tc"));
            default -> new LowerEnd.Nozzles(NozzleOpening.linear(1, c.in("tau1"), c.in("Tc")));
        };
        double flow = c.has("Q0") ? c.in("Q0") : c.in("Qfull");
        return pick(c, 0, Characteristics.run(line, flow, upper, lower, REACHES, c.in("tmax")));
    }

    private static double series(PublishedCase c) {
        SurgeLine line = new SurgeLine(
                List.of(
                        new SurgeSection(c.in("L1"), c.in("D1"), c.in("a1"), c.in("f1"), 0, 0),
                        new SurgeSection(c.in("L2"), c.in("D2"), c.in("a2"), c.in("f2"), 0, 0)),
                c.in("Hr"));
        NozzleOpening opening = c.has("t_tab")
                ? NozzleOpening.table(c.list("t_tab"), c.list("tau_tab"))
                : NozzleOpening.linear(1, c.in("tau1"), c.in("Tc"));
        HeadEnvelope envelope = Characteristics.run(
                line, c.in("Q0"), new UpperEnd.Open(), new LowerEnd.Nozzles(opening), REACHES, c.in("tmax"));
        assertThat(envelope.waveSpeedChange()).isLessThan(1e-9);
        return pick(c, (int) c.in("pipe") - 1, envelope);
    }

    private static double pick(PublishedCase c, int section, HeadEnvelope envelope) {
        return c.text("what").equals("max")
                ? envelope.highestAt(section, c.in("x_rel"))
                : envelope.lowestAt(section, c.in("x_rel"));
    }
}
