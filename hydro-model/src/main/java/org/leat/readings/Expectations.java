package org.leat.readings;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.readings.Channel.LoadState;

/**
 * What a sound plant lets its builder read on every nozzle set, and how well that is known: the tolerances of building, each moved by
 * itself and solved again, and what the model leaves out.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Expectations {

    private final Plant plant;
    private final List<NozzleGroup> sets;
    private final List<Expected> bySet = new ArrayList<>();

    /**
     * Of one nozzle set.
     *
     * @param values by slot
     * @param moved by tolerance and slot: what one standard uncertainty of it moves
     */
    @SuppressWarnings("ArrayRecordComponent") // numbers that are only read
    record Expected(double[] values, double[][] moved) {}

    private Expectations(Plant plant, List<NozzleGroup> sets) {
        this.plant = plant;
        this.sets = List.copyOf(sets);
        List<Plant> off = Offsets.of(plant);
        for (NozzleGroup set : sets) {
            double[] values = ReadingModel.of(Condition.of(plant), set);
            double[][] moved = new double[off.size()][];
            for (int b = 0; b < off.size(); b++) {
                moved[b] = Offsets.sensitivity(values, ReadingModel.of(Condition.of(off.get(b)), set));
            }
            bySet.add(new Expected(values, moved));
        }
    }

    /**
     * {@return what is expected of a plant on each of its nozzle sets}
     *
     * @throws IllegalArgumentException where the plant cannot be solved
     */
    public static Expectations of(Plant plant) {
        return of(plant, plant.numbers().nozzles().sets());
    }

    /** {@return what is expected of a plant on some of its nozzle sets} Throws as {@link #of(Plant)}. */
    public static Expectations of(Plant plant, List<NozzleGroup> sets) {
        if (!plant.unsolvable().isEmpty() || plant.solve().running().isEmpty()) {
            throw new IllegalArgumentException("the plant cannot be solved");
        }
        return new Expectations(plant, sets);
    }

    /** {@return the plant as designed} */
    public Plant plant() {
        return plant;
    }

    /** {@return the nozzle sets} */
    public List<NozzleGroup> sets() {
        return sets;
    }

    /** {@return the place of a nozzle set by its name; −1 where there is none of that name} */
    public int indexOf(String nozzles) {
        for (int i = 0; i < sets.size(); i++) {
            if (sets.get(i).name().equals(nozzles)) {
                return i;
            }
        }
        return -1;
    }

    Expected at(int set) {
        return bySet.get(set);
    }

    /** {@return whether the plant tells what is read there} */
    public boolean known(Channel channel) {
        return Channel.exists(channel.state(), channel.what()) && Double.isFinite(value(channel));
    }

    /** {@return what a sound plant lets one read, SI; not a number where it does not tell} */
    public double value(Channel channel) {
        return bySet.get(place(channel)).values()[channel.slot()];
    }

    /** {@return standard uncertainty of what is expected, by the tolerances of building and what the model leaves out, SI} */
    public double uncertainty(Channel channel) {
        double square = 0;
        for (double[] moved : bySet.get(place(channel)).moved()) {
            square += moved[channel.slot()] * moved[channel.slot()];
        }
        double model = modelUncertainty(channel, value(channel));
        return Math.sqrt(square + model * model);
    }

    int place(Channel channel) {
        if (channel.state() == LoadState.SHUT) {
            return 0;
        }
        int at = indexOf(channel.nozzles());
        if (at < 0) {
            throw new IllegalArgumentException("no nozzle set " + channel.nozzles());
        }
        return at;
    }

    /** {@return what the model itself may be off, standard, SI} The air's temperature on the day, the shape of clipped volts. */
    static double modelUncertainty(Channel channel, double value) {
        return switch (channel.what()) {
            case LEAD_VOLTS -> (channel.state() == LoadState.BUS ? LeadVolts.SHAPE : 0.003) * Math.abs(value);
            case WINDING_TEMPERATURE -> 10;
            case LEAD_SPREAD -> 0.01;
            case BRIDGE_AMPS, BATTERY_AMPS, LEAD_AMPS -> Math.sqrt(1e-4 * value * value + 4e-4);
            case SPEED, FREQUENCY, FLOW, INTAKE_FLOW -> 0.004 * Math.abs(value);
            default -> 0.002 * Math.abs(value);
        };
    }
}
