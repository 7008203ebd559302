package org.leat.plant.derive;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;
import org.leat.design.Gauging;
import org.leat.design.GrossHead;
import org.leat.design.StreamFlow;
import org.leat.hydraulics.Estimate;
import org.leat.hydraulics.WeightedMean;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.Si;

/** What the readings of a stream come to: the same numbers that a design with these readings would be solved with. */
public final class Gaugings {

    private static final double WATER_CELSIUS = 10;

    private Gaugings() {}

    /**
     * What one method's readings come to.
     *
     * @param value m³/s of flow or m of head, or why there is none
     * @param plusMinus half-width at 95 % confidence in the same unit; empty where the readings cannot tell
     * @param assumptions what had to be assumed
     */
    public record One(Amount value, OptionalDouble plusMinus, List<Assumption> assumptions) {

        public One {
            assumptions = List.copyOf(assumptions);
        }
    }

    /** {@return the flow of each gauging, m³/s, in their order; a year's flows are no gauging and give none} */
    public static List<One> flows(Gauging gauging) {
        List<One> flows = new ArrayList<>();
        for (StreamFlow readings : gauging.flow()) {
            Assume assume = new Assume(Map.of(), List.of());
            GaugingDerivation.Flow flow = GaugingDerivation.flow(readings, assume);
            flows.add(new One(flow.value(), flow.plusMinus(), assume.list()));
        }
        return flows;
    }

    /** {@return the head of each survey, m, in their order} Water in a standing pipe is taken at 10 °C unless stated. */
    public static List<One> heads(Gauging gauging) {
        double kelvin = Si.of(gauging.waterTemperature(), Celsius.toKelvin(WATER_CELSIUS));
        double celsius = Celsius.of(WaterNumbers.at(kelvin).temperature());
        List<One> heads = new ArrayList<>();
        for (GrossHead readings : gauging.head()) {
            Estimate head = GaugingDerivation.head(readings, celsius);
            OptionalDouble half = head.plusMinus();
            heads.add(
                    head.value() > 0
                            ? new One(
                                    Amount.of(head.value()),
                                    half.orElse(0) == 0 ? OptionalDouble.empty() : half,
                                    List.of())
                            : new One(
                                    Amount.missing("/head", "unknown/head-not-above-zero"),
                                    OptionalDouble.empty(),
                                    List.of()));
        }
        return heads;
    }

    /**
     * {@return one value from all whose uncertainty is known, weighted by it; null where there are fewer than two} Wider than
     * any one's uncertainty where they contradict each other.
     */
    public static @Nullable Estimate together(List<One> gaugings) {
        List<Estimate> known = new ArrayList<>();
        for (One one : gaugings) {
            if (one.value() instanceof Amount.Known value && one.plusMinus().isPresent()) {
                known.add(Estimate.of(value.value(), one.plusMinus().getAsDouble()));
            }
        }
        return known.size() < 2 ? null : WeightedMean.of(known);
    }

    /** {@return whether two gaugings differ by more than both their uncertainties explain} */
    public static boolean contradict(List<One> gaugings) {
        for (One a : gaugings) {
            for (One b : gaugings) {
                if (a.value() instanceof Amount.Known x
                        && b.value() instanceof Amount.Known y
                        && a.plusMinus().isPresent()
                        && b.plusMinus().isPresent()
                        && Math.abs(x.value() - y.value())
                                > Math.hypot(
                                        a.plusMinus().getAsDouble(),
                                        b.plusMinus().getAsDouble())) {
                    return true;
                }
            }
        }
        return false;
    }
}
