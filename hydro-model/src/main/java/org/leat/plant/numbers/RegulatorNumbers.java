package org.leat.plant.numbers;

import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.leat.design.RegulatorKind;

/**
 * Charge regulator, in SI.
 *
 * @param kind what it does when the battery is full; {@code NONE} where the design has none
 * @param windowFrom least input voltage at which it tracks, V; only read for a tracking one
 * @param windowTo greatest input voltage at which it tracks, V; only read for a tracking one
 * @param efficiency input to output; one unless it tracks
 * @param currentRating output, A
 * @param inputVoltageLimit V
 * @param equalisingVoltage set point of the whole bank, V; empty where it is not used
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record RegulatorNumbers(
        RegulatorKind kind,
        double windowFrom,
        double windowTo,
        double efficiency,
        Amount currentRating,
        Amount inputVoltageLimit,
        OptionalDouble equalisingVoltage)
        implements RegulatorNumbersBuilder.With {

    private static final String CURRENT = "/regulator/current-rating";
    private static final String INPUT = "/regulator/input-voltage-limit";

    /** {@return a tracking regulator with a window, without other limits} */
    public static RegulatorNumbers tracking(double windowFrom, double windowTo, double efficiency) {
        return unrated(RegulatorKind.TRACKING, windowFrom, windowTo, efficiency);
    }

    /**
     * {@return whether it stands between bridge and battery as a node of its own on either side} A tracking regulator converts
     * between the two; a series one is a switch, closed while it charges and open when the battery is full.
     */
    public boolean divides() {
        return kind == RegulatorKind.TRACKING || kind == RegulatorKind.SERIES;
    }

    /** {@return no regulator} */
    public static RegulatorNumbers none() {
        return unrated(RegulatorKind.NONE, 0, 0, 1);
    }

    private static RegulatorNumbers unrated(RegulatorKind kind, double from, double to, double efficiency) {
        return new RegulatorNumbers(
                kind, from, to, efficiency, Amount.notStated(CURRENT), Amount.notStated(INPUT), OptionalDouble.empty());
    }

    /** {@return the same regulator, what its input stands left out} */
    public RegulatorNumbers withoutInputLimit() {
        return withInputVoltageLimit(Amount.notStated(INPUT));
    }
}
