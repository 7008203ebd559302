package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Permanent-magnet three-phase machine as its equivalent star, at the temperature of 20 °C.
 *
 * @param polePairs p, magnets of one polarity
 * @param fluxLinkage ψ, phase EMF peak over electrical angular frequency, V·s
 * @param phaseResistance R, half of what is measured between two leads, Ω
 * @param phaseInductance L, half of what is measured between two leads, H
 */
public record AlternatorConstants(int polePairs, double fluxLinkage, double phaseResistance, double phaseInductance) {

    private static final double ROOT3 = Math.sqrt(3);

    public AlternatorConstants {
        Physical.within("pole pairs", polePairs, 1, 1000);
        Physical.positive("flux linkage", fluxLinkage);
        Physical.notNegative("phase resistance", phaseResistance);
        Physical.notNegative("phase inductance", phaseInductance);
    }

    /**
     * {@return the machine from what is measured between two of its leads, star or delta alike}
     *
     * @param polePairs magnets of one polarity
     * @param linePeakPerSpeed peak line EMF over mechanical angular speed, V·s, see {@link EmfConstant}
     * @param resistanceBetweenLeads Ω at 20 °C
     * @param inductanceBetweenLeads H
     */
    public static AlternatorConstants fromLeads(
            int polePairs, double linePeakPerSpeed, double resistanceBetweenLeads, double inductanceBetweenLeads) {
        return new AlternatorConstants(
                polePairs,
                linePeakPerSpeed / (ROOT3 * polePairs),
                resistanceBetweenLeads / 2,
                inductanceBetweenLeads / 2);
    }

    /** {@return electrical angular frequency at a mechanical angular speed, rad/s} */
    public double electricalSpeed(double speed) {
        return polePairs * speed;
    }

    /** {@return frequency at a mechanical angular speed, Hz} */
    public double frequency(double speed) {
        return polePairs * speed / (2 * Math.PI);
    }

    /** {@return phase EMF, peak, at a mechanical angular speed, V} */
    public double phaseEmf(double speed) {
        return fluxLinkage * polePairs * speed;
    }

    /** {@return line EMF, peak, at a mechanical angular speed, V: also the open-circuit d.c. voltage} */
    public double linePeak(double speed) {
        return ROOT3 * phaseEmf(speed);
    }

    /** {@return line EMF, rms, at a mechanical angular speed, V: what a meter shows} */
    public double lineRms(double speed) {
        return linePeak(speed) / Math.sqrt(2);
    }

    /** {@return phase reactance at a mechanical angular speed, Ω} */
    public double reactance(double speed) {
        return polePairs * speed * phaseInductance;
    }

    /** {@return the direct current that the bridge nears as speed rises without end, 3ψ/(πL), A} Infinite without L. */
    public double saturationCurrent() {
        return 3 * fluxLinkage / (Math.PI * phaseInductance);
    }

    /** {@return the machine with magnets of another strength}
     *
     * @param factor flux over flux at 20 °C, see {@link MagnetTemperature}
     */
    public AlternatorConstants withFluxFactor(double factor) {
        return new AlternatorConstants(polePairs, fluxLinkage * factor, phaseResistance, phaseInductance);
    }

    /** {@return the machine with the winding at a temperature, °C} */
    public AlternatorConstants atWindingTemperature(double celsius) {
        return new AlternatorConstants(
                polePairs, fluxLinkage, CopperResistance.at(phaseResistance, 20, celsius), phaseInductance);
    }
}
