package org.leat.pack.inverter;

import java.util.OptionalDouble;
import org.leat.pack.kit.VoltageCause;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.RegulatorNumbers;

/**
 * The highest voltage at the battery's poles while it is charged or full, and the situation that makes it.
 *
 * @param volts V
 * @param situation that makes it
 * @param cause that says how
 */
record HighestChargingVoltage(double volts, BusSituation situation, VoltageCause cause) {

    /** {@return the highest} The plant is solved. */
    static HighestChargingVoltage of(Cases cases) {
        Running running =
                Worst.most(cases.running(), r -> r.operatingPoint().bus().battery());
        HighestChargingVoltage highest =
                new HighestChargingVoltage(running.operatingPoint().bus().battery(), running, VoltageCause.CHARGING);
        for (BatteryFull full : cases.batteryFull()) {
            HighestChargingVoltage there = full(cases, full);
            highest = there.volts() > highest.volts() ? there : highest;
        }
        return highest;
    }

    private static HighestChargingVoltage full(Cases cases, BatteryFull full) {
        RegulatorNumbers regulator = cases.numbers().regulator();
        boolean behind = switch (regulator.kind()) {
            case SERIES, TRACKING -> true;
            case SHUNT, NONE -> false;
        };
        if (full.answer() == BatteryFull.Answer.OVERCHARGED) {
            return new HighestChargingVoltage(full.lastingVoltage(), full, VoltageCause.OVERCHARGED);
        }
        if (full.answer() == BatteryFull.Answer.DUMP_TOO_SMALL && !behind) {
            return new HighestChargingVoltage(full.lastingVoltage(), full, VoltageCause.DUMP_TOO_SMALL);
        }
        // behind a regulator that lets go the battery sees its set point, not the dump load's
        double set = behind ? cases.numbers().battery().absorptionVoltage() : full.setVoltage();
        OptionalDouble equalising = regulator.equalisingVoltage();
        return equalising.isPresent() && equalising.getAsDouble() > set
                ? new HighestChargingVoltage(equalising.getAsDouble(), full, VoltageCause.EQUALISING)
                : new HighestChargingVoltage(set, full, VoltageCause.FULL);
    }
}
