package org.leat.report;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.leat.readings.Channel;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.Expectations;
import org.leat.readings.Observation;

/**
 * A line that was read on the bus, with no amps into the battery, where speed and volts are those of the dump load alone or of open
 * leads: a fuse, a switch or a plug is open. That is no fault of a part whose size could be fitted, but the state of the plant.
 */
final class OpenBatteryCircuit {

    /** Standard uncertainties within which a number is as expected, and a share of the amps that is none. */
    private static final double AS_EXPECTED = 3;

    private static final double NONE = 0.02;
    private static final Set<ReadingKind> TELL =
            Set.of(ReadingKind.SPEED, ReadingKind.FREQUENCY, ReadingKind.LEAD_VOLTS, ReadingKind.BRIDGE_VOLTS);

    private final Expectations expected;

    OpenBatteryCircuit(Expectations expected) {
        this.expected = expected;
    }

    /** {@return what amps of nothing mean, where the other readings of their nozzle set tell it; empty for any other reading} */
    Optional<String> told(Observation amps, List<Observation> all) {
        Channel at = amps.channel();
        if (at.what() != ReadingKind.BATTERY_AMPS
                || at.state() != LoadState.BUS
                || Math.abs(amps.value()) > NONE * expected.value(at) + 2 * amps.standard()
                || !(expected.value(at) > AS_EXPECTED * expected.uncertainty(at))) {
            return Optional.empty();
        }
        List<Observation> others = all.stream()
                .filter(seen -> TELL.contains(seen.channel().what())
                        && seen.channel().state() == LoadState.BUS
                        && seen.channel().nozzles().equals(at.nozzles()))
                .toList();
        if (isThat(LoadState.DUMP, others)) {
            return Optional.of(
                    "No amps, and the rest as on the dump load alone: is the battery's fuse blown, its breaker or switch open?");
        }
        return isThat(LoadState.OPEN, others)
                ? Optional.of(
                        "No amps, and the rest as with leads open: shut the water; is a plug, a lead or the bridge's"
                                + " output off, a fuse blown and the dump load dead?")
                : Optional.empty();
    }

    /** Whether all readings are those of another state, and of it rather than of the bus. */
    private boolean isThat(LoadState state, List<Observation> others) {
        double there = 0;
        double here = 0;
        int told = 0;
        for (Observation seen : others) {
            Channel other =
                    new Channel(seen.channel().nozzles(), state, seen.channel().what());
            if (Channel.exists(state, other.what()) && expected.known(other)) {
                double off = off(seen, other);
                if (Math.abs(off) > AS_EXPECTED) {
                    return false;
                }
                told++;
                there += off * off;
                here += off(seen, seen.channel()) * off(seen, seen.channel());
            }
        }
        return told > 0 && there < here;
    }

    private double off(Observation seen, Channel as) {
        return (seen.value() - expected.value(as)) / Math.hypot(seen.standard(), expected.uncertainty(as));
    }
}
