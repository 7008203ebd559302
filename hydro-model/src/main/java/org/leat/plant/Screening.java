package org.leat.plant;

import java.time.Month;
import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.leat.design.Design;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.plant.solved.OperatingPoint;
import org.leat.plant.solved.WaterSide;

/**
 * Plants solved without being judged, to screen many sites or many sets of parts: running on each nozzle set, and nothing else. The
 * numbers are those of {@link Plant#solve()}, to the last digit; what a plant has in common with the one this was made
 * {@linkplain #near(Plant) near} is not derived or solved again. Some tens of microseconds a plant where most is shared.
 *
 * <p>What is found here is not checked: a plant that gives most may burst its pipe. Immutable and safe to share between threads.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Screening {

    private static final int DAYS = 365;

    private final Plant plant;

    private Screening(Plant plant) {
        this.plant = plant;
    }

    /** What came of a plant. */
    public sealed interface Outcome {}

    /**
     * A plant that was solved.
     *
     * @param sets running on each nozzle set with the most water the stream has, the set open as built first
     */
    public record Solved(List<OnSet> sets) implements Outcome {
        public Solved {
            sets = List.copyOf(sets);
        }

        /** {@return the set that gives most into the battery; the first of equals} */
        public OnSet best() {
            OnSet best = sets.get(0);
            for (OnSet set : sets) {
                best = set.batteryPower() > best.batteryPower() ? set : best;
            }
            return best;
        }
    }

    /**
     * A plant that cannot be solved.
     *
     * @param missing the numbers it lacks, each with its field and the reason
     */
    public record Unsolved(List<Amount.Unknown> missing) implements Outcome {
        public Unsolved {
            missing = List.copyOf(missing);
        }
    }

    /**
     * Running on one nozzle set.
     *
     * @param nozzles open
     * @param flow through them, m³/s
     * @param fullPipe whether the stream keeps the pipe full
     * @param netHead at the nozzles, m
     * @param jetPower of all jets, W
     * @param hold whether the alternator holds the runner
     * @param runnerSpeed rad/s
     * @param speedRatio bucket speed over jet velocity
     * @param windingTemperature K
     * @param bridgeVoltage behind the bridge, V
     * @param directCurrent behind the bridge, A
     * @param batteryPower at the battery's poles, W
     */
    public record OnSet(
            NozzleGroup nozzles,
            double flow,
            boolean fullPipe,
            double netHead,
            double jetPower,
            OperatingPoint.Hold hold,
            double runnerSpeed,
            double speedRatio,
            double windingTemperature,
            double bridgeVoltage,
            double directCurrent,
            double batteryPower) {

        private static OnSet of(Running running) {
            WaterSide water = running.water();
            OperatingPoint point = running.operatingPoint();
            return new OnSet(
                    running.nozzles(),
                    water.flow(),
                    water.fullPipe(),
                    water.netHead(),
                    water.jetPower(),
                    point.hold(),
                    point.speed(),
                    point.speedRatio(),
                    point.windingTemperature(),
                    point.bus().bridge(),
                    point.directCurrent(),
                    point.batteryPower());
        }
    }

    /** {@return the screening of plants that have something in common with this one} */
    public static Screening near(Plant plant) {
        return new Screening(plant);
    }

    /** {@return the screening of plants that have something in common with this design, as in a loop within a loop} */
    public Screening near(Design design) {
        return new Screening(plant.like(design));
    }

    /** {@return the screening of plants that have something in common with these numbers} */
    public Screening near(PlantNumbers numbers) {
        return new Screening(plant.withNumbers(numbers));
    }

    /** {@return the plant of a design, solved} */
    public Outcome solve(Design design) {
        return solved(plant.like(design));
    }

    /** {@return the plant of these numbers, solved} Of its design no more is asked than of the plant that this is near. */
    public Outcome solve(PlantNumbers numbers) {
        return solved(plant.withNumbers(numbers));
    }

    private static Outcome solved(Plant plant) {
        List<Amount.Unknown> missing = missing(plant);
        return missing.isEmpty()
                ? new Solved(plant.solve().running().stream().map(OnSet::of).toList())
                : new Unsolved(missing);
    }

    private static List<Amount.Unknown> missing(Plant plant) {
        return plant.unsolvable().isEmpty() && !plant.numbers().site().falls()
                ? List.of(new Amount.Missing("/site/gross-head", "unknown/head-not-above-zero"))
                : plant.unsolvable();
    }

    /**
     * {@return the power of a design at the battery's poles, mean of the year, W, if at each flow of the stream the set that gives
     * most were open; empty where it cannot be solved or states no flow}
     */
    public OptionalDouble meanPower(Design design) {
        return meanPower(plant.like(design));
    }

    /** {@return the same of these numbers} As in {@link #meanPower(Design)}. */
    public OptionalDouble meanPower(PlantNumbers numbers) {
        return meanPower(plant.withNumbers(numbers));
    }

    /** Months count by their days; between points of a duration curve power is straight, beyond them it stays as it is. */
    private static OptionalDouble meanPower(Plant plant) {
        List<StreamLevel> levels = plant.numbers().site().stream();
        if (levels.isEmpty() || !missing(plant).isEmpty()) {
            return OptionalDouble.empty();
        }
        double sum = 0;
        double before = 0;
        double reached = 0;
        for (int i = 0; i < levels.size(); i++) {
            StreamLevel level = levels.get(i);
            double here = most(plant, level.available());
            switch (level.kind()) {
                case CONSTANT -> sum += here;
                case MONTH -> sum += here * Month.of((int) level.at()).length(false) / DAYS;
                case EXCEEDED -> sum += (level.at() - reached) * (i == 0 ? here : 0.5 * (before + here));
            }
            before = here;
            reached = level.at();
        }
        boolean curve = levels.get(0).kind() == StreamLevel.Kind.EXCEEDED;
        return OptionalDouble.of(curve ? sum + (1 - reached) * before : sum);
    }

    private static double most(Plant plant, double available) {
        double most = 0;
        for (NozzleGroup set : plant.numbers().nozzles().sets()) {
            most = Math.max(
                    most, plant.solve().running(set, available).operatingPoint().batteryPower());
        }
        return most;
    }
}
