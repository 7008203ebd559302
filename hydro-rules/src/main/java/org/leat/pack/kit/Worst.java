package org.leat.pack.kit;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.OperatingPoint;

/** The situation in which something is greatest or least: one finding for one fault, not one for each nozzle set. */
public final class Worst {

    private Worst() {}

    private static final Comparator<Outcome> LEAST_MARGIN = Comparator.comparing(
            Outcome::comparison, Comparator.nullsFirst(Comparator.comparingDouble(Comparison::margin)));

    /** {@return the first situation with the greatest value; the list is not empty} */
    public static <S> S most(List<S> situations, ToDoubleFunction<S> value) {
        S worst = situations.get(0);
        for (S situation : situations) {
            if (value.applyAsDouble(situation) > value.applyAsDouble(worst)) {
                worst = situation;
            }
        }
        return worst;
    }

    /** {@return the first situation with the least value; the list is not empty} */
    public static <S> S least(List<S> situations, ToDoubleFunction<S> value) {
        return most(situations, situation -> -value.applyAsDouble(situation));
    }

    /** {@return running on the nozzle set on which a number of the operating point is greatest; the plant is solved} */
    public static Running running(Judgement j, ToDoubleFunction<OperatingPoint> value) {
        return most(j.solved().running(), running -> value.applyAsDouble(running.operatingPoint()));
    }

    /** {@return the first situation whose value comes last in an order; the list is not empty} */
    public static <S, V> S last(List<S> situations, Function<S, V> value, Comparator<V> order) {
        return Collections.max(situations, Comparator.comparing(value, order));
    }

    /** {@return the first answer with the least margin; one without a comparison before all others} */
    public static Outcome outcome(List<Outcome> outcomes) {
        return Collections.min(outcomes, LEAST_MARGIN);
    }
}
