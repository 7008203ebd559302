package org.leat.pack;

import org.jspecify.annotations.Nullable;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BatteryRemoved;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.DumpLoadLost;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.ManagementOpens;
import org.leat.plant.numbers.Amount;

/**
 * The highest voltage the bus can reach, and the situation that makes it. Of several that reach the same, the likeliest is
 * named: a regulator that lets go before a battery that is removed, that before a dump load that is lost.
 *
 * @param volts V
 * @param situation that makes it
 * @param cause key of the phrase that says how
 */
record HighestBusVoltage(double volts, BusSituation situation, String cause) {

    /** {@return the highest over every situation, moments counted where they are known} At least one is solved. */
    static HighestBusVoltage of(Cases cases) {
        HighestBusVoltage highest = lasting(cases);
        for (BusSituation situation : cases.onTheBus()) {
            if (situation.momentVoltage() instanceof Amount.Known known && known.value() > highest.volts()) {
                highest = new HighestBusVoltage(known.value(), situation, "cause.opened-under-load");
            }
        }
        return highest;
    }

    /** {@return the highest that lasts} At least one situation is solved. */
    static HighestBusVoltage lasting(Cases cases) {
        BusSituation highest = Worst.most(cases.onTheBus(), BusSituation::lastingVoltage);
        return new HighestBusVoltage(highest.lastingVoltage(), highest, cause(highest));
    }

    /** {@return why the highest voltage of a moment is not known; null where it is} */
    static Amount.@Nullable Unknown unknownMoment(Cases cases) {
        for (BusSituation situation : cases.onTheBus()) {
            if (situation.momentVoltage() instanceof Amount.Unknown unknown) {
                return unknown;
            }
        }
        return null;
    }

    private static String cause(BusSituation situation) {
        if (situation instanceof BatteryFull full) {
            return switch (full.answer()) {
                case DIVERTED -> "cause.diverted";
                case DUMP_TOO_SMALL -> "cause.dump-too-small";
                case RUNAWAY -> "cause.lets-go";
                case OVERCHARGED -> "cause.overcharged";
            };
        }
        if (situation instanceof BatteryRemoved) {
            return "cause.battery-removed";
        }
        if (situation instanceof ManagementOpens) {
            return "cause.management-opens";
        }
        if (situation instanceof DumpLoadLost) {
            return "cause.dump-lost";
        }
        return situation instanceof LoadLost ? "cause.runaway" : "cause.running";
    }
}
