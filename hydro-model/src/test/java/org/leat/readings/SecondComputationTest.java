package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.BridgeFault;
import org.leat.electrics.CircuitSimulator;
import org.leat.electrics.DcLoad;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solve.RunnerCharacteristic;
import org.leat.plant.solve.WarmAlternator;

/**
 * Faults that are not made by the model that is fitted: those of the pipe by a second computation of the flow (friction after Haaland,
 * a leak as a hole half-way, bisection), those of bridge and winding by the circuit simulator ngspice.
 */
class SecondComputationTest {

    private static final double G = 9.80665;

    @TempDir
    Path folder;

    /** The pipe of a plant, by itself. */
    private record SecondPipe(PlantNumbers n, double screen, double pinch, double hole, double air) {

        /** Head left at the nozzles when so much goes through them, m; the leak counted above the middle. */
        double left(double flow) {
            double head = n.site().grossHead() - air;
            double above = flow + leak(flow);
            head -= (n.penstock().screenLoss() + screen) * above * above;
            for (SectionNumbers s : n.penstock().sections()) {
                double upper =
                        n.penstock().sections().size() == 1 || s != n.penstock().last() ? 1 : 0.5;
                double share = n.penstock().sections().size() == 1 ? 0.5 : upper;
                head -= share * loss(s, above) + (1 - share) * loss(s, flow);
            }
            double velocity = flow / n.penstock().last().area();
            return head - pinch * velocity * velocity / (2 * G);
        }

        private double loss(SectionNumbers s, double flow) {
            double velocity = flow / s.area();
            double reynolds = velocity * s.bore() / n.water().kinematicViscosity();
            double haaland = -1.8 * Math.log10(Math.pow(s.roughness() / s.bore() / 3.7, 1.11) + 6.9 / reynolds);
            return (s.length() / s.bore() / (haaland * haaland) + s.lossCoefficient()) * velocity * velocity / (2 * G);
        }

        /** Through a hole half-way down, by the pressure that a pipe without loss has there. */
        private double leak(double flow) {
            double pressure = n.site().grossHead() / 2 - 0.02 * flow / 0.002;
            return hole * Math.sqrt(2 * G * Math.max(0, pressure));
        }

        double flow(NozzleGroup set) {
            double area = set.area();
            double perRoot = n.nozzles().velocityCoefficient() * n.nozzles().contractionCoefficient() * area;
            double branch = n.nozzles().branchBore().isPresent()
                    ? Math.PI
                            / 4
                            * Math.pow(n.nozzles().branchBore().getAsDouble(), 2)
                            * set.bores().size()
                    : Double.POSITIVE_INFINITY;
            double low = 0;
            double high = 2 * perRoot * Math.sqrt(2 * G * n.site().grossHead());
            for (int i = 0; i < 80; i++) {
                double flow = 0.5 * (low + high);
                double head = left(flow) - n.nozzles().branchLoss() * Math.pow(flow / branch, 2) / (2 * G);
                if (head > 0 && perRoot * Math.sqrt(2 * G * head) > flow) {
                    low = flow;
                } else {
                    high = flow;
                }
            }
            return low;
        }

        double pressure(double flow) {
            double velocity = flow / n.penstock().last().area();
            return n.water().density() * (G * left(flow) - velocity * velocity / 2);
        }
    }

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

    /** What the machine gives with so much water: that of a plant with as much less head. */
    private static double[] machine(Plant plant, NozzleGroup set, double flow) {
        double low = 0.02;
        double high = 1.2;
        for (int i = 0; i < 40; i++) {
            double share = 0.5 * (low + high);
            if (values(plant, set, share)[Channel.slot(LoadState.BUS, ReadingKind.FLOW)] < flow) {
                low = share;
            } else {
                high = share;
            }
        }
        return values(plant, set, low);
    }

