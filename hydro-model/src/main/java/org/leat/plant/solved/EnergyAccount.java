package org.leat.plant.solved;

import java.util.List;
import org.apiguardian.api.API;

/**
 * Power at every stage from the stream to the battery, and what took the difference. Each entry's power is the one
 * before less its loss.
 *
 * @param entries from the water to what the battery stores
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record EnergyAccount(List<Entry> entries) {
    public EnergyAccount {
        entries = List.copyOf(entries);
    }

    /** A place where power is counted. */
    public enum Stage {
        /** of the flow over the gross head. */
        WATER,
        /** of the flow over the net head, at the nozzles; lost: screen, friction, fittings, branches. */
        NOZZLE,
        /** kinetic, of the jets; lost: in the nozzles. */
        JET,
        /** at the runner's shaft; lost: in buckets, leaving water, bearings and windage. */
        SHAFT,
        /** turned into electricity; lost: iron and friction of the alternator. */
        AIR_GAP,
        /** at the alternator's terminals; lost: copper. */
        TERMINALS,
        /** behind the bridge; lost: cable to the bridge and diodes. */
        DIRECT_CURRENT,
        /** at the regulator's input; lost: cable. */
        REGULATOR,
        /** at the battery's poles; lost: regulator and cable. */
        BATTERY,
        /** in the battery; lost: its internal resistance. */
        STORED
    }

    /**
     * One stage.
     *
     * @param stage where
     * @param power that arrives here, W
     * @param lost on the way from the stage before, W; zero for the first
     */
    public record Entry(Stage stage, double power, double lost) {}

    /** {@return the power that arrives at a stage, W} */
    public double at(Stage stage) {
        return entry(stage).power();
    }

    /** {@return the power lost on the way to a stage, W} */
    public double lostBefore(Stage stage) {
        return entry(stage).lost();
    }

    /** {@return the share of the stage before that arrives; one where nothing comes} */
    public double efficiency(Stage stage) {
        Entry here = entry(stage);
        double before = here.power() + here.lost();
        return before > 0 ? here.power() / before : 1;
    }

    private Entry entry(Stage stage) {
        for (Entry entry : entries) {
            if (entry.stage() == stage) {
                return entry;
            }
        }
        throw new IllegalStateException("not counted: " + stage);
    }
}
