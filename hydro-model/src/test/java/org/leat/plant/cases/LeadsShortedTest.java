package org.leat.plant.cases;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.plant.Plant;
import org.leat.plant.Plants;
import org.leat.plant.numbers.RunnerNumbers;

/**
 * Shorted leads against the circuit equations of the sine machine and the momentum of the jet, worked apart: {@code T = 1.5
 * p ψ² ω_e R/(R² + ω_e² L²)} and {@code T = e (1 + κ) ρ Q R V (1 − x − m x⁴)}.
 */
class LeadsShortedTest {

    private static final int POLE_PAIRS = 7;
    private static final double INDUCTANCE = 0.2e-3;
    private static final double FLUX = 22 * Math.sqrt(2) / (Math.sqrt(3) * POLE_PAIRS * 1000 * Math.PI / 30);

    /** A plant with the equations of its brake. */
    private static final class Braked {
        private final Cases cases;
        private final Running running;
        private final LeadsShorted shorted;
        private final double gear;
        private final double resistance;

        Braked(String head, String bore, String pitch, double gear, double betweenLeads) {
            String text = Plants.statedText(head, bore, pitch, "")
                    .replace("pole-pairs: 7", "pole-pairs: 7\n  gear-ratio: " + gear)
                    .replace("resistance-between-leads: 0.2 ohm", "resistance-between-leads: " + betweenLeads + " ohm");
            cases = Plant.of(Plants.read(text)).solve();
            running = cases.running().get(0);
            shorted = cases.leadsShorted().get(0);
            resistance = betweenLeads / 2;
            this.gear = gear;
        }

        private double braking(double runnerSpeed) {
            double electrical = POLE_PAIRS * gear * runnerSpeed;
            double reactance = electrical * INDUCTANCE;
            return gear
                    * 1.5
                    * POLE_PAIRS
                    * FLUX
                    * FLUX
                    * electrical
                    * resistance
                    / (resistance * resistance + reactance * reactance);
        }

        private double driving(double speed) {
            RunnerNumbers wheel = cases.numbers().runner();
            assertThat(wheel.jetAngle()).isZero();
            double radius = wheel.pitchDiameter() / 2;
            double velocity = running.water().jetVelocity()
                    * running.water().fullPipeFlow()
                    / running.water().flow();
            double x = speed * radius / velocity;
            double late = x < 1 ? x * x * x * x : 4 * x - 3;
            return wheel.bucketEfficiency()
                    * (1 + wheel.returnFactor())
                    * cases.numbers().water().density()
                    * running.water().fullPipeFlow()
                    * radius
                    * velocity
                    * (1 - x - wheel.lateEntry() * late);
        }

        private double gripsBest() {
            return resistance / (INDUCTANCE * POLE_PAIRS) / gear;
        }

        private double leastShare() {
            double slowest = Math.min(gripsBest(), running.operatingPoint().speed());
            double runaway = cases.loadLost().get(0).speed();
            double least = braking(slowest) / driving(0);
            for (int i = 0; i <= 40; i++) {
                double speed = slowest + (runaway - slowest) * i / 40;
                if (driving(speed) > 0.01 * braking(speed)) {
                    least = Math.min(least, braking(speed) / driving(speed));
                }
            }
            return least;
        }

        /** Where the torques are equal below the speed of best grip, found in small steps. */
        private double creepingHeat() {
            double best = gripsBest();
            if (braking(best) < driving(best)) {
                return 0;
            }
            double speed = 0;
            double step = best / 1e6;
            while (braking(speed) < driving(speed)) {
                speed += step;
            }
            return speed * driving(speed);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "24 m, 9 mm, 160 mm, 1, 0.2",
        "24 m, 9 mm, 320 mm, 2, 0.2",
        "24 m, 9 mm, 160 mm, 1, 0.02",
        "24 m, 9 mm, 160 mm, 1, 0.6",
        "50 m, 20 mm, 160 mm, 1, 0.2",
    })
    void the_brake_s_current_grip_and_creep_are_those_of_the_equations(
            String head, String bore, String pitch, double gear, double betweenLeads) {
        Braked plant = new Braked(head, bore, pitch, gear, betweenLeads);
        LeadsShorted shorted = plant.shorted;
        double electrical = POLE_PAIRS * plant.running.operatingPoint().alternatorSpeed();
        double lead = FLUX * electrical / Math.sqrt(2) / Math.hypot(plant.resistance, electrical * INDUCTANCE);
        assertThat(plant.running.operatingPoint().alternatorSpeed())
                .isCloseTo(gear * plant.running.operatingPoint().speed(), within(1e-9));
        assertThat(shorted.leadCurrent()).isCloseTo(lead, within(1e-6 * lead));
        assertThat(shorted.directCurrent()).isCloseTo(lead * 3 * Math.sqrt(2) / Math.PI, within(1e-6 * lead));
        double share = plant.leastShare();
        assertThat(shorted.leastBrakingShare()).isCloseTo(share, within(1e-6 * share));
        assertThat(shorted.creepingHeat()).isCloseTo(plant.creepingHeat(), within(0.01));
    }

    @Test
    void a_strong_machine_holds_its_runner_and_a_weak_one_under_a_large_jet_does_not() {
        LeadsShorted shorted = new Braked("24 m", "9 mm", "160 mm", 1, 0.2).shorted;
        assertThat(shorted.id()).isEqualTo("leads-shorted/9 mm");
        assertThat(shorted.leastBrakingShare()).isGreaterThan(1);
        assertThat(shorted.creepingHeat()).isPositive();
        LeadsShorted weak = new Braked("50 m", "20 mm", "160 mm", 1, 0.2).shorted;
        assertThat(weak.leastBrakingShare()).isBetween(0.0, 1.0);
        assertThat(weak.creepingHeat()).isZero();
    }

    /** Copper: {@code T = (Ta + g 234.5)/(1 − g)}, {@code g = θ P/(234.5 + Tr)}. */
    @Test
    void a_creeping_runner_s_heat_warms_the_winding_or_burns_it() {
        LeadsShorted creeping = new LeadsShorted(
                new Braked("24 m", "9 mm", "160 mm", 1, 0.2).running.nozzles(), 50, 2, 100, 273.15 + 20, 273.15 + 30);
        double g = 100 / 254.5;
        assertThat(creeping.windingTemperature(1).orElseThrow())
                .isCloseTo(273.15 + (30 + g * 234.5) / (1 - g), within(1e-9));
        assertThat(creeping.windingTemperature(2.544)).isPresent();
        assertThat(creeping.windingTemperature(2.546)).isEmpty();
    }
}
