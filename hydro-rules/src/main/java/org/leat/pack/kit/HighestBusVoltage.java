package org.leat.pack.kit;

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
 * @param cause that says how
 */
public record HighestBusVoltage(double volts, BusSituation situation, Cause cause) {

    /** {@return the highest over every situation, moments counted where they are known} At least one is solved. */
    public static HighestBusVoltage of(Cases cases) {
        HighestBusVoltage highest = lasting(cases);
        for (BusSituation situation : cases.onTheBus()) {
            if (situation.momentVoltage() instanceof Amount.Known known && known.value() > highest.volts()) {
                highest = new HighestBusVoltage(known.value(), situation, Cause.OPENED_UNDER_LOAD);
            }
        }
        return highest;
    }

    /** {@return the highest that lasts} At least one situation is solved. */
    public static HighestBusVoltage lasting(Cases cases) {
        BusSituation highest = Worst.most(cases.onTheBus(), BusSituation::lastingVoltage);
        return new HighestBusVoltage(highest.lastingVoltage(), highest, cause(highest));
    }

    /** {@return why the highest voltage of a moment is not known; null where it is} */
    public static Amount.@Nullable Unknown unknownMoment(Cases cases) {
        for (BusSituation situation : cases.onTheBus()) {
            if (situation.momentVoltage() instanceof Amount.Unknown unknown) {
                return unknown;
            }
        }
        return null;
    }

    private static Cause cause(BusSituation situation) {
        if (situation instanceof BatteryFull full) {
            return switch (full.answer()) {
                case DIVERTED -> Cause.DIVERTED;
                case DUMP_TOO_SMALL -> Cause.DUMP_TOO_SMALL;
                case RUNAWAY -> Cause.LETS_GO;
                case OVERCHARGED -> Cause.OVERCHARGED;
            };
        }
        if (situation instanceof BatteryRemoved) {
            return Cause.BATTERY_REMOVED;
        }
        if (situation instanceof ManagementOpens) {
            return Cause.MANAGEMENT_OPENS;
        }
        if (situation instanceof DumpLoadLost) {
            return Cause.DUMP_LOST;
        }
        return situation instanceof LoadLost ? Cause.RUNAWAY : Cause.RUNNING;
    }
}
