package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.published.PublishedCase;

class RectifierTest {

    static Stream<PublishedCase> cases() {
        return PublishedCase.of("electrical-rectifier");
    }

    @ParameterizedTest
    @MethodSource("cases")
    void rectifier_laws_match_their_sources(PublishedCase c) {
        switch (c.family()) {
            case "rec-vd0" -> {
                double line = c.in("V_LL_rms");
                c.assertMatches("Vd0", SmoothCurrentBridge.idealVoltage(line));
                c.assertMatches("V_peak", Math.sqrt(2) * line);
                c.assertMatches("V_rms", SmoothCurrentBridge.idealRmsVoltage(line));
                c.assertMatches("ripple_factor", SmoothCurrentBridge.rippleFactor());
                c.assertMatches("PIV", Math.sqrt(2) * line);
            }
            case "rec-rashid" -> {
                double line = c.in("Vdc") / SmoothCurrentBridge.idealVoltage(1);
                c.assertMatches("Vm_phase", Math.sqrt(2.0 / 3) * line);
                c.assertMatches("PIV", Math.sqrt(2) * line);
                c.assertMatches("Idiode_avg", SmoothCurrentBridge.diodeMean(c.in("Idc")));
                c.assertMatches("Idiode_peak", SmoothCurrentBridge.peakIntoResistor(c.in("Idc")));
                c.assertMatches("efficiency", SmoothCurrentBridge.rectificationEfficiency());
            }
            case "rec-currents" -> {
                c.assertMatches("I_diode_avg", SmoothCurrentBridge.diodeMean(c.in("Idc")));
                c.assertMatches("I_diode_rms", SmoothCurrentBridge.diodeRms(c.in("Idc")));
                c.assertMatches("I_line_rms", SmoothCurrentBridge.lineRms(c.in("Idc")));
                c.assertMatches("I_line_fund_rms", SmoothCurrentBridge.lineFundamentalRms(c.in("Idc")));
            }
            case "rec-currents-stiff" -> {
                c.assertMatches("I_line_rms", SmoothCurrentBridge.lineRmsOnStiffVoltage(c.in("Idc")));
                // the same from the averaged model of a bridge deep in full conduction
                BridgeCurrents deep = ThreeModeBridge.solve(40, 1, 0.1, 8, 0);
                c.assertMatches("I_line_rms", c.in("Idc") * deep.phaseCurrentRms() / deep.directCurrent());
            }
            case "rec-comm" ->
                c.assertMatches("dV", SmoothCurrentBridge.commutationDrop(c.in("omega_e") * c.in("Ls"), c.in("Idc")));
            case "rec-heat" -> {
                double heat = DiodeLoss.of(new DiodeLine(c.in("Vf0"), c.in("rd")), c.in("Idc"), c.in("Iph_rms"));
                c.assertMatches("P", heat);
                c.assertMatches(
                        "Tj", JunctionTemperature.of(c.in("Ta"), heat, c.in("Rjc") + c.in("Rcs") + c.in("Rsa")));
            }
            case "rec-map" -> map(c);
            case "rec-peaktorque" -> peak(c);
            default -> throw new AssertionError("no law bound to " + c);
        }
    }

    private static void map(PublishedCase c) {
        double psi = Math.toRadians(c.in("psi"));
        BridgeCurrents ours = ThreeModeBridge.solve(1, Math.sin(psi), Math.cos(psi), c.in("v") * Math.sqrt(3), 0);
        c.assertMatches("y", ours.directCurrent());
        c.assertMatches("Iph_rms_over_Idc", ours.phaseCurrentRms() / ours.directCurrent());
        assertThat(ours.mode()).isEqualTo(c.expected("mode") == 3 ? ConductionMode.FULL : ConductionMode.COMMUTATION);
    }

    private static void peak(PublishedCase c) {
        double constant = EmfConstant.fromLineRms(c.in("k_LLrms"), Math.PI / 30);
        TorquePeak peak = TorquePeak.of(new BatteryClamp(
                AlternatorConstants.fromLeads((int) c.in("pole_pairs"), constant, 2 * c.in("R"), 2 * c.in("L")),
                0,
                new DiodeLine(c.in("diode_Vf0"), c.in("diode_rd")),
                c.in("VB"),
                c.in("RB")));
        c.assertMatches("T_max", peak.torque());
        c.assertMatches("n_at_T_max", peak.speed() * 30 / Math.PI);
    }

    @Test
    void the_textbook_overlap_is_told_only_while_two_and_three_diodes_take_turns() {
        assertThat(SmoothCurrentBridge.overlap(40, 0.5, 0).orThrow()).isZero();
        assertThat(SmoothCurrentBridge.overlap(40, 0.5, 20).orThrow())
                .isCloseTo(Math.acos(1 - 2 * 0.5 * 20 / (Math.sqrt(2) * 40)), within(1e-12));
        assertThat(SmoothCurrentBridge.overlap(40, 0.5, 40).isValue()).isFalse();
    }

    @Test
    void transient_factors_cover_the_stored_simulations() {
        CircuitPoint.where(p -> p.load().equals("ocs") || p.load().equals("dump"))
                .forEach(p -> {
                    double peak = ReverseVoltage.openCircuit(p.alternator(), p.speed(), 1);
                    double told = p.load().equals("ocs") ? ReverseVoltage.inrush(peak) : ReverseVoltage.loadDump(peak);
                    assertThat(told).as(p.id()).isGreaterThanOrEqualTo(p.at("Vdc_max_V"));
                });
    }
}
