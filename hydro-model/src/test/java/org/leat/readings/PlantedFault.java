package org.leat.readings;

import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

/**
 * What is read on a plant with a fault in it, not by the model that is fitted: the water by {@link SecondPipe}, whatever the fault; the
 * machine, where the fault is one of the circuit, by {@link SimulatedMachine}. What is left to the model itself: the torque of the
 * wheel, and the bridge where the fault is not in it.
 */
final class PlantedFault {

    private final Plant built;
    private final FaultKind kind;
    private final double size;
    private final FaultyPlants faulty;
    private final SimulatedMachine machine;

    /** @param machine simulates where the fault is one of the circuit */
    PlantedFault(Plant built, FaultKind kind, double size, SimulatedMachine machine) {
        this.built = built;
        this.kind = kind;
        this.size = size;
        this.faulty = new FaultyPlants(built);
        this.machine = machine;
    }

    /** {@return what is read on a nozzle set, by slot} A fault of one nozzle is in every set asked for. */
    double[] read(NozzleGroup set) {
        Condition condition = faulty.of(kind, size, set);
        boolean ofPipe = switch (kind) {
            case SCREEN_BLOCKED, PIPE_PINCHED, AIR_IN_PIPE, LEAK -> true;
            default -> false;
        };
        // a fault of the pipe is put into the second pipe alone
        Plant plant = ofPipe ? built : condition.plant();
        PlantNumbers n = plant.numbers();
        double builtFlow = SecondPipe.sound(built.numbers())
                .flow(built.numbers().nozzles().sets().get(0));
        SecondPipe pipe = ofPipe ? SecondPipe.of(n, kind, size, builtFlow) : SecondPipe.sound(n);
        NozzleGroup here = named(n, set);
        double flow = pipe.flow(here);
        double share = headShare(plant, here, flow);
        Plant fed = withHead(plant, share);
        double[] values = ReadingModel.of(asIs(condition, fed), here);
        if (SimulatedMachine.simulates(kind)) {
            machine.read(values, fed, withHead(built, share), kind, size, here);
        }
        for (LoadState state : LoadState.values()) {
            if (state != LoadState.SHUT) {
                values[Channel.slot(state, ReadingKind.FLOW)] = flow;
                values[Channel.slot(state, ReadingKind.INTAKE_FLOW)] = flow + pipe.leak(flow);
                values[Channel.slot(state, ReadingKind.RUNNING_PRESSURE)] = pipe.pressure(flow);
            }
        }
        values[Channel.slot(LoadState.SHUT, ReadingKind.STANDING_PRESSURE)] =
                n.water().specificWeight() * n.site().grossHead();
        return values;
    }

    private static NozzleGroup named(PlantNumbers n, NozzleGroup set) {
        return n.nozzles().sets().stream()
                .filter(one -> one.name().equals(set.name()))
                .findFirst()
                .orElse(set);
    }

    private static Condition asIs(Condition condition, Plant plant) {
        return new Condition(
                plant,
                condition.standingHead(),
                condition.pinch(),
                condition.leak(),
                condition.dumpConductance(),
                condition.batteryShare(),
                condition.meterFactor(),
                condition.bridge(),
                condition.dumpDead());
    }

    private static Plant withHead(Plant plant, double share) {
        PlantNumbers n = plant.numbers();
        return plant.withNumbers(n.withSite(n.site().withGrossHead(n.site().grossHead() * share)));
    }

    /** Share of the head with which the model's pipe gives the second pipe's flow: the jet, and so the wheel, are the same. */
    private static double headShare(Plant plant, NozzleGroup set, double flow) {
        double share = 1;
        for (int i = 0; i < 4; i++) {
            double there = withHead(plant, share).running(set).water().flow();
            share *= (flow / there) * (flow / there);
        }
        return share;
    }
}
