package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Means and ripples of waves of which they are known. */
class WaveformMeterTest {

    /** Of a sine of peak I the rms is I/√2 and the mean of one half wave over the whole period I/π. */
    @Test
    void sines_have_the_means_of_any_textbook() {
        WaveformMeter meter = new WaveformMeter();
        int steps = 720;
        double h = 0.02 / steps;
        for (int n = 0; n < steps; n++) {
            double angle = 2 * Math.PI * (n + 0.5) / steps;
            double direct = 9 + 3 * Math.cos(angle + 0.4) + 2 * Math.sin(2 * angle) + 0.5 * Math.cos(6 * angle + 1);
            meter.add(h, angle, direct, 50, 100, 4 * Math.sin(angle), 5 * Math.sin(angle), 6 * Math.sin(angle));
        }
        BridgeWaveform wave = meter.read(40, 0.3);
        assertThat(wave.directCurrent()).isCloseTo(9, within(1e-9));
        assertThat(wave.directVoltage()).isCloseTo(50, within(1e-9));
        assertThat(wave.directPower()).isCloseTo(450, within(1e-6));
        assertThat(wave.torque()).isCloseTo(2.5, within(1e-9));
        assertThat(wave.phaseCurrentRms()).isCloseTo(6 / Math.sqrt(2), within(1e-9));
        assertThat(wave.copperLoss()).isCloseTo(0.3 * (16 + 25 + 36) / 2, within(1e-9));
        assertThat(wave.diodeCurrent()).isCloseTo(6 / Math.PI, within(1e-4));
        assertThat(wave.rippleAtFrequency()).isCloseTo(3, within(1e-9));
        assertThat(wave.rippleAtTwice()).isCloseTo(2, within(1e-9));
        assertThat(wave.rippleAtSix()).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void the_diode_that_carries_most_is_found_in_every_phase_and_both_ways() {
        double[][] phases = {{7, 0, 0}, {0, 7, 0}, {0, 0, 7}, {-7, 1, 2}, {1, -7, 2}, {2, 1, -7}};
        for (double[] i : phases) {
            WaveformMeter meter = new WaveformMeter();
            meter.add(0.25, 0, 7, 1, 1, i[0], i[1], i[2]);
            meter.add(0.25, 1, 7, 1, 1, i[0], i[1], i[2]);
            assertThat(meter.read(1, 1).diodeCurrent()).isCloseTo(7, within(1e-12));
        }
    }
}
