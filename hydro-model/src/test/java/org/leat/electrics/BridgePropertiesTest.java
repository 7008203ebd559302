package org.leat.electrics;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.EnumSet;
import java.util.Locale;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;

class BridgePropertiesTest {

    /** Machine of unit impedance: R = cos ψ, X = sin ψ. */
    private static BridgeCurrents unit(double psi, double clamp, double rho) {
        return ThreeModeBridge.solve(1, Math.sin(psi), Math.cos(psi), clamp, rho);
    }

    @Property(tries = 2000)
    void currents_are_finite_and_energy_is_not_created(
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.570796) double psi,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.8) double clamp,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 20) double rho) {
        BridgeCurrents i = unit(psi, clamp, rho);
        assertThat(i.directCurrent()).isGreaterThanOrEqualTo(0).isLessThan(3 / Math.PI + 1e-6);
        assertThat(i.directCurrentRms()).isGreaterThanOrEqualTo(i.directCurrent() * (1 - 1e-9));
        // three EMFs of peak 1 cannot give more than 3/2 times the peak of the phase currents
        double taken = clamp * i.directCurrent()
                + rho * i.directCurrentRms() * i.directCurrentRms()
                + 3 * Math.cos(psi) * i.phaseCurrentRms() * i.phaseCurrentRms();
        assertThat(taken).isLessThanOrEqualTo(3 / Math.sqrt(2) * i.phaseCurrentRms() + 1e-6);
    }

    @Property(tries = 2000)
    void a_higher_bus_never_takes_more_current(
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1.56) double psi,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.7) double clamp,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double rho) {
        assertThat(unit(psi, clamp + 0.01, rho).directCurrent())
                .isLessThanOrEqualTo(unit(psi, clamp, rho).directCurrent() + 1e-7);
    }

    @Property(tries = 500)
    void units_do_not_matter(
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 1.56) double psi,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.7) double clamp,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 5) double rho,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 100) double volts,
            @ForAll @Scale(6) @DoubleRange(min = 0.01, max = 100) double ohms) {
        BridgeCurrents one = unit(psi, clamp, rho);
        BridgeCurrents other =
                ThreeModeBridge.solve(volts, ohms * Math.sin(psi), ohms * Math.cos(psi), volts * clamp, ohms * rho);
        assertThat(other.directCurrent() * ohms / volts).isCloseTo(one.directCurrent(), within(1e-7));
        assertThat(other.phaseCurrentRms() * ohms / volts).isCloseTo(one.phaseCurrentRms(), within(1e-7));
    }

    @Property(tries = 2000)
    void newtons_steps_and_the_bracketing_search_agree(
            @ForAll @Scale(6) @DoubleRange(min = 0.02, max = 1.56) double psi,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 1.6) double clamp,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 10) double rho) {
        BridgeCurrents quick = unit(psi, clamp, rho);
        if (quick.mode() == ConductionMode.COMMUTATION) {
            BridgeCurrents slow = CommutationSearch.solve(1, Math.sin(psi), Math.cos(psi), clamp, rho);
            assertThat(quick.directCurrent()).isCloseTo(slow.directCurrent(), within(1e-7));
        }
    }

    @Property(tries = 200)
    void torque_rises_to_one_maximum_and_falls(
            @ForAll @Scale(6) @DoubleRange(min = 5e-5, max = 2e-3) double inductance,
            @ForAll @Scale(6) @DoubleRange(min = 0.03, max = 1) double resistance,
            @ForAll @Scale(6) @DoubleRange(min = 0, max = 55) double volts) {
        BatteryClamp bus = new BatteryClamp(
                new AlternatorConstants(20, 0.03, resistance, inductance), 0, new DiodeLine(0.8, 0.005), volts, 0.02);
        TorquePeak peak = TorquePeak.of(bus);
        double below = 0;
        for (double share = 0.02; share < 1; share += 0.02) {
            double torque = bus.at(share * peak.speed()).torque();
            assertThat(torque).isGreaterThanOrEqualTo(below - 1e-9);
            below = torque;
        }
        assertThat(below).isLessThanOrEqualTo(peak.torque() + 1e-9);
        for (double factor = 1.05; factor < 5; factor *= 1.05) {
            double torque = bus.at(factor * peak.speed()).torque();
            assertThat(torque).isLessThanOrEqualTo(below + 1e-9);
            below = torque;
        }
    }

    @Test
    void current_saturates_at_three_psi_over_pi_l() {
        BatteryClamp bus = new BatteryClamp(
                new AlternatorConstants(23, 0.02, 0.12, 3e-4), 0, new DiodeLine(0.8, 0.005), 25.2, 0.02);
        double limit = bus.alternator().saturationCurrent();
        assertThat(bus.at(10_000).directCurrent())
                .isCloseTo(limit, within(0.005 * limit))
                .isLessThan(limit);
    }

    @Test
    void a_winding_without_inductance_or_without_resistance_still_has_an_answer() {
        assertThat(ThreeModeBridge.solve(30, 0, 0.5, 20, 0.02).directCurrent())
                .isCloseTo(ThreeModeBridge.solve(30, 1e-4, 0.5, 20, 0.02).directCurrent(), within(0.02));
        // lossless, all phases conducting: I = 3/(πX) √(E² − (2πV'/9)²)
        double lossless = 3 / Math.PI * Math.sqrt(30.0 * 30 - Math.pow(2 * Math.PI * 20 / 9, 2));
        assertThat(ThreeModeBridge.solve(30, 1, 0, 20, 0).directCurrent()).isCloseTo(lossless, within(2e-3 * lossless));
    }

    @Test
    void the_averaged_model_agrees_with_time_stepping_in_every_mode() {
        Random random = new Random(20);
        EnumSet<ConductionMode> seen = EnumSet.noneOf(ConductionMode.class);
        double worst = 0;
        for (int n = 0; n < 400; n++) {
            double psi = Math.toRadians(3 + 85 * random.nextDouble());
            double rho = random.nextInt(3) == 0 ? 3 * random.nextDouble() : 0.1 * random.nextDouble();
            double clamp = Math.sqrt(3) * (n % 4 == 0 ? 0.9 + 0.08 * random.nextDouble() : 0.98 * random.nextDouble());
            // one pole pair at 1 rad/s: X = L
            AlternatorConstants machine = new AlternatorConstants(1, 1, Math.cos(psi), Math.sin(psi));
            BridgeTimeStepper stepper = new BridgeTimeStepper(
                    machine, 0, new DiodeLine(0, 0), 1, new DcLoad.Battery(clamp, rho), BridgeFault.NONE, 2880);
            stepper.run(3 + Math.ceil(1.2 * Math.tan(psi)));
            BridgeWaveform w = stepper.measure(1);
            BridgeCurrents i = unit(psi, clamp, rho);
            seen.add(i.mode());
            String what = String.format(Locale.ROOT, "psi %.4f clamp %.4f rho %.4f %s", psi, clamp, rho, i);
            assertThat(i.directCurrent())
                    .as(what)
                    .isCloseTo(w.directCurrent(), within(0.005 * w.directCurrent() + 2e-5));
            assertThat(i.phaseCurrentRms())
                    .as(what)
                    .isCloseTo(w.phaseCurrentRms(), within(0.005 * w.phaseCurrentRms() + 2e-5));
            worst = Math.max(worst, Math.abs(i.directCurrent() - w.directCurrent()) / (w.directCurrent() + 4e-3));
        }
        System.out.printf(
                Locale.ROOT, "averaged model against time stepping, modes %s: worst %.3f %%%n", seen, 100 * worst);
        assertThat(seen)
                .contains(
                        ConductionMode.FULL,
                        ConductionMode.COMMUTATION,
                        ConductionMode.OVERLAPPING_PULSES,
                        ConductionMode.ISOLATED_PULSES);
    }
}
