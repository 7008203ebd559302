package org.leat.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.leat.choice.Overview.UnderstoodNumber;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;

/** Reads off a plant the numbers that show a slip of the pen: a builder knows them without computing. */
final class UnderstoodNumbers {

    private static final double RPM = 2 * Math.PI / 60;

    private final Plant plant;
    private final Set<String> assumed;
    private final List<UnderstoodNumber> numbers = new ArrayList<>();

    private UnderstoodNumbers(Plant plant) {
        this.plant = plant;
        this.assumed = plant.assumptions().stream().map(Assumption::path).collect(Collectors.toSet());
    }

    static List<UnderstoodNumber> of(Plant plant) {
        return new UnderstoodNumbers(plant).all();
    }

    private List<UnderstoodNumber> all() {
        PlantNumbers n = plant.numbers();
        for (SectionNumbers section : n.penstock().sections()) {
            String of = n.penstock().sections().size() == 1 ? "" : section.name();
            String path = section.path();
            add(UnderstoodNumber.What.PIPE_BORE, path, of, section.bore(), QuantityKind.LENGTH);
            add(UnderstoodNumber.What.PIPE_WALL, path, of, section.leastWall(), QuantityKind.LENGTH);
        }
        plant.solve().shut().sections().stream()
                .reduce((above, below) -> below)
                .ifPresent(pressure -> add(
                        UnderstoodNumber.What.STANDING_PRESSURE,
                        "/site/gross-head",
                        "",
                        pressure,
                        QuantityKind.PRESSURE));
        add(
                UnderstoodNumber.What.NOZZLE_AREA,
                "/nozzles/open",
                "",
                n.nozzles().asBuilt().area(),
                QuantityKind.AREA);
        plant.solve().running().stream()
                .limit(1)
                .map(Running::water)
                .forEach(water ->
                        add(UnderstoodNumber.What.FLOW, "/nozzles/open", "", water.flow(), QuantityKind.VOLUME_FLOW));
        add(
                UnderstoodNumber.What.PITCH_DIAMETER,
                "/runner/pitch-diameter",
                "",
                n.runner().pitchDiameter(),
                QuantityKind.LENGTH);
        alternator(n.alternator());
        battery(n.battery());
        return List.copyOf(numbers);
    }

    private void alternator(AlternatorNumbers a) {
        String path = "/alternator/open-circuit";
        double peakPerSpeed = Math.sqrt(3) * a.fluxLinkage() * a.polePairs();
        add(UnderstoodNumber.What.MOTOR_SPEED_PER_VOLT, path, "", 1 / peakPerSpeed, QuantityKind.SPEED_PER_VOLTAGE);
        add(
                UnderstoodNumber.What.MOTOR_VOLTS_AT_1000_RPM,
                path,
                "",
                peakPerSpeed / Math.sqrt(2) * 1000 * RPM,
                QuantityKind.VOLTAGE);
        add(
                UnderstoodNumber.What.MOTOR_RESISTANCE,
                "/alternator/winding/resistance-between-leads",
                "",
                2 * a.phaseResistanceCold(),
                QuantityKind.RESISTANCE);
    }

    private void battery(BatteryNumbers b) {
        String path = "/battery/cells-in-series";
        add(UnderstoodNumber.What.BATTERY_NOMINAL_VOLTAGE, path, "", b.nominalVoltage(), QuantityKind.VOLTAGE);
        add(UnderstoodNumber.What.BATTERY_ENERGY, "/battery/capacity", "", b.storedEnergy(), QuantityKind.ENERGY);
    }

    private void add(UnderstoodNumber.What what, String element, String of, double value, QuantityKind kind) {
        if (Double.isFinite(value)) {
            numbers.add(new UnderstoodNumber(what, element, of, value, kind, assumed.contains(element)));
        }
    }
}
