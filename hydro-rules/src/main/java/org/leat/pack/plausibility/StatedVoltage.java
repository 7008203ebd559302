package org.leat.pack.plausibility;

import static org.leat.design.VoltageAs.PEAK;
import static org.leat.design.VoltageAs.RMS;
import static org.leat.design.VoltageBetween.BRIDGE_OUTPUT;
import static org.leat.design.VoltageBetween.LEADS;
import static org.leat.design.VoltageBetween.LEAD_AND_STAR_POINT;

import java.util.Optional;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.design.Alternator;
import org.leat.design.Connection;
import org.leat.design.OpenCircuit;
import org.leat.design.VoltageAs;
import org.leat.design.VoltageBetween;

/**
 * How open-circuit volts were read.
 *
 * @param as rms or peak
 * @param between which points
 */
record StatedVoltage(VoltageAs as, VoltageBetween between) {

    /** {@return how the design says it was, and where it does not, how it is taken; none behind a bridge} */
    static Optional<StatedVoltage> of(OpenCircuit stated) {
        return stated instanceof OpenCircuit.VoltsAtSpeed volts
                ? of(volts.as(), RMS, volts.between())
                : of(((OpenCircuit.SpeedPerVolt) stated).as(), PEAK, ((OpenCircuit.SpeedPerVolt) stated).between());
    }

    private static Optional<StatedVoltage> of(
            @Nullable VoltageAs as, VoltageAs leftOut, @Nullable VoltageBetween between) {
        VoltageAs read = as == null ? leftOut : as == RMS ? RMS : PEAK;
        return between == BRIDGE_OUTPUT
                ? Optional.empty()
                : Optional.of(new StatedVoltage(read, between == null ? LEADS : between));
    }

    /** {@return the readings it may be instead and that its tolerance does not cover; a delta has no star point} */
    Stream<StatedVoltage> others(Alternator alternator) {
        double tolerance = alternator.openCircuit() instanceof OpenCircuit.VoltsAtSpeed volts
                ? volts.voltage().plusMinusSi() / volts.voltage().si()
                : 0;
        boolean delta = alternator.winding().connection() == Connection.DELTA;
        return Stream.of(LEADS, LEAD_AND_STAR_POINT)
                .filter(points -> points == LEADS || !delta)
                .flatMap(points -> Stream.of(RMS, PEAK).map(kind -> new StatedVoltage(kind, points)))
                .filter(other -> !other.equals(this))
                .filter(other -> Math.abs(other.voltsOver(this) - 1) > tolerance);
    }

    /** {@return volts of the machine if it was read so, over those if it was read as another} */
    double voltsOver(StatedVoltage other) {
        return linePeak() / other.linePeak();
    }

    /** Peak between leads of one volt so read. */
    private double linePeak() {
        return (as == RMS ? Math.sqrt(2) : 1) * (between == LEAD_AND_STAR_POINT ? Math.sqrt(3) : 1);
    }
}
