package org.leat.hydraulics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Pressure cycles to failure of PVC-U pipe by its peak hoop stress: {@code C = 5.05e21 S^−4.906}, S in psi.
 *
 * <p>Range: peak stresses to 35 MPa (tested from about 7; below that the law is on the safe side); above {@link Answer.Outside}.
 * Source: Vinson (1981); Uni-Bell Handbook of PVC Pipe; older AWWA C900, appendix, from memory. Later rules take amplitude and mean
 * (AWWA C900-16, appendix B).
 */
public final class VinsonCycles {

    private static final double PSI = 6894.757293168;
    private static final double TESTED = 35e6;
    private static final double YEAR = 365.25 * 86400;

    private VinsonCycles() {}

    /** {@return number of cycles to failure at a peak hoop stress, Pa} */
    public static Answer toFailure(double peakHoopStress) {
        double stress = Physical.positive("peakHoopStress", peakHoopStress);
        return stress > TESTED
                ? Answer.outside("Vinson's cycles of PVC-U", "peakHoopStress", stress, 0, TESTED, "Pa")
                : Answer.of(5.05 * 1e21 * Math.pow(stress / PSI, -4.906));
    }

    /**
     * {@return time to failure, s, of a pipe that a highest pressure strikes so often} Hoop stress by {@link HoopStress}.
     *
     * @param highestPressure of a cycle, Pa
     * @param sdr outside diameter over least wall
     * @param cyclesPerYear how often
     */
    public static Answer life(double highestPressure, double sdr, double cyclesPerYear) {
        Physical.positive("cyclesPerYear", cyclesPerYear);
        Answer cycles = toFailure(HoopStress.stress(highestPressure, sdr));
        return cycles instanceof Answer.Value number ? Answer.of(number.value() / cyclesPerYear * YEAR) : cycles;
    }
}
