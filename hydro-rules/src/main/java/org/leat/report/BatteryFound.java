package org.leat.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javax.measure.quantity.ElectricResistance;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.readings.Channel;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.Observation;
import org.leat.readings.TakenReadings;

/**
 * The battery's resistance from volts at the poles and amps into it on two nozzle sets of one day: {@code R = ΔU/ΔI}, of the two sets
 * whose amps differ most. Each reading counts with its whole uncertainty, although a meter's scale is common to both: too wide
 * rather than too narrow. A charge in between moves the volts too; it is told that the two belong together.
 */
final class BatteryFound {

    private static final String PATH = "/battery/internal-resistance";
    private static final String FROM = "volts and amps at the battery on two nozzle sets";
    /** Standard uncertainty of a resistance that is worth to be written, a share; common practice. */
    private static final double KNOWN = 0.15;
    /** Agreement, in standard uncertainties. */
    private static final double AGREES = 2;
    /** Times what is stated or assumed, beyond which it is a slip: links and management make a few times of what cells have; common practice. */
    private static final double STRANGE = 10;

    /** Volts and amps of one nozzle set. */
    private record Charge(Observation volts, Observation amps) {}

    private final List<Charge> charges = new ArrayList<>();

    BatteryFound(TakenReadings taken) {
        for (Observation amps : taken.readings()) {
            Channel at = amps.channel();
            if (at.state() == LoadState.BUS && at.what() == ReadingKind.BATTERY_AMPS) {
                taken.readings().stream()
                        .filter(v -> v.channel().state() == LoadState.BUS
                                && v.channel().what() == ReadingKind.BATTERY_VOLTS
                                && v.channel().nozzles().equals(at.nozzles()))
                        .findFirst()
                        .ifPresent(volts -> charges.add(new Charge(volts, amps)));
            }
        }
    }

    /** What was found, or why it does not go in; both empty where nothing of it was read. */
    record Answer(Optional<Learned.Found> found, Optional<String> stays) {

        private static final Answer NOTHING = new Answer(Optional.empty(), Optional.empty());

        private static Answer stays(String why) {
            return new Answer(Optional.empty(), Optional.of(why));
        }
    }

    static String path() {
        return PATH;
    }

    /**
     * {@return what the readings tell}
     *
     * @param now resistance of the design, Ω
     * @param stated whether the design states it; else it assumes it
     */
    Answer resistance(double now, boolean stated) {
        if (charges.size() < 2) {
            return Answer.NOTHING;
        }
        Charge least = charges.get(0);
        Charge most = charges.get(0);
        for (Charge charge : charges) {
            least = charge.amps().value() < least.amps().value() ? charge : least;
            most = charge.amps().value() > most.amps().value() ? charge : most;
        }
        double amps = most.amps().value() - least.amps().value();
        double volts = most.volts().value() - least.volts().value();
        double ofAmps = Math.hypot(most.amps().standard(), least.amps().standard());
        double ofVolts = Math.hypot(most.volts().standard(), least.volts().standard());
        if (amps <= AGREES * ofAmps) {
            return Answer.NOTHING;
        }
        double found = volts / amps;
        double uncertain = Math.hypot(ofVolts / amps, found * ofAmps / amps);
        if (stated && Math.abs(found - now) <= AGREES * uncertain) {
            return Answer.NOTHING;
        }
        if (uncertain > KNOWN * Math.abs(found)) {
            return Answer.stays("a step of " + UsualUnits.show(amps, QuantityKind.CURRENT)
                    + " tells it to no better than ± "
                    + UsualUnits.show(AGREES * uncertain, QuantityKind.RESISTANCE)
                    + ": read the volts finer, or at sets further apart");
        }
        if (found <= 0) {
            return Answer.stays("more amps made no more volts at the poles: read the two sets one after the other");
        }
        if (found > STRANGE * now || found < now / STRANGE) {
            return Answer.stays(String.format(
                    Locale.ROOT,
                    "it would be %s, %.1f times what is %s: read at the poles themselves, the two sets one after the other",
                    UsualUnits.show(found, QuantityKind.RESISTANCE),
                    found / now,
                    stated ? "stated" : "assumed"));
        }
        double milli = new BigDecimal(1e3 * found).round(new MathContext(2)).doubleValue();
        return new Answer(
                Optional.of(new Learned.Found(PATH, Si.quantity(milli, "mΩ", ElectricResistance.class), FROM)),
                Optional.empty());
    }
}
