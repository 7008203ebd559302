package org.leat.plant.numbers;

import org.apiguardian.api.API;
import org.leat.quantity.Celsius;

/**
 * Alternator as its equivalent star, in SI. Speeds are the alternator's own.
 *
 * @param polePairs magnets of one polarity
 * @param gearRatio alternator speed over runner speed
 * @param magnets what they link with the winding
 * @param winding copper of one phase
 * @param noLoad iron and friction
 * @param limits what the machine stands
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record AlternatorNumbers(
        int polePairs, double gearRatio, Magnets magnets, Winding winding, NoLoadTorque noLoad, Limits limits)
        implements AlternatorNumbersBuilder.With {

    /**
     * Flux of the magnets.
     *
     * @param fluxLinkage phase peak voltage over electrical angular speed, as measured at 20 °C, V·s
     * @param coldFactor flux on the coldest day over that at 20 °C
     * @param fluxCoefficient change of the flux with temperature, 1/K; where it is not stated warmth leaves the flux
     */
    @Withers
    public record Magnets(double fluxLinkage, double coldFactor, Amount fluxCoefficient)
            implements AlternatorNumbersMagnetsBuilder.With {}

    /**
     * Winding of one phase.
     *
     * @param resistance at the temperature below, Ω
     * @param resistanceCold at 20 °C, Ω
     * @param inductance H
     * @param runInductance of one conductor of the run to the bridge, in series with it, H
     * @param temperature while running, K; where there is a thermal resistance only where the search for it begins
     * @param thermalResistance of winding to air, K/W; of no use where the temperature is stated, and left out then
     */
    @Withers
    public record Winding(
            double resistance,
            double resistanceCold,
            double inductance,
            double runInductance,
            double temperature,
            Amount thermalResistance)
            implements AlternatorNumbersWindingBuilder.With {

        /** {@return the same winding at another temperature, K} */
        public Winding warmedTo(double kelvin) {
            return withResistance(resistanceCold * copper(kelvin) / copper(Celsius.toKelvin(20)))
                    .withTemperature(kelvin);
        }
    }

    /**
     * Iron and friction torque.
     *
     * @param constant part that does not depend on speed, N·m
     * @param perSpeed part that grows with speed, N·m·s
     */
    public record NoLoadTorque(double constant, double perSpeed) {

        /** {@return torque at a speed of the alternator (rad/s), N·m} */
        public double at(double alternatorSpeed) {
            return constant + perSpeed * alternatorSpeed;
        }
    }

    /**
     * What the machine stands.
     *
     * @param current rms of one lead, A
     * @param speed rad/s
     */
    public record Limits(Amount current, Amount speed) {

        /** Nothing is stated. */
        public static final Limits NONE =
                new Limits(Amount.notStated("/alternator/current-limit"), Amount.notStated("/alternator/speed-limit"));
    }

    /** {@return flux linkage of a phase at 20 °C, V·s} See {@link Magnets}. */
    public double fluxLinkage() {
        return magnets.fluxLinkage();
    }

    /** {@return flux on the coldest day over that at 20 °C} */
    public double coldMagnetFactor() {
        return magnets.coldFactor();
    }

    /** {@return change of the flux with temperature, 1/K} */
    public Amount fluxCoefficient() {
        return magnets.fluxCoefficient();
    }

    /** {@return resistance of a phase at the temperature of the winding, Ω} See {@link Winding}. */
    public double phaseResistance() {
        return winding.resistance();
    }

    /** {@return resistance of a phase at 20 °C, Ω} */
    public double phaseResistanceCold() {
        return winding.resistanceCold();
    }

    /** {@return inductance of a phase with that of its run to the bridge, H} */
    public double phaseInductance() {
        return winding.inductance() + winding.runInductance();
    }

    /** {@return temperature of the winding while running, K} See {@link Winding}. */
    public double windingTemperature() {
        return winding.temperature();
    }

    /** {@return of winding to air, K/W; not there where the temperature is stated} */
    public Amount thermalResistance() {
        return winding.thermalResistance();
    }

    /** {@return part of iron and friction torque that does not depend on speed, N·m} */
    public double noLoadTorque() {
        return noLoad.constant();
    }

    /** {@return part of iron and friction torque that grows with speed, N·m·s} */
    public double noLoadTorquePerSpeed() {
        return noLoad.perSpeed();
    }

    /** {@return rms of one lead that the winding stands, A} */
    public Amount currentLimit() {
        return limits.current();
    }

    /** {@return speed that the machine stands, rad/s} */
    public Amount speedLimit() {
        return limits.speed();
    }

    /** {@return peak voltage between two leads, nothing connected, magnets at 20 °C, V} */
    public double peakLineVoltage(double alternatorSpeed) {
        return Math.sqrt(3) * fluxLinkage() * polePairs * alternatorSpeed;
    }

    /** {@return speed at which the peak voltage between leads reaches a voltage, rad/s} */
    public double speedAt(double peakLineVoltage) {
        return peakLineVoltage / (Math.sqrt(3) * fluxLinkage() * polePairs);
    }

    /**
     * {@return the same machine wound with another number of turns in the same copper space}
     *
     * @param turnsRatio turns over the present turns: voltage goes with it, resistance and inductance with its square,
     *     the current limit against it
     */
    public AlternatorNumbers rewound(double turnsRatio) {
        double square = turnsRatio * turnsRatio;
        return withMagnets(magnets.withFluxLinkage(magnets.fluxLinkage() * turnsRatio))
                .withWinding(winding.withResistance(winding.resistance() * square)
                        .withResistanceCold(winding.resistanceCold() * square)
                        .withInductance(winding.inductance() * square))
                .withLimits(new Limits(limits.current().map(amperes -> amperes / turnsRatio), limits.speed()));
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
        return withLimits(Limits.NONE);
    }

    /** {@return the same machine with its winding at another temperature, K} */
    public AlternatorNumbers warmedTo(double kelvin) {
        return withWinding(winding.warmedTo(kelvin));
    }

    /** {@return what the resistance of copper is in proportion to, K} Far below any winter it ends. */
    public static double copper(double kelvin) {
        return Math.max(1, 234.5 + Celsius.of(kelvin));
    }
}
