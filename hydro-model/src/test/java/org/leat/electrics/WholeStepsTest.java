package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Runs on a battery without measuring take whole steps together; measured, each is written out. Both must come to the same. */
class WholeStepsTest {

    private static final double SAME = 1e-9;

    private static BridgeTimeStepper begun(BridgeFault fault, double degrees, double clamp, double rho) {
        double psi = Math.toRadians(degrees);
        return new BridgeTimeStepper(
                new AlternatorConstants(1, 1, Math.cos(psi), Math.sin(psi)),
                0.01,
                new DiodeLine(0.03, 0.004),
                1,
                new DcLoad.Battery(clamp, rho),
                fault,
                360);
    }

    @ParameterizedTest
    @EnumSource(BridgeFault.class)
    void whole_steps_taken_together_come_to_the_same_as_each_written_out(BridgeFault fault) {
        for (double degrees : new double[] {5, 40, 80}) {
            for (double clamp : new double[] {0, 0.4, 1.2, 1.6, 2}) {
                for (double rho : new double[] {0, 0.3}) {
                    BridgeTimeStepper together = begun(fault, degrees, clamp, rho);
                    BridgeTimeStepper each = begun(fault, degrees, clamp, rho);
                    together.run(7.3);
                    each.measure(7.3);
                    assertThat(together.time()).isCloseTo(each.time(), within(SAME));
                    BridgeTimeStepper copy = together.copy();
                    double torque = together.torque(2);
                    BridgeWaveform expected = each.measure(2);
                    BridgeWaveform found = copy.measure(2);
                    assertThat(torque).isCloseTo(expected.torque(), within(SAME));
                    assertThat(found.torque()).isCloseTo(expected.torque(), within(SAME));
                    assertThat(found.directCurrent()).isCloseTo(expected.directCurrent(), within(SAME));
                    assertThat(found.phaseCurrentRms()).isCloseTo(expected.phaseCurrentRms(), within(SAME));
                    assertThat(found.rippleAtFrequency()).isCloseTo(expected.rippleAtFrequency(), within(SAME));
                }
            }
        }
    }

    @ParameterizedTest
    @EnumSource(BridgeFault.class)
    void a_run_begun_at_another_speed_is_that_of_a_new_one(BridgeFault fault) {
        BridgeTimeStepper other = begun(fault, 30, 0.5, 0.1).at(1.5);
        BridgeTimeStepper fresh = new BridgeTimeStepper(
                new AlternatorConstants(1, 1, Math.cos(Math.toRadians(30)), Math.sin(Math.toRadians(30))),
                0.01,
                new DiodeLine(0.03, 0.004),
                1.5,
                new DcLoad.Battery(0.5, 0.1),
                fault,
                360);
        other.run(5);
        fresh.run(5);
        assertThat(other.measure(1)).isEqualTo(fresh.measure(1));
    }

    private static final int PERIOD = 36;
    private static final double STEP = 2 * Math.PI / PERIOD;

    private static double emf(double step, int phase) {
        return 1.3 * Math.sin(STEP * step - 2 * Math.PI / 3 * phase);
    }

    /** Whole steps as the circuit itself takes them, one by one, until a diode would switch. */
    private static int oneByOne(
            PhaseSet phases, BridgeFault fault, DcLoad.Battery battery, long begun, int most, AirGapEnergy airGap) {
        for (int taken = 0; ; taken++) {
            long at = begun + taken;
            double rail = battery.voltage() + battery.resistance() * phases.directCurrent();
            PhaseSet tried = PhaseSetTest.phases(fault, false);
            tried.set(phases);
            tried.switchOn(emf(at, 0), emf(at, 1), emf(at, 2), rail);
            boolean switches = tried.conducting() > phases.conducting();
            tried.step(
                    STEP,
                    emf(at, 0),
                    emf(at, 1),
                    emf(at, 2),
                    rail,
                    emf(at + 1, 0),
                    emf(at + 1, 1),
                    emf(at + 1, 2),
                    battery.voltage(),
                    battery.resistance());
            if (taken == most || switches || tried.partUntilZero() < 1) {
                return taken;
            }
            tried.accept();
            airGap.time += STEP;
            for (int k = 0; k < 3; k++) {
                airGap.energy += STEP * emf(at + 0.5, k) * 0.5 * (phases.current(k) + tried.current(k));
            }
            phases.set(tried);
        }
    }

