package org.leat.plant.numbers;

import org.jspecify.annotations.Nullable;
import org.leat.electrics.AlternatorConstants;
import org.leat.electrics.MagnetTemperature;
import org.leat.quantity.Celsius;

/**
 * Alternator as its equivalent star, in SI. Speeds are the alternator's own.
 *
 * @param polePairs magnets of one polarity
 * @param gearRatio alternator speed over runner speed
 * @param fluxLinkage phase peak voltage over electrical angular speed, as measured at 20 °C, V·s
 * @param coldMagnetFactor flux on the coldest day over that at 20 °C
 * @param fluxCoefficient change of the flux with temperature, 1/K; null where it is not stated: then warmth leaves it
 * @param phaseResistance at the winding temperature below, Ω
 * @param phaseResistanceCold at 20 °C, Ω
 * @param phaseInductance H
 * @param windingTemperature while running, K; where there is a thermal resistance only where the search for it begins
 * @param thermalResistance of winding to air, K/W; null where none is stated, or where the temperature is
 * @param noLoadTorque part of iron and friction torque that does not depend on speed, N·m
 * @param noLoadTorquePerSpeed part that grows with speed, N·m·s
 * @param currentLimit rms of one lead, A; null where not stated
 * @param speedLimit rad/s; null where not stated
 */
public record AlternatorNumbers(
        int polePairs,
        double gearRatio,
        double fluxLinkage,
        double coldMagnetFactor,
        @Nullable Double fluxCoefficient,
        double phaseResistance,
        double phaseResistanceCold,
        double phaseInductance,
        double windingTemperature,
        @Nullable Double thermalResistance,
        double noLoadTorque,
        double noLoadTorquePerSpeed,
        @Nullable Double currentLimit,
        @Nullable Double speedLimit) {

    /** {@return peak voltage between two leads, nothing connected, magnets at 20 °C, V} */
    public double peakLineVoltage(double alternatorSpeed) {
        return Math.sqrt(3) * fluxLinkage * polePairs * alternatorSpeed;
    }

    /** {@return speed at which the peak voltage between leads reaches a voltage, rad/s} */
    public double speedAt(double peakLineVoltage) {
        return peakLineVoltage / (Math.sqrt(3) * fluxLinkage * polePairs);
    }

    /**
     * {@return the same machine wound with another number of turns in the same copper space}
     *
     * @param turnsRatio turns over the present turns: voltage goes with it, resistance and inductance with its square,
     *     the current limit against it
     */
    public AlternatorNumbers rewound(double turnsRatio) {
        double square = turnsRatio * turnsRatio;
        return new AlternatorNumbers(
                polePairs,
                gearRatio,
                fluxLinkage * turnsRatio,
                coldMagnetFactor,
                fluxCoefficient,
                phaseResistance * square,
                phaseResistanceCold * square,
                phaseInductance * square,
                windingTemperature,
                thermalResistance,
                noLoadTorque,
                noLoadTorquePerSpeed,
                currentLimit == null ? null : currentLimit / turnsRatio,
                speedLimit);
    }

    /** {@return the same machine joined in star where it was in delta} */
    public AlternatorNumbers fromDeltaToStar() {
        return rewound(Math.sqrt(3));
    }

    /** {@return the same machine joined in delta where it was in star} */
    public AlternatorNumbers fromStarToDelta() {
        return rewound(1 / Math.sqrt(3));
    }

    /** {@return the same machine, what it stands left out} */
    public AlternatorNumbers withoutLimits() {
        return new AlternatorNumbers(
                polePairs,
                gearRatio,
                fluxLinkage,
                coldMagnetFactor,
                fluxCoefficient,
                phaseResistance,
                phaseResistanceCold,
                phaseInductance,
                windingTemperature,
                thermalResistance,
                noLoadTorque,
                noLoadTorquePerSpeed,
                null,
                null);
    }

    /** {@return the same machine with its winding at another temperature, K} */
    public AlternatorNumbers warmedTo(double kelvin) {
        return new AlternatorNumbers(
                polePairs,
                gearRatio,
                fluxLinkage,
                coldMagnetFactor,
                fluxCoefficient,
                phaseResistanceCold * copper(kelvin) / copper(Celsius.toKelvin(20)),
                phaseResistanceCold,
                phaseInductance,
                kelvin,
                thermalResistance,
                noLoadTorque,
                noLoadTorquePerSpeed,
                currentLimit,
                speedLimit);
    }

    /** {@return what the resistance of copper is in proportion to, K} Far below any winter it ends. */
    public static double copper(double kelvin) {
        return Math.max(1, 234.5 + Celsius.of(kelvin));
    }

    /**
     * {@return the machine with its winding at the winding temperature} The magnets are taken to be as warm as it, which
     * they do not exceed; past 200 °C their coefficient is not known and their flux is left at that of 200 °C.
     */
    public AlternatorConstants atWindingTemperature() {
        double celsius = Math.max(-60, Math.min(200, Celsius.of(windingTemperature)));
        double flux = fluxCoefficient == null ? 1 : MagnetTemperature.factor(fluxCoefficient, celsius);
        return new AlternatorConstants(polePairs, fluxLinkage * flux, phaseResistance, phaseInductance);
    }
}
