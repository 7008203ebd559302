package org.leat.pack.kit;

import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.design.Place;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.numbers.Amount;

/**
 * One of the two nodes of the direct-current side: they differ where a tracking or series regulator stands between bridge and
 * battery.
 */
public enum BusNode {
    /** behind the bridge: regulator's input, capacitor, diodes, and a dump load on the bridge's side. */
    BRIDGE,
    /** at the battery: its management and fuses, inverter, loads, and a dump load at its poles. */
    BATTERY;

    /** {@return the node's highest voltage in a situation that lasts, V} */
    public double lasting(BusSituation situation) {
        return this == BRIDGE ? situation.lastingVoltage() : situation.batteryVoltage();
    }

    /** {@return the node's highest voltage in a situation for a moment, V} */
    public Amount moment(BusSituation situation) {
        return this == BRIDGE ? situation.momentVoltage() : situation.batteryMoment();
    }

    /** {@return the node of a run or of a device in it; the bridge's where it joins both} */
    public static BusNode between(Design design, Place one, Place other) {
        if (is(one, other, Place.ALTERNATOR) || is(one, other, Place.RECTIFIER)) {
            return BRIDGE;
        }
        if (is(one, other, Place.DUMP_LOAD) && !is(one, other, Place.BATTERY)) {
            return of(design.dumpLoad());
        }
        return BATTERY;
    }

    /** {@return the node that feeds the dump load; the bridge's where the design has none or does not say} */
    public static BusNode of(@Nullable DumpLoad dump) {
        return dump != null && dump.side() == DumpSide.BATTERY ? BATTERY : BRIDGE;
    }

    private static boolean is(Place one, Place other, Place place) {
        return one == place || other == place;
    }
}
