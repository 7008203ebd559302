package org.leat.electrics;

import org.leat.law.Answer;
import org.leat.law.Physical;

/**
 * Current that makes gas in a battery by its kind and its highest charge stage, mA for each Ah of capacity (A over A·s here):
 *
 * <pre>
 *                    float   boost   without voltage limit
 * vented lead          5      20      60
 * valve-regulated      1       8      15
 * nickel-cadmium       5      50      none published here
 * </pre>
 *
 * <p>Float and boost hold at 2.23, 2.27, 1.40 V and 2.40, 2.40, 1.55 V a cell, to about 40 °C. Equalising is a stage without
 * voltage limit: the gas follows the charging current then, and never is more than it. Source: IEC 62485-2 (EN 50272-2), table 1;
 * without limit EN 50272-3, for traction batteries (both read in reproductions).
 */
public final class GasCurrent {

    private static final double PER_HOUR = 1e-3 / 3600;

    private GasCurrent() {}

    /** How a cell keeps its water. */
    public enum Kind {
        /** flooded lead-acid. */
        VENTED(5, 20, 60),
        /** sealed lead-acid, gel or glass mat. */
        VALVE_REGULATED(1, 8, 15),
        /** vented nickel-cadmium. */
        NICKEL_CADMIUM(5, 50, Double.NaN);

        private final double floating;
        private final double boost;
        private final double unlimited;

        Kind(double floating, double boost, double unlimited) {
            this.floating = floating;
            this.boost = boost;
            this.unlimited = unlimited;
        }
    }

    /** The highest stage that a charger, or a turbine with its regulator, ever reaches. */
    public enum Stage {
        /** held at its float voltage. */
        FLOAT,
        /** held at its boost (absorption) voltage. */
        BOOST,
        /** driven on by current: equalising, or no regulator at all. */
        UNLIMITED
    }

    /** {@return gas current over capacity, A over A·s} {@link Answer.Outside} for nickel-cadmium without voltage limit. */
    public static Answer specific(Kind kind, Stage stage) {
        double milliamperes = switch (stage) {
            case FLOAT -> kind.floating;
            case BOOST -> kind.boost;
            case UNLIMITED -> kind.unlimited;
        };
        return Double.isNaN(milliamperes)
                ? Answer.outside("gas current without voltage limit", "published kinds", 0, 1, 1, "1")
                : Answer.of(milliamperes * PER_HOUR);
    }

    /**
     * {@return gas current of one string, A: the specific one times the capacity, A·s, but without voltage limit never more than
     * what charges it, A} Of a limited stage the greatest charging current does not count: it has fallen when the cell gasses.
     */
    public static Answer ofString(Kind kind, Stage stage, double capacity, double chargingCurrent) {
        Physical.positive("capacity", capacity);
        Physical.notNegative("chargingCurrent", chargingCurrent);
        Answer specific = specific(kind, stage);
        if (!(specific instanceof Answer.Value value)) {
            return specific;
        }
        double gas = value.value() * capacity;
        return Answer.of(stage == Stage.UNLIMITED ? Math.min(gas, chargingCurrent) : gas);
    }
}
