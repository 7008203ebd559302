package org.leat.electrics;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import org.leat.law.Physical;

/**
 * When to plug in each of several packs so that their chargers together never draw more than the plant can spare: the pack that
 * charges longest first, the next as soon as there is power for it. For one charger after another this is the shortest there is;
 * with several at once it is a good plan, not always the very shortest (list scheduling, R. L. Graham, SIAM J. Appl. Math. 17 (1969)
 * 416, is within twice of it).
 *
 * @param slots one of each pack that can be charged, by start and then by name
 * @param tooStrong names of the packs whose charger alone draws more than can be spared
 */
public record VehicleChargingPlan(List<Slot> slots, List<String> tooStrong) {

    /**
     * A pack to be charged.
     *
     * @param name what to call it
     * @param power its charger draws, W
     * @param time it takes, s
     */
    public record Pack(String name, double power, double time) {
        public Pack {
            Physical.positive("charger power", power);
            Physical.positive("charging time", time);
        }
    }

    /**
     * When a pack is plugged in.
     *
     * @param pack which
     * @param start s from the beginning
     */
    public record Slot(Pack pack, double start) {
        /** {@return s from the beginning} */
        public double end() {
            return start + pack.time();
        }
    }

    public VehicleChargingPlan {
        slots = List.copyOf(slots);
        tooStrong = List.copyOf(tooStrong);
    }

    /** {@return the plan for packs and a power that can be spared, W} */
    public static VehicleChargingPlan of(List<Pack> packs, double spare) {
        Physical.notNegative("spare power", spare);
        List<Pack> waiting = packs.stream()
                .filter(pack -> pack.power() <= spare)
                .sorted(Comparator.comparingDouble(Pack::time).reversed().thenComparing(Pack::name))
                .collect(Collectors.toCollection(ArrayList::new));
        List<Slot> slots = new ArrayList<>();
        double now = 0;
        while (!waiting.isEmpty()) {
            plugIn(waiting, slots, spare, now);
            double at = now;
            now = slots.stream()
                    .mapToDouble(Slot::end)
                    .filter(end -> end > at)
                    .min()
                    .orElse(at);
        }
        slots.sort(Comparator.comparingDouble(Slot::start)
                .thenComparing(slot -> slot.pack().name()));
        return new VehicleChargingPlan(
                slots,
                packs.stream()
                        .filter(pack -> pack.power() > spare)
                        .map(Pack::name)
                        .sorted()
                        .toList());
    }

    private static void plugIn(List<Pack> waiting, List<Slot> slots, double spare, double now) {
        for (Pack pack : List.copyOf(waiting)) {
            if (power(slots, now) + pack.power() <= spare) {
                slots.add(new Slot(pack, now));
                waiting.remove(pack);
            }
        }
    }

    private static double power(List<Slot> slots, double time) {
        return slots.stream()
                .filter(slot -> slot.start() <= time && time < slot.end())
                .mapToDouble(slot -> slot.pack().power())
                .sum();
    }

    /** {@return power drawn at a time, W} */
    public double powerAt(double time) {
        return power(slots, time);
    }

    /** {@return time until the last pack is full, s} */
    public double length() {
        return slots.stream().mapToDouble(Slot::end).max().orElse(0);
    }
}
