package org.leat.readings;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.leat.design.DumpSide;
import org.leat.design.RegulatorKind;
import org.leat.electrics.BridgeFault;
import org.leat.law.Gravity;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.DumpLoadNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.NozzleNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solved.OperatingPoint;

/** Faults as changed plants. */
final class FaultyPlants {

    /** Voltage of a battery that stands at its set point, so stiff that no current moves it, Ω. */
    private static final double STIFF = 1e-6;

    private final Plant sound;
    private final PlantNumbers numbers;
    private final Running built;

    FaultyPlants(Plant sound) {
        this.sound = sound;
        this.numbers = sound.numbers();
        this.built = sound.solve().running().get(0);
    }

    /** {@return the faults that this plant can have, nothing first} */
    List<FaultKind> possible() {
        List<FaultKind> kinds = new ArrayList<>();
        boolean charging = built.operatingPoint().directCurrent() > 0;
        boolean stepped = charging && numbers.alternator().phaseInductance() > 0;
        boolean tracking = numbers.regulator().kind() == RegulatorKind.TRACKING;
        for (FaultKind kind : FaultKind.values()) {
            boolean can = switch (kind) {
                case PHASE_OPEN, DIODE_OPEN, DIODE_SHORTED -> stepped;
                // ahead of a tracker it would change the voltage of most power, which is not solved here
                case DUMP_ON ->
                    numbers.dumpLoad() != null
                            && !(tracking && numbers.dumpLoad().side() == DumpSide.BRIDGE);
                case DUMP_DEAD -> ReadingModel.holdsWithoutBattery(numbers);
                case REGULATOR_HOLDS_BACK -> tracking && charging;
                case JOINT_BAD, WINDING_WARMER -> charging;
                case BATTERY_NOT_TAKING -> charging && !tracking;
                case NOZZLE_OTHER -> numbers.nozzles().sets().size() > 1;
                default -> true;
            };
            if (can) {
                kinds.add(kind);
            }
        }
        return List.copyOf(kinds);
    }

    /** {@return the sizes at which a fault is solved} Equal steps of their logarithm. */
    double[] sizes(FaultKind kind, int steps) {
        if (kind == FaultKind.NOZZLE_OTHER) {
            return otherBores();
        }
        if (!kind.sized()) {
            return new double[] {1};
        }
        double ratio = Math.log(kind.most() / kind.least());
        return DoubleStream.iterate(0, i -> i < steps, i -> i + 1)
                .map(i -> kind.least() * Math.exp(ratio * i / (steps - 1)))
                .toArray();
    }

    private double[] otherBores() {
        return numbers.nozzles().sets().stream()
                .flatMap(set -> set.bores().stream())
                .mapToDouble(d -> d)
                .distinct()
                .sorted()
                .toArray();
    }

    /** {@return the plant with a fault of a size, as a nozzle set sees it} */
    Condition of(FaultKind kind, double size, NozzleGroup set) {
        Condition as = Condition.of(sound);
        double head = numbers.site().grossHead();
        double flow = built.water().flow();
        AlternatorNumbers alternator = numbers.alternator();
        return switch (kind) {
            case NOTHING -> as;
            case SCREEN_BLOCKED ->
                Condition.of(sound.withPenstock(numbers.penstock()
                        .withScreenLoss(numbers.penstock().screenLoss() + size * head / (flow * flow))));
            case PIPE_PINCHED -> pinched(size * head);
            case AIR_IN_PIPE ->
                Condition.of(sound.withNumbers(numbers.withSite(numbers.site().withGrossHead(head * (1 - size)))))
                        .withStandingHead(head);
            case LEAK -> leaking(size * flow, set);
            case HEAD_LOWER -> headOf(head * (1 - size));
            case HEAD_HIGHER -> headOf(head * (1 + size));
            case NOZZLE_WORN ->
                withNozzles(numbers.nozzles(), set, widened(set, set.bores().get(0) * (1 + size)));
            case NOZZLE_BLOCKED ->
                withNozzles(numbers.nozzles(), set, widened(set, set.bores().get(0) * Math.sqrt(1 - size)));
            case NOZZLE_OTHER -> withNozzles(numbers.nozzles(), set, widened(set, size));
            case WHEEL_WORN -> {
                RunnerNumbers runner = numbers.runner();
                yield Condition.of(
                        sound.withRunner(runner.withBucketEfficiency(runner.bucketEfficiency() * (1 - size))));
            }
            case BEARING_DRAG -> {
                AlternatorNumbers.NoLoadTorque idle = alternator.noLoad();
                double torque = size * built.operatingPoint().torque() / alternator.gearRatio();
                yield Condition.of(sound.withAlternator(alternator.withNoLoad(
                        new AlternatorNumbers.NoLoadTorque(idle.constant() + torque, idle.perSpeed()))));
            }
            case MAGNETS_WEAKER ->
                Condition.of(sound.withAlternator(alternator.withMagnets(
                        alternator.magnets().withFluxLinkage(alternator.fluxLinkage() * (1 - size)))));
            case WINDING_WARMER -> {
                AlternatorNumbers.Winding winding = alternator.winding();
                double kelvin = built.operatingPoint().windingTemperature() + size;
                yield Condition.of(sound.withAlternator(alternator.withWinding(winding.warmedTo(kelvin)
                        .withThermalResistance(Amount.notStated("/alternator/thermal-resistance")))));
            }
            case PHASE_OPEN -> as.withBridge(BridgeFault.PHASE_OPEN);
            case DIODE_OPEN -> as.withBridge(BridgeFault.DIODE_OPEN);
            case DIODE_SHORTED -> as.withBridge(BridgeFault.DIODE_SHORT);
            case JOINT_BAD -> {
                OperatingPoint point = built.operatingPoint();
                double added = size * point.bus().batteryResting() / Math.max(1e-9, point.directCurrent());
                PlantNumbers.BusResistance bus = numbers.busResistance();
                yield Condition.of(sound.withBusResistance(new PlantNumbers.BusResistance(
                        bus.phase(), bus.bridgeToRegulator() + added, bus.regulatorToBattery())));
            }
            case DUMP_ON -> dumping(size);
            case DUMP_DEAD -> as.withDumpDead(true);
            case REGULATOR_HOLDS_BACK -> heldBack(size);
            case BATTERY_NOT_TAKING -> full(size);
            case METER_SHOWS_PEAK -> as.withMeterFactor(Math.sqrt(2));
            case METER_ON_PHASE -> as.withMeterFactor(1 / Math.sqrt(3));
        };
    }

