package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.law.Gravity;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.WaterNumbers;
import org.leat.plant.solve.NodePressure;
import org.leat.plant.solve.Surge;

/**
 * Pressures along the penstock with the nozzles as built: standing, running, and in the stops that press and that suck most.
 *
 * @param highestDuring id of the stop at the nozzles that presses most; null where no wave speed is known
 * @param lowestDuring id of the stop that sucks most; null where no wave speed is known
 * @param parts why the extremes are not the last word: the water column parts in one of the two; null where it holds
 * @param points at the intake and at each section's end, from the intake down
 */
public record PressureProfile(
        @Nullable String highestDuring,
        @Nullable String lowestDuring,
        Amount.@Nullable Unknown parts,
        List<Point> points) {
    /** Of a plant that could not be solved. */
    public static final PressureProfile NONE = new PressureProfile(null, null, null, List.of());

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
            if (!stop.nozzles().equals(built.nozzles())) {
                continue;
            } else if (surge == null) {
                unknown = stop.criticalTime();
                continue;
            }
            if (!stop.cause().atIntake() && (pressing == null || top(stop) > top(pressing))) {
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
                    pressing == null ? unknown : Amount.of(highest(pressing, numbers, standing, i)),
                    sucking == null ? unknown : lowest(sucking, i),
                    numbers.penstock().sections().get(Math.max(0, i - 1)).ratingHot()));
        }
        Amount.Unknown parts = pressing == null || pressing.parts() == null
                ? sucking == null ? null : sucking.parts()
                : pressing.parts();
        return new PressureProfile(
                pressing == null ? null : pressing.id(), sucking == null ? null : sucking.id(), parts, points);
    }

    private static double top(Closing stop) {
        return stop.sections().stream()
                .mapToDouble(section -> section.or(0))
                .max()
                .orElse(0);
    }

    private static boolean sucksMore(Surge surge, @Nullable Closing than) {
        Surge other = than == null ? null : than.surge();
        return other == null || surge.deepest().lowest() < other.deepest().lowest();
    }

    /** The larger of the two models, as in {@link Closing#sections}; at the open intake that of the waves. */
    private static double highest(Closing stop, PlantNumbers numbers, NodePressure standing, int point) {
        Surge surge = stop.surge();
        double waves = surge == null || !(surge.highestHolds() || point == 0)
                ? standing.pressure()
                : surge.nodes().get(point).highest();
        if (point == 0) {
            return waves;
        }
        double weight = WaterNumbers.at(numbers.site().lowestWaterTemperature()).density() * Gravity.STANDARD;
        boolean slow = stop.effectiveTime() > stop.criticalTime().or(0);
        double share = slow ? standing.distance() / numbers.penstock().length() : 1;
        return Math.max(waves, standing.pressure() + weight * stop.surgeHead().or(0) * share);
    }

    private static Amount lowest(Closing stop, int point) {
        Surge surge = stop.surge();
        Amount.Unknown parts = stop.parts();
        return surge == null || parts != null
                ? parts == null ? stop.criticalTime() : parts
                : Amount.of(surge.nodes().get(point).lowest());
    }
}
