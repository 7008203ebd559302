package org.leat.plant.numbers;

import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.ShutOff;

/**
 * The penstock, in SI.
 *
 * @param sections from the intake down; at least one
 * @param screenLoss head lost at the screen over flow squared, m/(m³/s)²; zero where no screen is stated
 * @param fittingsRating working pressure of the weakest joint, valve or clamp at the hottest wall, Pa
 * @param inletClosingTime of a valve at the intake, s; empty where none is stated
 * @param ventBelowValve whether a vent sits below that valve; false where that is not stated, null without a vent or
 *     with one that may freeze shut
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
public record PenstockNumbers(
        List<SectionNumbers> sections,
        double screenLoss,
        Amount fittingsRating,
        OptionalDouble inletClosingTime,
        @Nullable Boolean ventBelowValve)
        implements PenstockNumbersBuilder.With {
    public PenstockNumbers {
        sections = List.copyOf(sections);
    }

    /** {@return the length of all sections, m} */
    public double length() {
        double sum = 0;
        for (SectionNumbers s : sections) {
            sum += s.length();
        }
        return sum;
    }

    /** {@return the last section, at the nozzles} */
    public SectionNumbers last() {
        return sections.get(sections.size() - 1);
    }

    /**
     * A valve that stops the water, in SI.
     *
     * @param kind of valve; of a kind that is not stated the one that stops the flow in the least of its travel
     * @param closingTime of its whole travel by hand, s
     * @param bore m
     * @param path of the closing time in the design; null where it is taken, not stated
     */
    public record ValveNumbers(
            ShutOff kind,
            double closingTime,
            double bore,
            @Nullable String path) {}
}
