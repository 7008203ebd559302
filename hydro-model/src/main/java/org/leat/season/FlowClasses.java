package org.leat.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.plant.solve.WaterSolver;
import org.leat.plant.solved.WaterSide;

/**
 * A year of a stream as a few classes of flow, for comparing many plants on one stream: days of the series sorted by flow and cut
 * into classes of as many days, each at the mean of what is left to the plant; a series with few different flows has one class for
 * each. Immutable.
 *
 * <p>Beside {@link Year}: no battery, so the plant is solved at the charge its design states; the nozzles suit the stream every day.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class FlowClasses {

    /** Classes at most. */
    public static final int MOST = 24;

    private static final double DAY = 86_400;

    /** Mean year of the calendar, s: a series of any length counts as its mean year. */
    private static final double YEAR = 365.2425 * DAY;

    private final double[] available;
    private final double[] seconds;

    private FlowClasses(double[] available, double[] seconds) {
        this.available = available;
        this.seconds = seconds;
    }

    /**
     * {@return the classes of a series}
     *
     * @param kept flow that stays in the stream, m³/s
     */
    public static FlowClasses of(FlowSeries series, double kept) {
        if (!(kept >= 0)) {
            throw new IllegalArgumentException("kept " + kept);
        }
        double[] left = Arrays.stream(series.flows())
                .map(flow -> Math.max(0, flow - kept))
                .sorted()
                .toArray();
        double day = YEAR / left.length;
        int different = (int) Arrays.stream(left).distinct().count();
        List<double[]> classes = new ArrayList<>();
        if (different <= MOST) {
            for (int i = left.length - 1; i >= 0; i--) {
                double[] last = classes.isEmpty() ? null : classes.get(classes.size() - 1);
                if (last != null && last[0] == left[i]) {
                    last[1] += day;
                } else {
                    classes.add(new double[] {left[i], day});
                }
            }
        } else {
            for (int c = MOST - 1; c >= 0; c--) {
                int from = (int) ((long) c * left.length / MOST);
                int to = (int) ((c + 1L) * left.length / MOST);
                double mean = Arrays.stream(left, from, to).average().orElse(0);
                classes.add(new double[] {mean, day * (to - from)});
            }
        }
        return new FlowClasses(
                classes.stream().mapToDouble(c -> c[0]).toArray(),
                classes.stream().mapToDouble(c -> c[1]).toArray());
    }

    /** {@return the classes of the stream that a site states; empty where it states none} */
    public static Optional<FlowClasses> stated(SiteNumbers site) {
        FlowSeries series = series(site);
        return series == null ? Optional.empty() : Optional.of(of(series, site.keptInStream()));
    }

    /** {@return a year of what a site states; null where it states nothing} */
    static @Nullable FlowSeries series(SiteNumbers site) {
        if (site.stream().isEmpty()) {
            return null;
        }
        List<StreamLevel> levels = new ArrayList<>(site.stream());
        levels.sort(Comparator.comparingDouble(StreamLevel::at));
        List<Double> flows = levels.stream().map(StreamLevel::flow).toList();
        return switch (levels.get(0).kind()) {
            case CONSTANT -> FlowSeries.constant(flows.get(0));
            case MONTH -> FlowSeries.ofMonths(flows);
            case EXCEEDED ->
                FlowSeries.ofDuration(levels.stream().map(StreamLevel::at).toList(), flows);
        };
    }

    /** {@return a year in which the pipe is always full} */
    public static FlowClasses alwaysFull() {
        return new FlowClasses(new double[] {Double.MAX_VALUE}, new double[] {YEAR});
    }

    /** {@return how many classes there are} */
    public int count() {
        return available.length;
    }

    /** {@return what a class leaves to the plant, m³/s; the wettest first} */
    public double available(int one) {
        return available[one];
    }

    /** {@return how long a class lasts in a year, s} */
    public double seconds(int one) {
        return seconds[one];
    }

    /**
     * {@return energy that a plant makes in the year, J at the battery's poles, each class on the nozzle set that gives most; nil
     * where the plant cannot be solved}
     */
    public double made(Plant plant) {
        double[] best = new double[available.length];
        if (!plant.unsolvable().isEmpty()) {
            return 0;
        }
        for (NozzleGroup set : plant.numbers().nozzles().sets()) {
            double full = Double.NaN;
            double fullFlow = Double.POSITIVE_INFINITY;
            for (int i = 0; i < available.length && available[i] > 0; i++) {
                double power;
                if (available[i] >= fullFlow) {
                    power = full;
                } else {
                    Running running = plant.solve().running(set, available[i]);
                    power = Math.max(0, running.operatingPoint().batteryPower());
                    if (running.water().fullPipe()) {
                        full = power;
                        fullFlow = running.water().flow();
                    }
                }
                best[i] = Math.max(best[i], power);
            }
        }
        double energy = 0;
        for (int i = 0; i < best.length; i++) {
            energy += best[i] * seconds[i];
        }
        return energy;
    }

    /**
     * {@return energy of the jets in the year, J, each class on the nozzle set whose jets have most} No plant with that water makes
     * more, whatever its machine.
     */
    public double ofJets(Plant plant) {
        if (!plant.unsolvable().isEmpty()) {
            return 0;
        }
        WaterSolver solver = new WaterSolver(plant.numbers());
        double energy = 0;
        double[] best = new double[available.length];
        for (NozzleGroup set : plant.numbers().nozzles().sets()) {
            for (int i = 0; i < available.length && available[i] > 0; i++) {
                WaterSide water = solver.solve(set, available[i]);
                best[i] = Math.max(best[i], water.jetPower());
            }
        }
        for (int i = 0; i < best.length; i++) {
            energy += best[i] * seconds[i];
        }
        return energy;
    }
}