    private Condition headOf(double head) {
        return Condition.of(sound.withNumbers(numbers.withSite(numbers.site().withGrossHead(head))));
    }

    private Condition pinched(double loss) {
        List<SectionNumbers> sections = new ArrayList<>(numbers.penstock().sections());
        SectionNumbers last = sections.get(sections.size() - 1);
        double velocity = built.water().flow() / last.area();
        double coefficient = loss * 2 * Gravity.STANDARD / (velocity * velocity);
        sections.set(sections.size() - 1, last.withLossCoefficient(last.lossCoefficient() + coefficient));
        return Condition.of(sound.withPenstock(numbers.penstock().withSections(sections)))
                .withPinch(coefficient);
    }

    /** The pipe above the leak, taken at its middle, carries what is lost as well. */
    private Condition leaking(double lost, NozzleGroup set) {
        double share = lost / sound.running(set).water().flow();
        double whole = numbers.penstock().length();
        List<SectionNumbers> sections = new ArrayList<>();
        double from = 0;
        for (SectionNumbers section : numbers.penstock().sections()) {
            double above = Math.max(0, Math.min(1, (whole / 2 - from) / section.length()));
            // friction goes with the flow to the power of 1.85, fittings with its square
            sections.add(section.withLength(section.length() * (1 - above + above * Math.pow(1 + share, 1.85)))
                    .withLossCoefficient(section.lossCoefficient() * (1 - above + above * (1 + share) * (1 + share))));
            from += section.length();
        }
        double screen = numbers.penstock().screenLoss() * (1 + share) * (1 + share);
        return Condition.of(sound.withPenstock(
                        numbers.penstock().withSections(sections).withScreenLoss(screen)))
                .withLeak(lost);
    }

    private static List<Double> widened(NozzleGroup set, double bore) {
        List<Double> bores = new ArrayList<>(set.bores());
        bores.set(0, bore);
        return bores;
    }

    private Condition withNozzles(NozzleNumbers nozzles, NozzleGroup set, List<Double> bores) {
        List<NozzleGroup> sets = nozzles.sets().stream()
                .map(each ->
                        each.name().equals(set.name()) ? new NozzleGroup(each.name(), bores, each.asBuilt()) : each)
                .toList();
        return Condition.of(sound.withNumbers(numbers.withNozzles(nozzles.withSets(sets))));
    }

    private Condition dumping(double share) {
        DumpLoadNumbers dump = numbers.dumpLoad();
        if (dump == null) {
            return Condition.of(sound);
        }
        double conductance = share / dump.resistanceHot();
        BatteryNumbers battery = numbers.battery();
        double drop = conductance * battery.restingVoltage() * battery.internalResistance();
        return Condition.of(sound.withBattery(battery.withRestingVoltage(battery.restingVoltage() - drop)))
                .withDumpConductance(conductance);
    }

    private Condition heldBack(double size) {
        OperatingPoint.Tracking tracking = built.operatingPoint().tracking();
        if (tracking == null) {
            return Condition.of(sound);
        }
        RegulatorNumbers regulator = numbers.regulator();
        double volts = tracking.voltage() * (1 + size);
        return Condition.of(sound.withRegulator(regulator.withWindowFrom(volts).withWindowTo(volts)));
    }

    private Condition full(double share) {
        BatteryNumbers battery = numbers.battery();
        return Condition.of(sound.withBattery(
                        battery.withRestingVoltage(numbers.fullVoltage()).withInternalResistance(STIFF)))
                .withBatteryShare(1 - share);
    }
}
