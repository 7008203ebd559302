package org.leat.pack.kit;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.BusSituation.BatteryRemoved;
import org.leat.plant.cases.BusSituation.BusHolder;
import org.leat.plant.cases.BusSituation.DumpLoadLost;
import org.leat.plant.cases.BusSituation.ManagementOpens;
import org.leat.plant.cases.Cases;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;

/**
 * The highest voltage a node of the bus can reach, and the situation that makes it. Of several that reach the same, the likeliest is
 * named: a regulator that lets go before a battery that is removed, that before a dump load that is lost.
 *
 * @param volts V
 * @param situation that makes it
 * @param cause that says how
 */
public record HighestBusVoltage(double volts, BusSituation situation, VoltageCause cause) {

    /** {@return the highest of a node over every situation, moments counted where they are known} At least one is solved. */
    public static HighestBusVoltage of(Cases cases, BusNode node) {
        return of(cases, node, cases.onTheBus());
    }

    /**
     * {@return the highest at the bridge, before a tracking or series regulator, that a part with a clamp beside it meets} Where
     * a dump load at the bridge holds it on every nozzle set it is what that leaves; that it may be lost is judged by dump/lost.
     * Else as {@link #of}.
     */
    public static HighestBusVoltage besideClamp(Cases cases) {
        boolean clamped = cases.numbers().regulator().divides()
                && cases.batteryRemoved().stream().allMatch(removed -> removed.holder() == BusHolder.DUMP_LOAD);
        List<BusSituation> met = clamped
                ? cases.onTheBus().stream()
                        .filter(situation -> !(situation instanceof LoadLost || situation instanceof DumpLoadLost))
                        .toList()
                : cases.onTheBus();
        return of(cases, BusNode.BRIDGE, met);
    }

    private static HighestBusVoltage of(Cases cases, BusNode node, List<BusSituation> situations) {
        HighestBusVoltage highest = lasting(cases, node, situations);
        for (BusSituation situation : situations) {
            if (node.moment(situation) instanceof Amount.Known known && known.value() > highest.volts()) {
                highest = new HighestBusVoltage(known.value(), situation, VoltageCause.OPENED_UNDER_LOAD);
            }
        }
        return highest;
    }

    /** {@return the highest of a node that lasts} At least one situation is solved. */
    public static HighestBusVoltage lasting(Cases cases, BusNode node) {
        return lasting(cases, node, cases.onTheBus());
    }

    private static HighestBusVoltage lasting(Cases cases, BusNode node, List<BusSituation> situations) {
        BusSituation highest = Worst.most(situations, node::lasting);
        VoltageCause cause =
                node == BusNode.BATTERY && cases.numbers().regulator().divides()
                        ? behindRegulator(cases.numbers(), highest)
                        : cause(highest);
        return new HighestBusVoltage(node.lasting(highest), highest, cause);
    }

    /** {@return why the highest voltage of a moment is not known; null where it is} */
    public static Amount.@Nullable Unknown unknownMoment(Cases cases, BusNode node) {
        for (BusSituation situation : cases.onTheBus()) {
            if (node.moment(situation) instanceof Amount.Unknown unknown) {
                return unknown;
            }
        }
        return null;
    }

    /** A regulator that works holds the battery's node at its set point, whatever the bridge does. */
    private static VoltageCause behindRegulator(PlantNumbers numbers, BusSituation situation) {
        if (situation instanceof Running) {
            return VoltageCause.CHARGING;
        }
        return numbers.regulator().equalisingVoltage().orElse(0)
                        > numbers.battery().absorptionVoltage()
                ? VoltageCause.EQUALISING
                : VoltageCause.FULL;
    }

    private static VoltageCause cause(BusSituation situation) {
        if (situation instanceof BatteryFull full) {
            return switch (full.answer()) {
                case DIVERTED -> VoltageCause.DIVERTED;
                case DUMP_TOO_SMALL -> VoltageCause.DUMP_TOO_SMALL;
                case RUNAWAY -> VoltageCause.LETS_GO;
                case OVERCHARGED -> VoltageCause.OVERCHARGED;
            };
        }
        if (situation instanceof BatteryRemoved) {
            return VoltageCause.BATTERY_REMOVED;
        }
        if (situation instanceof ManagementOpens) {
            return VoltageCause.MANAGEMENT_OPENS;
        }
        if (situation instanceof DumpLoadLost) {
            return VoltageCause.DUMP_LOST;
        }
        return situation instanceof LoadLost ? VoltageCause.RUNAWAY : VoltageCause.RUNNING;
    }
}
