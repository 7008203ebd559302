package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A few points of every mode of the bridge, quick enough to be asked often; many points are in {@link BridgePropertiesTest}. */
class BridgeModesTest {

    /** Stepped in time, which knows nothing of modes: machine of unit impedance, one pole pair at 1 rad/s. */
    @ParameterizedTest
    @CsvSource({
        "10, 1.65, 0.02, ISOLATED_PULSES",
        "30, 1.66, 0.5, ISOLATED_PULSES",
        "75, 1.69, 0.05, ISOLATED_PULSES",
        "5, 1.2, 0.05, COMMUTATION",
        "20, 1.3, 0, COMMUTATION",
        "35, 1.2, 1.5, COMMUTATION",
        "60, 1.35, 0.3, COMMUTATION",
        "80, 1.4, 0.05, COMMUTATION",
        "50, 0.2, 0.05, FULL",
        "70, 0.6, 0, FULL",
        "85, 0.9, 0.1, FULL",
        "65, 0.3, 0.4, FULL",
        "25, 0.05, 0.01, FULL"
    })
    void the_averaged_model_agrees_with_time_stepping(double degrees, double clamp, double rho, ConductionMode mode) {
        double psi = Math.toRadians(degrees);
        AlternatorConstants machine = new AlternatorConstants(1, 1, Math.cos(psi), Math.sin(psi));
        BridgeTimeStepper stepper = new BridgeTimeStepper(
                machine, 0, new DiodeLine(0, 0), 1, new DcLoad.Battery(clamp, rho), BridgeFault.NONE, 720);
        stepper.run(3 + Math.ceil(1.2 * Math.tan(psi)));
        BridgeWaveform wave = stepper.measure(1);
        BridgeCurrents averaged = ThreeModeBridge.solve(1, Math.sin(psi), Math.cos(psi), clamp, rho);
        assertThat(averaged.mode()).isEqualTo(mode);
        double close = 0.005 * wave.directCurrent() + 5e-5;
        assertThat(averaged.directCurrent()).isCloseTo(wave.directCurrent(), within(close));
        assertThat(averaged.phaseCurrentRms()).isCloseTo(wave.phaseCurrentRms(), within(close));
    }

    /** Over a period the EMFs give what bus, its resistance and the winding take: E 3/√2 I1 bounds it, balance is exact. */
    @Test
    void newton_s_steps_and_the_search_meet_at_the_same_currents() {
        Map<ConductionMode, Integer> seen = new EnumMap<>(ConductionMode.class);
        for (double degrees = 4; degrees < 88; degrees += 12) {
            for (double clamp = 0.1; clamp < 1.6; clamp += 0.25) {
                for (double rho : new double[] {0, 0.05, 0.8, 4}) {
                    double x = Math.sin(Math.toRadians(degrees));
                    double r = Math.cos(Math.toRadians(degrees));
                    BridgeCurrents quick = ThreeModeBridge.solve(1, x, r, clamp, rho);
                    seen.merge(quick.mode(), 1, Integer::sum);
                    if (quick.mode() == ConductionMode.COMMUTATION) {
                        BridgeCurrents slow = CommutationSearch.solve(1, x, r, clamp, rho);
                        assertThat(quick.directCurrent()).isCloseTo(slow.directCurrent(), within(1e-6));
                        assertThat(quick.directCurrentRms()).isCloseTo(slow.directCurrentRms(), within(1e-6));
                        assertThat(quick.phaseCurrentRms()).isCloseTo(slow.phaseCurrentRms(), within(1e-6));
                    }
                }
            }
        }
        assertThat(seen.get(ConductionMode.COMMUTATION)).isGreaterThan(40);
    }

    /** All phases conducting, no resistance anywhere: I = 3/(πX) √(E² − (2πV'/9)²). */
    @Test
    void without_loss_the_direct_current_is_that_of_the_closed_form() {
        for (double clamp : new double[] {0, 10, 20}) {
            double lossless = 3 / Math.PI * Math.sqrt(900 - Math.pow(2 * Math.PI * clamp / 9, 2));
            assertThat(ThreeModeBridge.solve(30, 1, 0, clamp, 0).directCurrent())
                    .isCloseTo(lossless, within(2e-3 * lossless));
        }
    }

    @Test
    void the_slope_of_an_arc_is_that_of_its_values() {
        Arc arc = Arc.upper(1, 0.4, Math.sqrt(1 - 0.16), 0.9, 0.5, 0.8, 0.2);
        for (double d = 0.1; d < 1; d += 0.2) {
            assertThat(arc.slopeAt(d)).isCloseTo((arc.at(d + 1e-6) - arc.at(d - 1e-6)) / 2e-6, within(1e-6));
        }
    }
}
