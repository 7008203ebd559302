package org.leat.readings;

import java.util.List;
import java.util.function.BiFunction;
import org.leat.design.RegulatorKind;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.NozzleNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.RectifierNumbers;
import org.leat.plant.numbers.RegulatorNumbers;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.numbers.SectionNumbers;

/**
 * How far a plant that is sound may be from its drawing: standard uncertainties, shares of each number. Common practice; the head's is
 * that of the design where it tells one.
 *
 * @param what is not as drawn
 * @param standard uncertainty, one sigma, a share
 * @param change the numbers with it moved by a share
 */
record BuildTolerance(String what, double standard, BiFunction<PlantNumbers, Double, PlantNumbers> change) {

    private static final double HEAD = 0.01;

    /** {@return every tolerance that counts for a plant} */
    static List<BuildTolerance> all(PlantNumbers plant) {
        double told = plant.site().grossHeadPlusMinus() / 2 / plant.site().grossHead();
        double head = told > 0 ? told : HEAD;
        return List.of(
                new BuildTolerance(
                        "gross head",
                        head,
                        (n, x) -> n.withSite(n.site().withGrossHead(n.site().grossHead() * (1 + x)))),
                new BuildTolerance("friction", 0.2, BuildTolerance::friction),
                new BuildTolerance(
                        "screen",
                        0.5,
                        (n, x) -> n.withPenstock(
                                n.penstock().withScreenLoss(n.penstock().screenLoss() * (1 + x)))),
                new BuildTolerance("jet velocity", 0.01, (n, x) -> {
                    NozzleNumbers all = n.nozzles();
                    return n.withNozzles(all.withVelocityCoefficient(all.velocityCoefficient() * (1 + x)));
                }),
                new BuildTolerance("jet area", 0.015, (n, x) -> {
                    NozzleNumbers all = n.nozzles();
                    return n.withNozzles(all.withSets(all.sets().stream()
                            .map(set -> new NozzleGroup(set.name(), wider(set.bores(), x), set.asBuilt()))
                            .toList()));
                }),
                new BuildTolerance("bucket efficiency", 0.02, (n, x) -> {
                    RunnerNumbers runner = n.runner();
                    return n.withRunner(runner.withBucketEfficiency(runner.bucketEfficiency() * (1 + x)));
                }),
                new BuildTolerance("pitch diameter and runaway", 0.01, (n, x) -> {
                    RunnerNumbers runner = n.runner();
                    return n.withRunner(runner.withPitchDiameter(runner.pitchDiameter() * (1 + x)));
                }),
                new BuildTolerance("magnets", 0.015, (n, x) -> {
                    AlternatorNumbers.Magnets magnets = n.alternator().magnets();
                    return n.withAlternator(
                            n.alternator().withMagnets(magnets.withFluxLinkage(magnets.fluxLinkage() * (1 + x))));
                }),
                new BuildTolerance("winding resistance", 0.04, (n, x) -> {
                    AlternatorNumbers.Winding w = n.alternator().winding();
                    return n.withAlternator(n.alternator()
                            .withWinding(w.withResistance(w.resistance() * (1 + x))
                                    .withResistanceCold(w.resistanceCold() * (1 + x))));
                }),
                new BuildTolerance("winding inductance", 0.1, (n, x) -> {
                    AlternatorNumbers.Winding w = n.alternator().winding();
                    return n.withAlternator(n.alternator().withWinding(w.withInductance(w.inductance() * (1 + x))));
                }),
                new BuildTolerance("iron and friction", 0.25, (n, x) -> {
                    AlternatorNumbers.NoLoadTorque idle = n.alternator().noLoad();
                    return n.withAlternator(n.alternator()
                            .withNoLoad(new AlternatorNumbers.NoLoadTorque(
                                    idle.constant() * (1 + x), idle.perSpeed() * (1 + x))));
                }),
                new BuildTolerance("diodes", 0.05, (n, x) -> {
                    RectifierNumbers bridge = n.rectifier();
                    return n.withRectifier(bridge.withThreshold(bridge.threshold() * (1 + x)));
                }),
                new BuildTolerance("battery's state", 0.015, (n, x) -> {
                    BatteryNumbers battery = n.battery();
                    return n.withBattery(battery.withRestingVoltage(battery.restingVoltage() * (1 + x)));
                }),
                new BuildTolerance("battery's resistance", 0.3, (n, x) -> {
                    BatteryNumbers battery = n.battery();
                    return n.withBattery(battery.withInternalResistance(battery.internalResistance() * (1 + x)));
                }),
                new BuildTolerance("cables", 0.1, (n, x) -> {
                    PlantNumbers.BusResistance bus = n.busResistance();
                    return n.withBusResistance(new PlantNumbers.BusResistance(
                            bus.phase() * (1 + x),
                            bus.bridgeToRegulator() * (1 + x),
                            bus.regulatorToBattery() * (1 + x)));
                }),
                new BuildTolerance("regulator", 0.02, BuildTolerance::regulator));
    }

    private static List<Double> wider(List<Double> bores, double area) {
        return bores.stream().map(bore -> bore * Math.sqrt(1 + area)).toList();
    }

    private static PlantNumbers friction(PlantNumbers n, double x) {
        return n.withPenstock(n.penstock()
                .withSections(n.penstock().sections().stream()
                        .map((SectionNumbers s) ->
                                s.withLength(s.length() * (1 + x)).withLossCoefficient(s.lossCoefficient() * (1 + x)))
                        .toList()));
    }

    /** The voltage a tracker holds matters to the machine; its losses matter to the battery. */
    private static PlantNumbers regulator(PlantNumbers n, double x) {
        RegulatorNumbers regulator = n.regulator();
        return regulator.kind() == RegulatorKind.TRACKING
                ? n.withRegulator(regulator.withEfficiency(regulator.efficiency() * (1 + x)))
                : n;
    }
}
