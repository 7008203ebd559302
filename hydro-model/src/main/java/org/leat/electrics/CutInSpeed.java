package org.leat.electrics;

/**
 * Mechanical angular speed at which the bridge begins to conduct: peak line EMF = bus voltage + 2 V_F0. Not the speed at
 * which 1.35 times the line voltage reaches the bus, which is 5 % higher.
 */
public final class CutInSpeed {

    private CutInSpeed() {}

    /** {@return cut-in speed, rad/s} */
    public static double of(BatteryClamp bus) {
        return bus.clampVoltage() / bus.alternator().linePeak(1);
    }
}
