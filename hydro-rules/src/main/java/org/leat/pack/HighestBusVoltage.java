package org.leat.pack;

import org.leat.plant.BatteryFull;
import org.leat.plant.Cases;
import org.leat.plant.LoadLost;
import org.leat.plant.Situation;

/**
 * The highest voltage the bus can reach, and what makes it.
 *
 * @param volts V
 * @param situation that makes it
 * @param cause key of the phrase that says how
 */
record HighestBusVoltage(double volts, Situation situation, String cause) {

    /** {@return the highest over every situation} At least one is solved. */
    static HighestBusVoltage of(Cases cases) {
        LoadLost settled = Worst.most(cases.loadLost(), LoadLost::directVoltage);
        HighestBusVoltage highest = new HighestBusVoltage(settled.directVoltage(), settled, "cause.runaway");
        LoadLost moment = Worst.most(cases.loadLost(), LoadLost::openedUnderLoadVoltage);
        if (moment.openedUnderLoadVoltage() > highest.volts()) {
            highest = new HighestBusVoltage(moment.openedUnderLoadVoltage(), moment, "cause.opened-under-load");
        }
        BatteryFull full = Worst.most(cases.batteryFull(), BatteryFull::highestVoltage);
        if (full.highestVoltage() > highest.volts()) {
            highest = new HighestBusVoltage(full.highestVoltage(), full, "cause.battery-full");
        }
        return highest;
    }
}
