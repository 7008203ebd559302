package org.leat.pack.kit;

import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.Inverter;
import org.leat.design.Load;
import org.leat.design.LoadSupply;
import org.leat.electrics.EnergyBalance;
import org.leat.quantity.Si;

/**
 * What the loads take in a day.
 *
 * @param missing field that is not stated; null where nothing is missing
 * @param use energy of a day, at the bus and at the inverter
 */
public record DailyUse(@Nullable String missing, EnergyBalance.Use use) {

    private static final double HOUR = 3600;
    private static final EnergyBalance.Use NONE = new EnergyBalance.Use(0, 0, 1, 0);

    public static DailyUse of(Design design) {
        if (design.loads().isEmpty()) {
            return new DailyUse("/loads", NONE);
        }
        Inverter inverter = design.inverter();
        double bus = 0;
        double alternating = 0;
        for (int i = 0; i < design.loads().size(); i++) {
            Load load = design.loads().get(i);
            if (load.hoursPerDay() == null) {
                return new DailyUse(ElementPath.item("/loads", design.loads(), i) + "/hours-per-day", NONE);
            }
            double energy = power(load) * load.hoursPerDay() * HOUR;
            bus += load.supply() == LoadSupply.BUS ? energy : 0;
            alternating += load.supply() == LoadSupply.BUS ? 0 : energy;
        }
        if (inverter == null || (alternating > 0 && inverter.efficiency() == null)) {
            return alternating > 0
                    ? new DailyUse("/inverter/efficiency", NONE)
                    : new DailyUse(null, new EnergyBalance.Use(bus, 0, 1, 0));
        }
        return inverter.standingPower() == null
                ? new DailyUse("/inverter/standing-power", NONE)
                : new DailyUse(
                        null,
                        new EnergyBalance.Use(
                                bus, alternating, Si.of(inverter.efficiency(), 1), Si.of(inverter.standingPower())));
    }

    /** {@return power of all of a kind, W} */
    public static double power(Load load) {
        return Si.of(load.power()) * (load.count() == null ? 1 : load.count());
    }

    /**
     * {@return the most the battery gives in a day, J at its poles, if all loads begin together and the turbine goes on}
     * The loads must be known. However they are spread in the day, no more is drawn.
     *
     * @param generated W, day and night
     */
    public static double deepest(Design design, EnergyBalance.Use use, double generated) {
        List<Load> byTime = design.loads().stream()
                .sorted(Comparator.comparingDouble((Load load) -> Objects.requireNonNull(load.hoursPerDay())))
                .toList();
        double running = use.idlePower() - generated;
        for (Load load : byTime) {
            running += atPoles(load, use);
        }
        double drawn = 0;
        double from = 0;
        for (Load load : byTime) {
            double to = Objects.requireNonNull(load.hoursPerDay()) * HOUR;
            drawn += Math.max(0, running) * (to - from);
            running -= atPoles(load, use);
            from = to;
        }
        return drawn + Math.max(0, running) * (24 * HOUR - from);
    }

    private static double atPoles(Load load, EnergyBalance.Use use) {
        return power(load) / (load.supply() == LoadSupply.BUS ? 1 : use.inverterEfficiency());
    }
}
