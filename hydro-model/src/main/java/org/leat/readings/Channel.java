package org.leat.readings;

import org.apiguardian.api.API;
import org.leat.quantity.QuantityKind;

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

    /** What the alternator works on while something is read. */
    public enum LoadState {
        /** Every nozzle shut, the pipe full. */
        SHUT,
        /** Nothing connected to the alternator's leads: the wheel runs away. */
        OPEN,
        /** The dump load alone on the bus, the battery disconnected. */
        DUMP,
        /** The bus with its battery. */
        BUS
    }

    /**
     * What can be read on a plant, with the uncertainty that a usual instrument has where none is told (common practice; standard
     * uncertainty, one sigma).
     */
    public enum ReadingKind {
        /** At the gauge by the nozzles, every nozzle shut. */
        STANDING_PRESSURE(QuantityKind.PRESSURE, 0.01, 500),
        /** At the gauge by the nozzles, water running. */
        RUNNING_PRESSURE(QuantityKind.PRESSURE, 0.01, 500),
        /** At a gauge half-way down the pipe, water running. */
        MIDWAY_PRESSURE(QuantityKind.PRESSURE, 0.01, 500),
        /** Of the nozzles together, by bucket and watch below the wheel. */
        FLOW(QuantityKind.VOLUME_FLOW, 0.02, 1e-6),
        /** Into the pipe at the intake. */
        INTAKE_FLOW(QuantityKind.VOLUME_FLOW, 0.03, 1e-6),
        /** Of the wheel, by an optical counter. */
        SPEED(QuantityKind.ROTATIONAL_SPEED, 0.003, 0.05),
        /** Between two leads of the alternator. */
        FREQUENCY(QuantityKind.FREQUENCY, 0.003, 0.02),
        /** Alternating, between two leads of the alternator, rms: the largest of the pairs. */
        LEAD_VOLTS(QuantityKind.VOLTAGE, 0.008, 0.05),
        /** Largest of the three pairs less the least, over the largest. */
        LEAD_SPREAD(QuantityKind.RATIO, 0, 0.01),
        /** Direct, behind the bridge. */
        BRIDGE_VOLTS(QuantityKind.VOLTAGE, 0.004, 0.03),
        /** Direct, at the battery's poles. */
        BATTERY_VOLTS(QuantityKind.VOLTAGE, 0.004, 0.03),
        /** Direct, behind the bridge, before anything branches off. */
        BRIDGE_AMPS(QuantityKind.CURRENT, 0.012, 0.05),
        /** Direct, into the battery; below nil where it gives. */
        BATTERY_AMPS(QuantityKind.CURRENT, 0.012, 0.05),
        /** Alternating, of one lead, rms. */
        LEAD_AMPS(QuantityKind.CURRENT, 0.015, 0.05),
        /** Of the winding, after hours of running. */
        WINDING_TEMPERATURE(QuantityKind.TEMPERATURE, 0, 2);

        private final QuantityKind kind;
        private final double share;
        private final double least;

        ReadingKind(QuantityKind kind, double share, double least) {
            this.kind = kind;
            this.share = share;
            this.least = least;
        }

        /** {@return what its number measures} */
        public QuantityKind kind() {
            return kind;
        }

        /**
         * {@return the standard uncertainty of a usual instrument, SI} Common practice: a gauge of 1 % of what it shows, an optical
         * counter of 0.3 %, a hand meter of 0.4 % on direct and 0.8 % on alternating volts, a clamp of 1.2 to 1.5 %, bucket and watch 2 %.
         *
         * @param value read, SI
         */
        public double usualUncertainty(double value) {
            double ofValue = share * value;
            return Math.sqrt(ofValue * ofValue + least * least);
        }
    }
}
