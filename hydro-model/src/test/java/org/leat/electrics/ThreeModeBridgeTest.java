package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class ThreeModeBridgeTest {

    static Stream<CircuitPoint> points() {
        return CircuitPoint.steady();
    }

    static Stream<PublishedCase> maps() {
        return PublishedCase.of("electrical-rectifier").filter(c -> c.family().equals("rec-map"));
    }

    static double off(double ours, double theirs) {
        return ours / theirs - 1;
    }

    @ParameterizedTest
    @MethodSource("points")
    void the_bridge_agrees_with_the_circuit_simulator(CircuitPoint p) {
        BridgeOperatingPoint ours = p.bus().at(p.speed());
        boolean large = p.at("Idc_A") > 3;
        assertThat(off(ours.dcCurrent(), p.at("Idc_A"))).as("d.c. current").isCloseTo(0, within(large ? 0.01 : 0.03));
        assertThat(off(ours.phaseCurrentRms(), p.at("Iph_rms_A")))
                .as("phase rms")
                .isCloseTo(0, within(large ? 0.02 : 0.03));
        assertThat(off(ours.torque(), p.at("T_brake_Nm"))).as("torque").isCloseTo(0, within(large ? 0.02 : 0.03));
        assertThat(off(ours.dcPower(), p.at("P_dc_W"))).as("d.c. power").isCloseTo(0, within(large ? 0.01 : 0.03));
    }

    @Test
    void the_worst_deviations_from_the_circuit_simulator_are_printed() {
        StringBuilder out = new StringBuilder("bridge against circuit simulation (ngspice 39.3), deviation in %\n");
        double[] worst = new double[3];
        points().forEach(p -> {
            BridgeOperatingPoint ours = p.bus().at(p.speed());
            double[] d = {
                100 * off(ours.dcCurrent(), p.at("Idc_A")),
                100 * off(ours.phaseCurrentRms(), p.at("Iph_rms_A")),
                100 * off(ours.torque(), p.at("T_brake_Nm"))
            };
            out.append(String.format(
                    Locale.ROOT,
                    "%-4s %8.3f A  current %+6.2f  phase rms %+6.2f  torque %+6.2f  %s%n",
                    p.id(),
                    p.at("Idc_A"),
                    d[0],
                    d[1],
                    d[2],
                    ours.mode()));
            for (int i = 0; i < 3 && p.at("Idc_A") > 3; i++) {
                worst[i] = Math.max(worst[i], Math.abs(d[i]));
            }
        });
        out.append(String.format(
                Locale.ROOT,
                "worst above 3 A: current %.2f  phase rms %.2f  torque %.2f",
                worst[0],
                worst[1],
                worst[2]));
        System.out.println(out);
        assertThat(worst[0]).isLessThan(1);
        assertThat(worst[1]).isLessThan(2);
        assertThat(worst[2]).isLessThan(2);
    }

    @ParameterizedTest
    @MethodSource("maps")
    void the_normalised_map_is_met(PublishedCase c) {
        double psi = Math.toRadians(c.in("psi"));
        double clamp = c.in("v") * Math.sqrt(3);
        BridgeCurrents ours = ThreeModeBridge.solve(1, Math.sin(psi), Math.cos(psi), clamp, 0);
        c.assertMatches("y", ours.dcCurrent());
        c.assertMatches("Iph_rms_over_Idc", ours.phaseCurrentRms() / ours.dcCurrent());
        int mode = ours.mode() == ConductionMode.FULL ? 3 : ours.mode() == ConductionMode.COMMUTATION ? 2 : 1;
        assertThat(mode).isEqualTo((int) c.expected("mode"));
    }
}
