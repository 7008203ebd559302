package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.List;
import org.leat.catalogue.tables.ConductorCatalogue;
import org.leat.design.Cable;
import org.leat.design.Conductor;
import org.leat.design.ConductorMaterial;
import org.leat.design.Stranding;
import org.leat.law.Answer;
import org.leat.plant.numbers.CableNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Cables of a plant and what they add to the bus. */
final class CableDerivation {

    private static final double COPPER_COEFFICIENT = 0.00393;
    private static final double ALUMINIUM_COEFFICIENT = 0.00403;
    private static final double COPPER_RESISTIVITY = 1.85e-8;
    private static final double ALUMINIUM_RESISTIVITY = 3.06e-8;
    private static final double WARMER_THAN_AROUND = 15;

    /** Ten metres of 10 mm² copper there and back, Ω. */
    private static final double UNSTATED_LOOP = 0.0366;

    private CableDerivation() {}

    static List<CableNumbers> cables(List<Cable> cables, Assume assume) {
        List<CableNumbers> numbers = new ArrayList<>();
        for (int i = 0; i < cables.size(); i++) {
            numbers.add(cable(i, cables.get(i), assume));
        }
        return numbers;
    }

    private static CableNumbers cable(int index, Cable cable, Assume assume) {
        String path = "/cables[" + index + "]";
        Conductor conductor = cable.conductor();
        ConductorMaterial material = conductor.material() == null ? ConductorMaterial.COPPER : conductor.material();
        Stranding stranding = conductor.stranding() == null ? Stranding.STRANDED : conductor.stranding();
        double area = Si.of(conductor.area());
        double length = Si.of(cable.length());
        double around = assume.stated(
                cable.installation() == null ? null : cable.installation().ambient(),
                path + "/installation/ambient",
                QuantityKind.TEMPERATURE,
                Celsius.toKelvin(30),
                Celsius.toKelvin(0),
                Celsius.toKelvin(45),
                "assumed/cable-ambient");
        double warm = around + WARMER_THAN_AROUND;
        boolean copper = material == ConductorMaterial.COPPER;
        double perMetre = ConductorCatalogue.resistance(material, stranding, area) instanceof Answer.Value tabled
                ? tabled.value()
                : (copper ? COPPER_RESISTIVITY : ALUMINIUM_RESISTIVITY) / area;
        double hot = 1 + (copper ? COPPER_COEFFICIENT : ALUMINIUM_COEFFICIENT) * (Celsius.of(warm) - 20);
        int parallel = conductor.parallel() == null ? 1 : conductor.parallel();
        return new CableNumbers(
                index, cable.from(), cable.to(), length, length * perMetre * Math.max(0.1, hot) / parallel, warm);
    }

    static PlantNumbers.BusResistance bus(List<CableNumbers> cables, boolean regulated, Assume assume) {
        return PlantNumbers.BusResistance.of(cables, regulated)
                .orElseGet(() -> PlantNumbers.BusResistance.loop(assume.placeholder(
                        "/cables", QuantityKind.RESISTANCE, UNSTATED_LOOP, 0, 0.2, "assumed/cable-resistance")));
    }
}
