package org.leat.plant.duties;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.ShortCircuitTorque;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.PlantNumbers;

/** Which of a jammed wheel and shorted leads wrings the joint of wheel and shaft, and on which nozzles. */
class HubTorqueTest {

    private static final Path DEMO = Path.of("..", "hydro-examples", "designs", "rowan-ghyll.yaml");

    private final Plant plant =
            Plant.of(Objects.requireNonNull(DesignReader.read(DEMO).design()));

    private static Plant ofInductance(Plant plant, double times) {
        AlternatorNumbers a = plant.numbers().alternator();
        return plant.withAlternator(
                a.withWinding(a.winding().withInductance(times * a.winding().inductance())));
    }

    @Test
    void a_wheel_held_fast_takes_all_momentum_of_the_water_and_what_it_throws_back() {
        PlantNumbers numbers = plant.numbers();
        for (Running running : plant.solve().running()) {
            double momentum = numbers.water().density()
                    * running.water().flow()
                    * running.water().jetVelocity();
            double force = momentum * (1 + numbers.runner().returnFactor());
            assertThat(HubTorque.jammed(numbers, running))
                    .isCloseTo(force * numbers.runner().pitchDiameter() / 2, within(1e-6));
        }
    }

    @Test
    void leads_shorted_all_at_once_pull_twice_the_greatest_that_lasts() {
        AlternatorNumbers a = plant.numbers().alternator();
        AlternatorConstants machine =
                new AlternatorConstants(a.polePairs(), a.fluxLinkage(), a.phaseResistance(), a.phaseInductance());
        double greatest = 0;
        for (double speed = 1; speed < 3000; speed += 0.5) {
            greatest = Math.max(greatest, ShortCircuitTorque.torque(machine, speed));
        }
        assertThat(HubTorque.shorted(plant.numbers())).isCloseTo(2 * greatest, within(1e-3 * greatest));
    }

    @Test
    void the_leads_wring_it_most_where_the_winding_lets_much_through() {
        HubTorque.Greatest greatest = HubTorque.greatest(plant.solve());
        assertThat(greatest.shorted()).isGreaterThan(2 * greatest.held());
        assertThat(greatest.torque()).isEqualTo(greatest.shorted());
        assertThat(greatest.during()).isEqualTo("leads-shorted-at-once");
    }

    @Test
    void the_jets_of_the_widest_nozzle_in_the_drawer_wring_it_most_where_it_does_not() {
        HubTorque.Greatest greatest = HubTorque.greatest(ofInductance(plant, 10).solve());
        assertThat(greatest.strongest().nozzles().name()).isEqualTo("11.5 mm");
        assertThat(greatest.shorted()).isPositive().isLessThan(greatest.held());
        assertThat(greatest.torque()).isEqualTo(greatest.held());
        assertThat(greatest.during()).isEqualTo("jammed/11.5 mm");
    }
}
