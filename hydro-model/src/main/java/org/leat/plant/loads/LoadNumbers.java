package org.leat.plant.loads;

/**
 * Loads of one kind, in SI.
 *
 * @param name what they are
 * @param count how many
 * @param power of one, running, W
 * @param time each runs in a day, s
 * @param atBus whether they hang on the bus; else on the inverter
 * @param pack whether they are vehicle or tool packs that are charged
 */
public record LoadNumbers(String name, int count, double power, double time, boolean atBus, boolean pack) {

    /** {@return power of all, W} */
    public double together() {
        return power * count;
    }

    /** {@return energy of all in a day, J} */
    public double energy() {
        return together() * time;
    }
}
