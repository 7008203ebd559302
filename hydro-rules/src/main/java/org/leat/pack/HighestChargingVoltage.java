package org.leat.pack;

import org.leat.check.Judgement;
import org.leat.design.ChargeRegulator;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.quantity.Si;

/**
 * The highest voltage at the battery's poles while it is charged or full, and the situation that makes it.
 *
 * @param volts V
 * @param situation that makes it
 * @param cause key of the phrase that says how
 */
record HighestChargingVoltage(double volts, BusSituation situation, String cause) {

    /** {@return the highest} The plant is solved. */
    static HighestChargingVoltage of(Judgement j) {
        Running running =
                Worst.most(j.cases().running(), r -> r.operatingPoint().bus().battery());
        HighestChargingVoltage highest =
                new HighestChargingVoltage(running.operatingPoint().bus().battery(), running, "cause.charging");
        for (BatteryFull full : j.cases().batteryFull()) {
            HighestChargingVoltage there = full(j, full);
            highest = there.volts() > highest.volts() ? there : highest;
        }
        return highest;
    }

    private static HighestChargingVoltage full(Judgement j, BatteryFull full) {
        BatteryNumbers battery = j.plant().numbers().battery();
        boolean behind = switch (j.plant().numbers().regulator().kind()) {
            case SERIES, TRACKING -> true;
            case SHUNT, NONE -> false;
        };
        if (full.answer() == BatteryFull.Answer.OVERCHARGED) {
            return new HighestChargingVoltage(full.lastingVoltage(), full, "cause.overcharged");
        }
        if (full.answer() == BatteryFull.Answer.DUMP_TOO_SMALL && !behind) {
            return new HighestChargingVoltage(full.lastingVoltage(), full, "cause.dump-too-small");
        }
        // behind a regulator that lets go the battery sees its set point, not the dump load's
        double set = behind ? battery.absorptionVoltage() : full.setVoltage();
        ChargeRegulator regulator = j.design().regulator();
        double equalising = regulator == null ? 0 : Si.of(regulator.equalisingVoltage(), 0);
        return equalising > set
                ? new HighestChargingVoltage(equalising, full, "cause.equalising")
                : new HighestChargingVoltage(set, full, "cause.full");
    }
}
