package org.leat.plant;

import org.jspecify.annotations.Nullable;

/**
 * Alternator as its equivalent star, in SI. Speeds are the alternator's own.
 *
 * @param polePairs magnets of one polarity
 * @param gearRatio alternator speed over runner speed
 * @param fluxLinkage phase peak voltage over electrical angular speed, as measured at 20 °C, V·s
 * @param coldMagnetFactor flux on the coldest day over that at 20 °C
 * @param phaseResistance at the running winding temperature, Ω
 * @param phaseResistanceCold at 20 °C, Ω
 * @param phaseInductance H
 * @param windingTemperature while running, K
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
        double phaseResistance,
        double phaseResistanceCold,
        double phaseInductance,
        double windingTemperature,
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
                phaseResistance * square,
                phaseResistanceCold * square,
                phaseInductance * square,
                windingTemperature,
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
    AlternatorNumbers withoutLimits() {
        return new AlternatorNumbers(
                polePairs,
                gearRatio,
                fluxLinkage,
                coldMagnetFactor,
                phaseResistance,
                phaseResistanceCold,
                phaseInductance,
                windingTemperature,
                noLoadTorque,
                noLoadTorquePerSpeed,
                null,
                null);
    }
}
