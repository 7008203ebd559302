package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.electrics.CircuitSimulator;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

/**
 * Faults that are not made by the model that is fitted: those of the pipe by a second computation of the flow (friction after Haaland,
 * a leak as a hole half-way, bisection), those of bridge and winding by the circuit simulator ngspice.
 */
class SecondComputationTest {

    private static final List<ReadingKind> ON_BUS = List.of(
            ReadingKind.FLOW,
            ReadingKind.INTAKE_FLOW,
            ReadingKind.RUNNING_PRESSURE,
            ReadingKind.SPEED,
            ReadingKind.BRIDGE_VOLTS,
            ReadingKind.BATTERY_VOLTS,
            ReadingKind.BATTERY_AMPS);

    @TempDir
    Path folder;

    private static List<Observation> observed(Expectations expected, Map<Channel, Double> values) {
        List<Observation> readings = new ArrayList<>();
        values.forEach((channel, value) -> {
            if (expected.known(channel)) {
                readings.add(new Observation(
                        channel, channel.toString(), value, channel.what().usualUncertainty(value)));
            }
        });
        return readings;
    }

    @ParameterizedTest
    @CsvSource({
        "rowan-ghyll, SCREEN_BLOCKED, 0.1",
        "rowan-ghyll, SCREEN_BLOCKED, 0.3",
        "rowan-ghyll, SCREEN_BLOCKED, 0.8",
        "rowan-ghyll, PIPE_PINCHED, 0.1",
        "rowan-ghyll, PIPE_PINCHED, 0.3",
        "rowan-ghyll, PIPE_PINCHED, 0.8",
        "rowan-ghyll, AIR_IN_PIPE, 0.1",
        "rowan-ghyll, AIR_IN_PIPE, 0.2",
        "rowan-ghyll, AIR_IN_PIPE, 0.35",
        "rowan-ghyll, LEAK, 0.3",
        "rowan-ghyll, LEAK, 0.6",
        "rowan-ghyll, LEAK, 1",
        "rowan-ghyll, NOTHING, 0"
    })
    void faults_of_the_pipe_are_found_that_a_second_computation_made(String demo, FaultKind kind, double size) {
        Plant plant = DemoPlants.of(demo);
        Expectations expected = Expectations.of(plant);
        PlantedFault planted = new PlantedFault(plant, kind, size, new SimulatedMachine(folder));
        Map<Channel, Double> read = new LinkedHashMap<>();
        for (NozzleGroup set : expected.sets().subList(0, 2)) {
            double[] v = planted.read(set);
            read.put(Channel.standing(), v[Channel.standing().slot()]);
            for (ReadingKind what : ON_BUS) {
                read.put(new Channel(set.name(), LoadState.BUS, what), v[Channel.slot(LoadState.BUS, what)]);
            }
        }
        Diagnosis said = Diagnosis.of(FaultTable.of(expected), observed(expected, read));
        assertThat(said.unexplained()).isFalse();
        boolean group = said.twins().stream().anyMatch(twin -> twin.kind() == kind);
        assertThat(said.ranked().get(0).kind() == kind || group)
                .as(said.ranked() + " " + said.twins())
                .isTrue();
    }

    @Test
    void faults_of_bridge_and_winding_are_found_that_the_circuit_simulator_made() {
        assumeTrue(CircuitSimulator.installed(), "ngspice is not on the path: faults of the bridge were NOT simulated");
        Plant plant = DemoPlants.of("rowan-ghyll");
        Expectations expected = Expectations.of(plant);
        FaultTable table = FaultTable.of(expected);
        NozzleGroup set = expected.sets().get(0);
        for (FaultKind kind :
                List.of(FaultKind.NOTHING, FaultKind.PHASE_OPEN, FaultKind.DIODE_OPEN, FaultKind.DIODE_SHORTED)) {
            double[] v = new PlantedFault(plant, kind, 1, new SimulatedMachine(folder)).read(set);
            Map<Channel, Double> read = new LinkedHashMap<>();
            for (ReadingKind what : List.of(
                    ReadingKind.RUNNING_PRESSURE,
                    ReadingKind.SPEED,
                    ReadingKind.BATTERY_AMPS,
                    ReadingKind.BRIDGE_VOLTS,
                    ReadingKind.BATTERY_VOLTS,
                    ReadingKind.LEAD_AMPS)) {
                read.put(new Channel(set.name(), LoadState.BUS, what), v[Channel.slot(LoadState.BUS, what)]);
            }
            Diagnosis said = Diagnosis.of(table, observed(expected, read));
            assertThat(said.ranked().get(0).kind())
                    .as(kind + " " + said.ranked())
                    .isEqualTo(kind);
        }
    }
}