    /** Phases as they may stand after some steps, with a current of our own choice. */
    private static PhaseSet begun(BridgeFault fault, long begun, double flowing) {
        PhaseSet phases = PhaseSetTest.phases(fault, false);
        if (flowing > 0) {
            phases.switchOn(emf(begun, 0), emf(begun, 1), emf(begun, 2), 0.4);
        }
        double[] i = new double[3];
        for (int k = 0; k < 3 && phases.conducting() > 1; k++) {
            double share = phases.conducting() == 2 ? 1 : k == 0 ? 0.3 : 0.7;
            i[k] = phases.rail(k) * flowing * share;
        }
        for (int k = 0; k < 3 && phases.conducting() == 3; k++) {
            int j = (k + 1) % 3;
            int l = (k + 2) % 3;
            if (phases.rail(j) == phases.rail(l)) {
                i[k] = -i[j] - i[l];
            }
        }
        // a phase that is tied takes what the others leave
        phases.flow(fault == BridgeFault.DIODE_SHORT ? -i[1] - i[2] : i[0], i[1], i[2]);
        return phases;
    }

    @ParameterizedTest
    @EnumSource(BridgeFault.class)
    void steps_taken_together_end_where_the_circuit_switches_with_the_same_currents_and_energy(BridgeFault fault) {
        int[] counts = new int[4];
        int several = 0;
        int ended = 0;
        for (double voltage : new double[] {0.9, 1.6, 2.6}) {
            DcLoad.Battery battery = new DcLoad.Battery(voltage, 0.3);
            for (long begun = 0; begun < 2 * PERIOD; begun++) {
                for (int most : new int[] {1, 3, 100}) {
                    for (double flowing : new double[] {0, 0.02, 2}) {
                        PhaseSet together = begun(fault, begun, flowing);
                        PhaseSet each = begun(fault, begun, flowing);
                        boolean measured = begun % 2 == 0;
                        AirGapEnergy found = new AirGapEnergy();
                        AirGapEnergy expected = new AirGapEnergy();
                        counts[together.conducting()]++;
                        int taken = new WholeSteps(new Sines(PERIOD), 1.3, STEP, battery)
                                .run(together, together.directCurrent(), begun, most, measured ? found : null);
                        assertThat(taken).isEqualTo(oneByOne(each, fault, battery, begun, most, expected));
                        several += taken > 1 ? 1 : 0;
                        ended += taken < most ? 1 : 0;
                        for (int k = 0; k < 3; k++) {
                            assertThat(together.current(k)).isCloseTo(each.current(k), within(1e-12));
                        }
                        if (measured) {
                            assertThat(found.time).isCloseTo(expected.time, within(1e-12));
                            assertThat(found.energy).isCloseTo(expected.energy, within(1e-12));
                        }
                    }
                }
            }
        }
        assertThat(counts[0] + counts[1]).as("without current").isGreaterThan(100);
        assertThat(counts[2]).isGreaterThan(100);
        assertThat(several).as("several steps at once").isGreaterThan(100);
        assertThat(ended).as("ended by a diode").isGreaterThan(300);
    }

    /** One set of whole steps meets one state of the rails after another. */
    @Test
    void what_was_worked_out_for_other_rails_is_not_used() {
        DcLoad.Battery battery = new DcLoad.Battery(0.2, 0.1);
        WholeSteps steps = new WholeSteps(new Sines(PERIOD), 1.3, STEP, battery);
        for (long begun = 0; begun < 2 * PERIOD; begun++) {
            PhaseSet together = PhaseSetTest.phases(BridgeFault.NONE, false);
            together.switchOn(emf(begun, 0), emf(begun, 1), emf(begun, 2), 0.2);
            double most = 0;
            for (int k = 0; k < 3; k++) {
                most = Math.max(most, together.conducting() == 3 ? 0 : together.rail(k));
            }
            together.flow(most * together.rail(0), most * together.rail(1), most * together.rail(2));
            PhaseSet each = PhaseSetTest.phases(BridgeFault.NONE, false);
            each.set(together);
            int taken = steps.run(together, together.directCurrent(), begun, 4, null);
            assertThat(taken).isEqualTo(oneByOne(each, BridgeFault.NONE, battery, begun, 4, new AirGapEnergy()));
            for (int k = 0; k < 3; k++) {
                assertThat(together.current(k)).isCloseTo(each.current(k), within(1e-12));
            }
        }
    }
}
