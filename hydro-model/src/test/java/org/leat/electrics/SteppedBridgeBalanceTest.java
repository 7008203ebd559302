package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** A stepped bridge: what is asked for less work, and a resistance counted where it lies. */
class SteppedBridgeBalanceTest {

    private static final DiodeLine DIODE = new DiodeLine(0.8, 0.01);

    private static BridgeTimeStepper stepper(double winding, double lead) {
        return new BridgeTimeStepper(
                new AlternatorConstants(4, 0.08, winding, 0.0012),
                lead,
                DIODE,
                90,
                new DcLoad.Battery(24, 0.05),
                BridgeFault.NONE,
                720);
    }

    @Test
    void torque_alone_is_that_of_the_whole_measurement() {
        BridgeTimeStepper one = stepper(0.3, 0.05);
        BridgeTimeStepper other = stepper(0.3, 0.05);
        one.run(8);
        other.run(8);
        double torque = other.measure(2).torque();
        assertThat(torque).isPositive();
        assertThat(one.torque(2)).isCloseTo(torque, within(1e-9 * torque));
        assertThat(one.time()).isCloseTo(10 * 2 * Math.PI / (4 * 90), within(1e-12));
    }

    @Test
    void a_lead_s_resistance_counts_like_the_winding_s() {
        BridgeTimeStepper inWinding = stepper(0.35, 0);
        BridgeTimeStepper inLead = stepper(0.3, 0.05);
        inWinding.run(8);
        inLead.run(8);
        BridgeWaveform a = inWinding.measure(1);
        BridgeWaveform b = inLead.measure(1);
        assertThat(b.directCurrent()).isCloseTo(a.directCurrent(), within(1e-9));
        assertThat(b.copperLoss()).isCloseTo(a.copperLoss() * 0.3 / 0.35, within(1e-9 * a.copperLoss()));
    }

    /** Two diodes carry the direct current at all times: their thresholds take 2 V_F0 I. */
    @Test
    void what_passes_the_air_gap_is_lost_or_delivered() {
        BridgeTimeStepper stepper = stepper(0.3, 0.05);
        stepper.run(8);
        BridgeWaveform wave = stepper.measure(1);
        double resistive = wave.copperLoss() * (0.3 + 0.05 + DIODE.slope()) / 0.3;
        double thresholds = 2 * DIODE.threshold() * wave.directCurrent();
        assertThat(wave.airGapPower())
                .isCloseTo(resistive + thresholds + wave.directPower(), within(1e-3 * wave.airGapPower()));
    }
}
