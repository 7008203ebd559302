package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.function.UnaryOperator;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.leat.file.DesignReader;
import org.leat.plant.cases.BrokenBridge;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;

/** What a changed plant takes over from the one it was made of is what it would find by itself. */
class SharedSolutionsTest {

    /** One change for each thing that sharing asks about. */
    private static final Map<String, UnaryOperator<PlantNumbers>> CHANGES = new TreeMap<>(Map.of(
            "a smaller wheel",
                    n -> n.withRunner(
                            n.runner().withPitchDiameter(0.8 * n.runner().pitchDiameter())),
            "weaker magnets",
                    n -> n.withAlternator(n.alternator()
                            .withMagnets(n.alternator()
                                    .magnets()
                                    .withFluxLinkage(0.8 * n.alternator().fluxLinkage()))),
            "worse diodes",
                    n -> n.withRectifier(
                            n.rectifier().withThreshold(n.rectifier().threshold() + 0.5)),
            "a longer cable before the bridge",
                    n -> n.withBusResistance(new PlantNumbers.BusResistance(
                            n.busResistance().phase() + 0.2,
                            n.busResistance().bridgeToRegulator(),
                            n.busResistance().regulatorToBattery())),
            "a fuller battery",
                    n -> n.withBattery(
                            n.battery().withRestingVoltage(1.1 * n.battery().restingVoltage())),
            "a higher fall",
                    n -> n.withSite(n.site().withGrossHead(1.3 * n.site().grossHead())),
            "another set point",
                    n -> n.withBattery(
                            n.battery().withAbsorptionVoltage(1.05 * n.battery().absorptionVoltage()))));

    private static List<Double> told(Cases cases) {
        List<Double> told = new ArrayList<>();
        for (Running running : cases.running()) {
            told.add(running.water().flow());
            told.add(running.operatingPoint().speed());
            told.add(running.operatingPoint().batteryPower());
        }
        for (Closing closing : cases.closing()) {
            closing.sections().forEach(pressure -> told.add(pressure.or(-1)));
        }
        for (BrokenBridge broken : cases.broken()) {
            told.add(broken.runnerSpeed());
            told.add(broken.phaseCurrent());
        }
        for (BusSituation situation : cases.onTheBus()) {
            told.add(situation.lastingVoltage());
            told.add(situation.batteryVoltage());
            told.add(situation.runnerSpeed());
        }
        return told;
    }

    @ParameterizedTest
    @ValueSource(strings = {"rowan-ghyll", "tannery-yard", "orchard-sluice"})
    void a_changed_plant_is_solved_as_if_it_stood_alone(String demo) {
        Path file = Path.of("..", "hydro-examples", "designs", demo + ".yaml");
        Plant plant = Plant.of(Objects.requireNonNull(DesignReader.read(file).design()));
        List<Double> before = told(plant.solve());
        CHANGES.forEach((name, change) -> {
            PlantNumbers changed = change.apply(plant.numbers());
            List<Double> shared = told(plant.withNumbers(changed).solve());
            assertThat(shared).as(name).isEqualTo(told(Cases.of(plant.design(), changed, List.of())));
            if (!name.equals("another set point")) {
                assertThat(shared).as(name).isNotEqualTo(before);
            }
        });
    }
}
