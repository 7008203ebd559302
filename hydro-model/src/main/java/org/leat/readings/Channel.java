package org.leat.readings;

import org.apiguardian.api.API;

/**
 * One reading that can be taken.
 *
 * @param nozzles name of the nozzle set; "" with every nozzle shut
 * @param state what the alternator works on
 * @param what is read
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Channel(String nozzles, LoadState state, ReadingKind what) {

    /** {@return the channel of the standing pressure} */
    public static Channel standing() {
        return new Channel("", LoadState.SHUT, ReadingKind.STANDING_PRESSURE);
    }

    /** {@return whether such a thing can be read in such a state} */
    public static boolean exists(LoadState state, ReadingKind what) {
        return switch (state) {
            case SHUT -> what == ReadingKind.STANDING_PRESSURE;
            case OPEN ->
                switch (what) {
                    case RUNNING_PRESSURE,
                            MIDWAY_PRESSURE,
                            FLOW,
                            INTAKE_FLOW,
                            SPEED,
                            FREQUENCY,
                            LEAD_VOLTS,
                            LEAD_SPREAD -> true;
                    default -> false;
                };
            case DUMP ->
                switch (what) {
                    case RUNNING_PRESSURE, MIDWAY_PRESSURE, FLOW, INTAKE_FLOW, SPEED, FREQUENCY, BRIDGE_VOLTS -> true;
                    default -> false;
                };
            case BUS -> what != ReadingKind.STANDING_PRESSURE && what != ReadingKind.LEAD_SPREAD;
        };
    }

    int slot() {
        return slot(state, what);
    }

    @SuppressWarnings("EnumOrdinal") // places in an array, never stored
    static int slot(LoadState state, ReadingKind what) {
        return state.ordinal() * WIDTH + what.ordinal();
    }

    private static final int WIDTH = ReadingKind.values().length;

    /** Slots in all. */
    static final int SLOTS = LoadState.values().length * WIDTH;
}
