package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Alternator and bridge on a battery against fine steps in time: currents, volts and every watt. */
class BatteryClampTest {

    private static final AlternatorConstants MACHINE = new AlternatorConstants(4, 0.08, 0.3, 0.0012);
    private static final DiodeLine DIODE = new DiodeLine(0.8, 0.03);
    private static final double LEAD = 0.05;
    private static final double BUS = 24;
    private static final double RHO = 0.07;

    @ParameterizedTest
    @ValueSource(doubles = {60, 90, 200})
    void currents_volts_and_watts_are_those_of_fine_steps(double speed) {
        BridgeTimeStepper stepper = new BridgeTimeStepper(
                MACHINE, LEAD, DIODE, speed, new DcLoad.Battery(BUS, RHO), BridgeFault.NONE, 20_000);
        stepper.run(6);
        BridgeWaveform fine = stepper.measure(1);
        BridgeOperatingPoint at = new BatteryClamp(MACHINE, LEAD, DIODE, BUS, RHO).at(speed);
        double close = 1e-4;
        assertThat(at.directCurrent()).isCloseTo(fine.directCurrent(), within(close));
        assertThat(at.directVoltage()).isCloseTo(fine.directVoltage(), within(close));
        assertThat(at.phaseCurrentRms()).isCloseTo(fine.phaseCurrentRms(), within(close));
        assertThat(at.copperLoss()).isCloseTo(fine.copperLoss(), within(close * fine.airGapPower()));
        assertThat(at.directPower()).isCloseTo(fine.directPower(), within(close * fine.airGapPower()));
        assertThat(at.airGapPower()).isCloseTo(fine.airGapPower(), within(close * fine.airGapPower()));
        assertThat(at.torque()).isCloseTo(fine.torque(), within(close * fine.torque()));
        assertThat(at.leadLoss()).isCloseTo(at.copperLoss() * LEAD / 0.3, within(1e-9));
        assertThat(at.diodeLoss())
                .isCloseTo(1.6 * at.directCurrent() + at.copperLoss() * 0.03 / 0.3, within(1e-9))
                .isCloseTo(
                        fine.airGapPower() - fine.directPower() - fine.copperLoss() * (1 + LEAD / 0.3),
                        within(close * fine.airGapPower()));
    }

    @Test
    void at_rest_and_below_cut_in_nothing_flows_and_nothing_turns() {
        BatteryClamp clamp = new BatteryClamp(MACHINE, LEAD, DIODE, BUS, RHO);
        assertThat(clamp.clampVoltage()).isCloseTo(25.6, within(1e-12));
        for (double speed : new double[] {0, 20}) {
            assertThat(clamp.at(speed).mode()).isEqualTo(ConductionMode.NONE);
            assertThat(clamp.at(speed).torque()).isZero();
            assertThat(clamp.at(speed).directVoltage()).isEqualTo(BUS);
        }
    }

    /** A dump load stated at a gigaohm: what rounding leaves of squares of nanoamperes is no root of something below nil. */
    @Test
    void behind_a_resistance_that_lets_nothing_through_every_speed_has_a_torque() {
        BatteryClamp clamp = new BatteryClamp(MACHINE, LEAD, DIODE, 0, 1e9);
        for (double speed = 0; speed < 500; speed += 0.1) {
            BridgeOperatingPoint point = clamp.at(speed);
            assertThat(point.torque()).as("at %s", speed).isNotNaN().isNotNegative();
            assertThat(point.phaseCurrentRms()).isLessThan(1e-4);
        }
    }
}
