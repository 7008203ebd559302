package org.leat.readings;

import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.QuantityKind;

/**
 * One step of a first start.
 *
 * @param kind of step
 * @param nozzles name of the set open; "" where none is
 * @param lines what is read
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record StartStep(Kind kind, String nozzles, List<Line> lines) {
    public StartStep {
        lines = List.copyOf(lines);
    }

    /** The steps, in the order a careful person takes. */
    public enum Kind {
        /** the pipe filled slowly, the air let out. */
        FILL,
        /** the pipe under its test pressure. */
        PRESSURE_TEST,
        /** the full pipe standing, every nozzle shut. */
        STANDING,
        /** the smallest nozzle, nothing connected to the alternator's leads. */
        OPEN_LEADS,
        /** dump load and second guard, the battery disconnected, the smallest nozzle. */
        DUMP_LOAD,
        /** the smallest nozzle on the bus. */
        FIRST_ON_BUS,
        /** a larger nozzle on the bus. */
        NEXT_ON_BUS,
        /** hours of running, with what gets warm. */
        HOURS
    }

    /**
     * One thing that is read.
     *
     * @param name of what is read: that of a {@link ReadingKind}, or of what is only done here
     * @param kind what its number measures
     * @param channel the reading it becomes; null where it is only done here
     * @param expected SI
     * @param low least value as expected, SI: uncertainty of the design and of a usual instrument together, 95 %
     * @param high greatest value as expected, SI
     * @param stop above which the water is shut, SI; empty where no rule limits it
     * @param rule whose limit that is; "" without one
     */
    public record Line(
            String name,
            QuantityKind kind,
            @Nullable Channel channel,
            double expected,
            double low,
            double high,
            OptionalDouble stop,
            String rule) {

        /** {@return whether a sound plant itself may read more than the limit: then it is no plant to be started} */
        public boolean beyond() {
            return stop.isPresent() && expected > stop.getAsDouble();
        }
    }
}
