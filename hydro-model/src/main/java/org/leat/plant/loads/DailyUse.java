package org.leat.plant.loads;

import java.util.Comparator;
import java.util.List;
import org.leat.electrics.EnergyBalance;

/**
 * What the loads take on a day of full use.
 *
 * @param loads each kind, in the design's order
 * @param inverterEfficiency at working load; one where nothing hangs on an inverter
 * @param standingPower of the inverter, day and night, W; zero without one
 */
public record DailyUse(List<LoadNumbers> loads, double inverterEfficiency, double standingPower) {

    private static final double DAY = 86_400;

    public DailyUse {
        loads = List.copyOf(loads);
    }

    /** {@return energy of a day at the battery's poles, the inverter's losses counted, J} */
    public double demand() {
        return energy().demand();
    }

    /** {@return mean power of a day at the battery's poles, W} */
    public double meanPower() {
        return demand() / DAY;
    }

    /** {@return energy of a day, as the balance of a day takes it} */
    public EnergyBalance.Use energy() {
        double bus = 0;
        double alternating = 0;
        for (LoadNumbers load : loads) {
            bus += load.atBus() ? load.energy() : 0;
            alternating += load.atBus() ? 0 : load.energy();
        }
        return new EnergyBalance.Use(bus, alternating, inverterEfficiency, standingPower);
    }

    /** {@return the packs that are charged at some time of the day} */
    public List<LoadNumbers> packs() {
        return loads.stream().filter(load -> load.pack() && load.time() > 0).toList();
    }

    /** {@return power of one of these loads at the battery's poles, W} */
    public double atPoles(LoadNumbers load) {
        return load.power() / efficiency(load);
    }

    /**
     * {@return the most the battery gives in a day, J at its poles, if all loads begin together and the turbine goes on}
     * However they are spread in the day, no more is drawn.
     *
     * @param generated W, day and night
     */
    public double mostDrawn(double generated) {
        List<LoadNumbers> byTime = loads.stream()
                .sorted(Comparator.comparingDouble(LoadNumbers::time))
                .toList();
        double running = standingPower - generated;
        for (LoadNumbers load : byTime) {
            running += load.together() / efficiency(load);
        }
        double drawn = 0;
        double from = 0;
        for (LoadNumbers load : byTime) {
            drawn += Math.max(0, running) * (load.time() - from);
            running -= load.together() / efficiency(load);
            from = load.time();
        }
        return drawn + Math.max(0, running) * (DAY - from);
    }

    private double efficiency(LoadNumbers load) {
        return load.atBus() ? 1 : inverterEfficiency;
    }
}
