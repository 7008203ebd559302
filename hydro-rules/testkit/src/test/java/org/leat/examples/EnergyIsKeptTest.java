package org.leat.examples;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.leat.check.testing.Example;
import org.leat.check.testing.RuleTestKit;
import org.leat.design.Design;
import org.leat.file.DesignReader;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.plant.solved.OperatingPoint;

/** Energy is kept on every nozzle set of every demo and every example. */
class EnergyIsKeptTest {

    private static final Path DEMOS = Path.of("../../hydro-examples/designs");

    private static Stream<Design> designs() throws IOException {
        RuleTestKit kit = new RuleTestKit(PackExamples.CHECKER);
        Set<Design> designs = new LinkedHashSet<>();
        for (Example example : PackExamples.all()) {
            designs.add(Objects.requireNonNull(kit.read(example).design()));
        }
        try (Stream<Path> demos = Files.list(DEMOS)) {
            demos.filter(f -> f.toString().endsWith(".yaml"))
                    .sorted()
                    .map(f -> Objects.requireNonNull(DesignReader.read(f).design()))
                    .forEach(designs::add);
        }
        return designs.stream();
    }

    @Test
    void some_examples_run_on_several_nozzle_sets() throws IOException {
        assertThat(designs().filter(d -> Plant.of(d).solve().running().size() > 1))
                .hasSizeGreaterThan(50);
    }

    @ParameterizedTest
    @MethodSource("designs")
    void power_never_rises_on_its_way_and_losses_and_what_is_stored_are_the_water_s(Design design) {
        for (Running running : Plant.of(design).solve().running()) {
            EnergyAccount energy = running.operatingPoint().energy();
            assertThat(energy.entries()).extracting(EnergyAccount.Entry::stage).containsExactly(Stage.values());
            double before = Double.POSITIVE_INFINITY;
            double lost = 0;
            for (EnergyAccount.Entry entry : energy.entries()) {
                assertThat(entry.power()).as(entry.stage().name()).isBetween(0.0, before);
                before = entry.power();
                lost += entry.lost();
            }
            double water = energy.at(Stage.WATER);
            assertThat(lost + energy.at(Stage.STORED)).isCloseTo(water, within(1e-6 * water));
        }
    }

    /** The account takes each loss as the difference of two stages; here the losses are reckoned by their own laws. */
    @ParameterizedTest
    @MethodSource("designs")
    void losses_by_their_own_laws_make_up_the_difference(Design design) {
        Plant plant = Plant.of(design);
        PlantNumbers numbers = plant.numbers();
        for (Running running : plant.solve().running()) {
            OperatingPoint o = running.operatingPoint();
            EnergyAccount energy = o.energy();
            double close = 1e-6 * energy.at(Stage.WATER);
            double idle = numbers.alternator().noLoadTorque()
                    + numbers.alternator().noLoadTorquePerSpeed() * o.alternatorSpeed();
            assertThat(energy.at(Stage.SHAFT)).isCloseTo(o.torque() * o.speed(), within(close));
            assertThat(energy.lostBefore(Stage.AIR_GAP)).isCloseTo(idle * o.alternatorSpeed(), within(close));
            double winding =
                    numbers.alternator().warmedTo(o.windingTemperature()).phaseResistance();
            assertThat(energy.lostBefore(Stage.TERMINALS))
                    .isCloseTo(3 * winding * o.phaseCurrent() * o.phaseCurrent(), within(close));
            double current = o.tracking() == null ? o.directCurrent() : o.batteryCurrent();
            assertThat(energy.at(Stage.STORED)).isCloseTo(numbers.battery().restingVoltage() * current, within(close));
        }
    }
}
