package org.leat.electrics;

/**
 * Periodic currents of a bridge.
 *
 * @param directCurrent mean, A
 * @param directCurrentRms rms of the d.c. current, A
 * @param phaseCurrentRms rms of one lead, A
 * @param mode how the diodes share it
 */
public record BridgeCurrents(
        double directCurrent, double directCurrentRms, double phaseCurrentRms, ConductionMode mode) {

    static final BridgeCurrents NONE = new BridgeCurrents(0, 0, 0, ConductionMode.NONE);

    /**
     * {@return the currents from integrals over a sixth of a period}
     *
     * @param integral ∫ i_dc, A·rad
     * @param square ∫ i_dc², A²·rad
     * @param phases ∫ (i_a² + i_b² + i_c²), A²·rad
     */
    static BridgeCurrents of(double integral, double square, double phases, ConductionMode mode) {
        double sixth = Math.PI / 3;
        // of next to no current the integrals of squares are what rounding leaves, and may end below nil; no mean of
        // squares
        // is less than the square of the mean, nor that of three leads than half of it
        double mean = integral / sixth;
        double direct = Math.max(square / sixth, mean * mean);
        double phase = Math.max(phases / (3 * sixth), mean * mean / 2);
        return new BridgeCurrents(mean, Math.sqrt(direct), Math.sqrt(phase), mode);
    }
}
