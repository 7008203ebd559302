package org.leat.plant.solve;

import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.MagnetTemperature;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.quantity.Celsius;

/** An alternator as the laws take it, its winding at the winding temperature. */
public final class WarmAlternator {

    private WarmAlternator() {}

    /**
     * {@return the machine with its winding at the winding temperature} The magnets are taken to be as warm as it, which
     * they do not exceed; past 200 °C their coefficient is not known and their flux is left at that of 200 °C.
     */
    public static AlternatorConstants of(AlternatorNumbers alternator) {
        double celsius = Math.max(-60, Math.min(200, Celsius.of(alternator.windingTemperature())));
        double flux = alternator
                .magnets()
                .fluxCoefficient()
                .map(coefficient -> MagnetTemperature.factor(coefficient, celsius))
                .or(1);
        return new AlternatorConstants(
                alternator.polePairs(),
                alternator.fluxLinkage() * flux,
                alternator.phaseResistance(),
                alternator.phaseInductance());
    }
}
