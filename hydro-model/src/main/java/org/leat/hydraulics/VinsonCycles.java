package org.leat.hydraulics;

import org.leat.law.Physical;

/**
 * Pressure cycles to failure of PVC-U pipe by its peak hoop stress: {@code C = 5.05e21 S^−4.906}, S in psi.
 *
 * <p>Source: Vinson (1981); Uni-Bell Handbook of PVC Pipe; older AWWA C900, appendix, from memory. Later rules take amplitude
 * and mean (AWWA C900-16, appendix B). Peak stresses from about 7 to 35 MPa were tested; below that the law is on the safe
 * side.
 */
public final class VinsonCycles {

    private static final double PSI = 6894.757293168;

    private VinsonCycles() {}

    /** {@return number of cycles to failure} */
    public static double toFailure(double peakHoopStress) {
        return 5.05 * 1e21 * Math.pow(Physical.positive("peakHoopStress", peakHoopStress) / PSI, -4.906);
    }
}
