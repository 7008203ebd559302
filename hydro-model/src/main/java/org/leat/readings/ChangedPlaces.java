package org.leat.readings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.readings.Channel.ReadingKind;

/**
 * Two readings of one line that changed places, as where two columns of a table were filled in the wrong way round: each is far from
 * what was expected of it and is, as people write it, what was expected of the other.
 */
final class ChangedPlaces {

    /** Standard uncertainties from which a reading is far off. */
    static final double FAR = 6;
    /** How near what was expected of the other, a share beside three standard uncertainties. */
    private static final double NEAR = 0.05;
    /** So many times apart, no fault of a plant moves two numbers to each other's place. Common practice. */
    private static final double NO_FAULT = 3;

    private final Expectations expected;

    ChangedPlaces(Expectations expected) {
        this.expected = expected;
    }

    /** {@return the reading of the same line with which one changed places; null where there is none} */
    @Nullable
    Observation with(Observation seen, List<Observation> all) {
        for (Observation other : all) {
            if (line(seen).equals(line(other)) && each(seen, other)) {
                return other;
            }
        }
        return null;
    }

    /** {@return those of the readings that changed places so far apart that nothing else explains it} */
    List<Observation> certain(List<Observation> all) {
        List<Observation> certain = new ArrayList<>();
        for (Observation seen : all) {
            Observation other = with(seen, all);
            if (other != null) {
                double times = wanted(seen) / wanted(other);
                if (times >= NO_FAULT || times <= 1 / NO_FAULT) {
                    certain.add(seen);
                }
            }
        }
        return certain;
    }

    private static String line(Observation seen) {
        return seen.path().substring(0, seen.path().indexOf(']') + 1);
    }

    private boolean each(Observation one, Observation other) {
        return !line(one).isEmpty()
                && counts(one)
                && counts(other)
                && one.channel().what() != other.channel().what()
                && far(one)
                && far(other)
                && inPlaceOf(one, other)
                && inPlaceOf(other, one);
    }

    private boolean counts(Observation seen) {
        ReadingKind what = seen.channel().what();
        return what != ReadingKind.LEAD_SPREAD
                && what != ReadingKind.WINDING_TEMPERATURE
                && expected.known(seen.channel())
                && expected.value(seen.channel()) > 0;
    }

    private boolean far(Observation seen) {
        double standard = Math.hypot(seen.standard(), expected.uncertainty(seen.channel()));
        return Math.abs(seen.value() - expected.value(seen.channel())) > FAR * standard;
    }

    /** Whether one, as it was written, is what was expected of the other. */
    private boolean inPlaceOf(Observation one, Observation other) {
        double unit = unit(other.channel().what());
        double wanted = wanted(other);
        double spread = NEAR * wanted + 3 * expected.uncertainty(other.channel()) / unit;
        return Math.abs(one.value() / unit(one.channel().what()) - wanted) < spread;
    }

    private double wanted(Observation seen) {
        return expected.value(seen.channel()) / unit(seen.channel().what());
    }

    /** The unit in which people write it. */
    private static double unit(ReadingKind what) {
        return switch (what) {
            case STANDING_PRESSURE, RUNNING_PRESSURE, MIDWAY_PRESSURE -> 1e5;
            case FLOW, INTAKE_FLOW -> 1e-3;
            case SPEED -> Math.PI / 30;
            case FREQUENCY,
                    LEAD_VOLTS,
                    BRIDGE_VOLTS,
                    BATTERY_VOLTS,
                    BRIDGE_AMPS,
                    BATTERY_AMPS,
                    LEAD_AMPS,
                    LEAD_SPREAD,
                    WINDING_TEMPERATURE -> 1;
        };
    }
}
