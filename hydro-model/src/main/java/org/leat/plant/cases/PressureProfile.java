package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.solved.Surge;
import org.leat.plant.solved.WaterSide.NodePressure;

/**
 * Pressures along the penstock: standing, running with the nozzles as built, and in the stops that press and that suck most, on
 * whichever nozzle set those are.
 *
 * @param highestDuring id of the stop at the nozzles that presses most; null where no wave speed is known
 * @param lowestDuring id of the stop that sucks most; null where no wave speed is known
 * @param rejoined whether the highest pressure is that of the water column as it rejoins after it has parted
 * @param parts why the extremes are not the last word: the water column parts in one of the two; null where it holds
 * @param points at the intake and at each section's end, from the intake down
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record PressureProfile(
        @Nullable String highestDuring,
        @Nullable String lowestDuring,
        boolean rejoined,
        Amount.@Nullable Unknown parts,
        List<Point> points) {
    /** Of a plant that could not be solved. */
    public static final PressureProfile NONE = new PressureProfile(null, null, false, null, List.of());

    public PressureProfile {
        points = List.copyOf(points);
    }

    /**
     * One point.
     *
     * @param at {@code intake}, or the name of the section that ends here
     * @param distance along the pipe from the intake, m
     * @param elevation above the nozzle axis, m
     * @param standing pressure with all nozzles shut, Pa
     * @param running pressure, Pa
     * @param highest pressure in the stop that presses most, Pa
     * @param lowest pressure in the stop that sucks most, Pa; unknown where the column parts
     * @param ratingHot of the section that ends here, of the first at the intake, at its hottest wall, Pa
     */
    public record Point(
            String at,
            double distance,
            double elevation,
            double standing,
            double running,
            Amount highest,
            Amount lowest,
            Amount ratingHot) {}

    /** {@return the profile} Empty where nothing could be solved. */
    static PressureProfile of(Cases cases, PlantNumbers numbers) {
        if (cases.running().isEmpty()) {
            return NONE;
        }
        Running built = cases.running().get(0);
        Closing pressing = null;
        Closing sucking = null;
        Amount unknown = Amount.of(0);
        for (Closing stop : cases.closing()) {
            Surge surge = stop.surge();
            if (surge == null) {
                unknown = stop.criticalTime();
                continue;
            }
            if (!stop.cause().atIntake()
                    && (pressing == null || Amount.UNKNOWN_LAST.compare(top(stop), top(pressing)) > 0)) {
                pressing = stop;
            }
            if (sucksMore(surge, sucking)) {
                sucking = stop;
            }
        }
        List<Point> points = new ArrayList<>();
        for (int i = 0; i <= numbers.penstock().sections().size(); i++) {
            NodePressure standing = cases.shut().nodes().get(i);
            points.add(new Point(
                    standing.at(),
                    standing.distance(),
                    standing.elevation(),
                    standing.pressure(),
                    built.water().nodes().get(i).pressure(),
                    pressing == null ? unknown : highest(pressing, cases.shut(), i),
                    sucking == null ? unknown : lowest(sucking, i),
                    numbers.penstock().sections().get(Math.max(0, i - 1)).ratingHot()));
        }
        Amount.Unknown parts = pressing == null ? null : unknown(pressing);
        return new PressureProfile(
                pressing == null ? null : pressing.id(),
                sucking == null ? null : sucking.id(),
                pressing != null && rejoined(pressing),
                parts != null || sucking == null ? parts : sucking.parts(),
                points);
    }

    /** Whether what makes the highest pressure of a stop anywhere is a rejoined column. */
    private static boolean rejoined(Closing stop) {
        Amount top = top(stop);
        return places(stop)
                .mapToObj(stop::peak)
                .anyMatch(peak -> peak.rejoined() && Amount.UNKNOWN_LAST.compare(peak.highest(), top) >= 0);
    }

    private static Amount.@Nullable Unknown unknown(Closing stop) {
        return places(stop)
                .mapToObj(i -> stop.peak(i).highest())
                .filter(Amount.Unknown.class::isInstance)
                .map(Amount.Unknown.class::cast)
                .findFirst()
                .orElse(null);
    }

    private static IntStream places(Closing stop) {
        return IntStream.range(0, stop.sections().size());
    }

    private static Amount top(Closing stop) {
        return places(stop)
                .mapToObj(i -> stop.peak(i).highest())
                .max(Amount.UNKNOWN_LAST)
                .orElse(Amount.of(0));
    }

    private static boolean sucksMore(Surge surge, @Nullable Closing than) {
        Surge other = than == null ? null : than.surge();
        return other == null || surge.deepest().lowest() < other.deepest().lowest();
    }

    /**
     * The larger of the models, as in {@link Closing#peak}: of a rejoined column the highest in the section that ends here; at the open
     * intake that of the waves.
     */
    private static Amount highest(Closing stop, Shut shut, int point) {
        double before = before(stop, shut, point);
        StopPeak peak = stop.peak(Math.max(0, point - 1));
        return point == 0 || !peak.rejoined()
                ? Amount.of(before)
                : peak.highest().map(rejoining -> Math.max(before, rejoining));
    }

    private static double before(Closing stop, Shut shut, int point) {
        Surge surge = stop.surge();
        double standing = shut.nodes().get(point).pressure();
        double waves = surge == null || !(surge.highestHolds() || point == 0)
                ? standing
                : surge.nodes().get(point).highest();
        if (point == 0) {
            return waves;
        }
        double rise = stop.closedForm().get(point - 1).or(0) - shut.sections().get(point - 1);
        return Math.max(waves, standing + Math.max(0, rise));
    }

    private static Amount lowest(Closing stop, int point) {
        Surge surge = stop.surge();
        Amount.Unknown parts = stop.parts();
        return surge == null || parts != null
                ? parts == null ? stop.criticalTime() : parts
                : Amount.of(surge.nodes().get(point).lowest());
    }
}