    private static double[] values(Plant plant, NozzleGroup set, double share) {
        PlantNumbers n = plant.numbers();
        return ReadingModel.of(
                Condition.of(plant.withNumbers(
                        n.withSite(n.site().withGrossHead(n.site().grossHead() * share)))),
                set);
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
        PlantNumbers n = plant.numbers();
        Expectations expected = Expectations.of(plant);
        double head = n.site().grossHead();
        double built = plant.solve().running().get(0).water().flow();
        double velocity = built / n.penstock().last().area();
        SecondPipe pipe = new SecondPipe(
                n,
                kind == FaultKind.SCREEN_BLOCKED ? size * head / (built * built) : 0,
                kind == FaultKind.PIPE_PINCHED ? size * head * 2 * G / (velocity * velocity) : 0,
                kind == FaultKind.LEAK ? size * built / Math.sqrt(G * head) : 0,
                kind == FaultKind.AIR_IN_PIPE ? size * head : 0);
        Map<Channel, Double> read = new java.util.LinkedHashMap<>();
        read.put(Channel.standing(), n.water().specificWeight() * head);
        for (NozzleGroup set : expected.sets().subList(0, 2)) {
            double flow = pipe.flow(set);
            double[] v = machine(plant, set, flow);
            String name = set.name();
            read.put(new Channel(name, LoadState.BUS, ReadingKind.FLOW), flow);
            read.put(new Channel(name, LoadState.BUS, ReadingKind.INTAKE_FLOW), flow + pipe.leak(flow));
            read.put(new Channel(name, LoadState.BUS, ReadingKind.RUNNING_PRESSURE), pipe.pressure(flow));
            for (ReadingKind what : List.of(
                    ReadingKind.SPEED, ReadingKind.BRIDGE_VOLTS, ReadingKind.BATTERY_VOLTS, ReadingKind.BATTERY_AMPS)) {
                read.put(new Channel(name, LoadState.BUS, what), v[Channel.slot(LoadState.BUS, what)]);
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
        Map<BridgeFault, FaultKind> kinds = Map.of(
                BridgeFault.NONE, FaultKind.NOTHING,
                BridgeFault.PHASE_OPEN, FaultKind.PHASE_OPEN,
                BridgeFault.DIODE_OPEN, FaultKind.DIODE_OPEN,
                BridgeFault.DIODE_SHORT, FaultKind.DIODE_SHORTED);
        for (BridgeFault fault : BridgeFault.values()) {
            Diagnosis said = Diagnosis.of(table, observed(expected, simulated(plant, fault)));
            assertThat(said.ranked().get(0).kind())
                    .as(fault + " " + said.ranked())
                    .isEqualTo(kinds.get(fault));
        }
    }

    /** Speed at which the wheel's torque meets that of the simulated machine, and what is read there. */
    private Map<Channel, Double> simulated(Plant plant, BridgeFault fault) {
        PlantNumbers n = plant.numbers();
        Running running = plant.solve().running().get(0);
        RunnerCharacteristic runner =
                new RunnerCharacteristic(n.runner(), n.water().density(), running.water());
        AlternatorConstants machine = WarmAlternator.of(
                n.alternator().warmedTo(running.operatingPoint().windingTemperature()));
        // the lead's resistance lies in series with the winding
        AlternatorConstants withLead = new AlternatorConstants(
                machine.polePairs(),
                machine.fluxLinkage(),
                machine.phaseResistance() + n.busResistance().phase(),
                machine.phaseInductance());
        double loop = n.battery().internalResistance()
                + n.busResistance().bridgeToRegulator()
                + n.busResistance().regulatorToBattery();
        DcLoad load = new DcLoad.Battery(n.battery().restingVoltage(), loop);
        double gear = n.alternator().gearRatio();
        DoubleUnaryOperator surplus = speed -> {
            Map<String, Double> s = simulate(withLead, speed * gear, load, fault);
            double torque = s.get("pemf_avg") / (speed * gear);
            return runner.torque(speed)
                    - gear * (torque + n.alternator().noLoad().at(speed * gear));
        };
        double low = 5;
        double high = runner.runawaySpeed();
        for (int i = 0; i < 10; i++) {
            double middle = 0.5 * (low + high);
            if (surplus.applyAsDouble(middle) > 0) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double speed = 0.5 * (low + high);
        Map<String, Double> s = simulate(withLead, speed * gear, load, fault);
        double amps = s.get("idc_avg");
        String name = running.nozzles().name();
        double water = ReadingModel.of(Condition.of(plant), running.nozzles())[
                Channel.slot(LoadState.BUS, ReadingKind.RUNNING_PRESSURE)];
        return Map.of(
                new Channel(name, LoadState.BUS, ReadingKind.RUNNING_PRESSURE),
                water,
                new Channel(name, LoadState.BUS, ReadingKind.SPEED),
                speed,
                new Channel(name, LoadState.BUS, ReadingKind.BATTERY_AMPS),
                amps,
                new Channel(name, LoadState.BUS, ReadingKind.BRIDGE_VOLTS),
                s.get("vdc_avg"),
                new Channel(name, LoadState.BUS, ReadingKind.BATTERY_VOLTS),
                n.battery().restingVoltage() + n.battery().internalResistance() * amps,
                new Channel(name, LoadState.BUS, ReadingKind.LEAD_AMPS),
                Math.sqrt(Math.max(s.get("ia2_avg"), Math.max(s.get("ib2_avg"), s.get("ic2_avg")))));
    }

    private Map<String, Double> simulate(AlternatorConstants machine, double speed, DcLoad load, BridgeFault fault) {
        double settle = Math.min(12 * machine.phaseInductance() / machine.phaseResistance(), 0.4);
        double frequency = machine.frequency(speed);
        return CircuitSimulator.run(
                folder, CircuitSimulator.netlist(machine, speed, load, fault, Math.max(settle, 4 / frequency), 400));
    }
}
