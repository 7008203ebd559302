package org.leat.hydraulics;

/** Acceleration of free fall. */
public final class Gravity {

    /**
     * Standard value, m/s²: 9.80665 (3rd General Conference on Weights and Measures, 1901; ISO 80000-3). The local value
     * differs by 0.3 % at most.
     */
    public static final double STANDARD = 9.80665;

    private Gravity() {}
}
