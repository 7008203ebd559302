package org.leat.plant.derive;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.plant.loads.DailyUse;
import org.leat.plant.loads.LoadNumbers;
import org.leat.quantity.Si;

/** What a design's loads take in a day. Nothing is assumed: where a field is not stated, there is no daily use. */
public final class LoadDerivation {

    private static final double HOUR = 3600;

    private LoadDerivation() {}

    /** {@return path of the first field without which the use of a day is not known; empty where it is} */
    public static Optional<String> missing(Design design) {
        if (design.loads().isEmpty()) {
            return Optional.of("/loads");
        }
        for (int i = 0; i < design.loads().size(); i++) {
            if (design.loads().get(i).hoursPerDay() == null) {
                return Optional.of(ElementPath.item("/loads", design.loads(), i) + "/hours-per-day");
            }
        }
        Inverter inverter = design.inverter();
        boolean converted = design.loads().stream().anyMatch(load -> load.supply() != LoadSupply.BUS && time(load) > 0);
        if (converted && (inverter == null || inverter.efficiency() == null)) {
            return Optional.of("/inverter/efficiency");
        }
        return inverter != null && inverter.standingPower() == null
                ? Optional.of("/inverter/standing-power")
                : Optional.empty();
    }

    /** {@return the use of a day} Nothing is {@link #missing}, else NullPointerException. */
    public static DailyUse of(Design design) {
        List<LoadNumbers> loads =
                design.loads().stream().map(LoadDerivation::numbers).toList();
        Inverter inverter = design.inverter();
        return inverter == null
                ? new DailyUse(loads, 1, 0)
                : new DailyUse(
                        loads,
                        Si.of(inverter.efficiency(), 1),
                        Si.of(Objects.requireNonNull(inverter.standingPower())));
    }

    private static LoadNumbers numbers(Load load) {
        int count = load.count() == null ? 1 : load.count();
        return new LoadNumbers(
                load.name(),
                count,
                Si.of(load.power()),
                time(load),
                load.supply() == LoadSupply.BUS,
                load.pack() != null);
    }

    private static double time(Load load) {
        return Objects.requireNonNull(load.hoursPerDay()) * HOUR;
    }
}
