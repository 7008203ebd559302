package org.leat.electrics;

/** Sums what passes the air gap. A mutable object of one run. */
final class AirGapEnergy {

    /** s. */
    double time;

    /** J. */
    double energy;
}
