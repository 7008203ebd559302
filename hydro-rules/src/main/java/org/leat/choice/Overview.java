package org.leat.choice;

import java.util.List;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.leat.check.Examined;
import org.leat.check.Finding;
import org.leat.check.Level;
import org.leat.check.Rulebook;
import org.leat.check.WayOut;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.QuantityKind;

/**
 * One design at a glance. Immutable.
 *
 * @param verdict whether it is safe to open, and what is left unjudged
 * @param yields what each nozzle set gives, the set open as built first; empty where the plant could not be solved
 * @param causes every failure that counts, those that one change clears together under that change; worst first
 * @param inputs what to tell or measure, that which settles most first
 * @param understood derived numbers that a builder can recognise or doubt
 * @param plan the smallest set of changes found after which no error is left
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Overview(
        SafetyVerdict verdict,
        List<Yield> yields,
        List<Cause> causes,
        List<MissingInput> inputs,
        List<UnderstoodNumber> understood,
        Plan plan) {

    public Overview {
        yields = List.copyOf(yields);
        causes = List.copyOf(causes);
        inputs = List.copyOf(inputs);
        understood = List.copyOf(understood);
    }

    /**
     * {@return a design at a glance} Costs a few dozen solutions of the plant: to be asked for where someone reads it.
     *
     * @param rulebook of the checker that examined it
     */
    public static Overview of(Examined examined, Rulebook rulebook) {
        return Overviews.of(examined, rulebook);
    }

    /**
     * What one nozzle set gives with the battery taking what comes.
     *
     * @param nozzles the set's name
     * @param asBuilt whether it is the set that is open as built
     * @param fullPipe whether the stream keeps the pipe full
     * @param hold whether the alternator holds the wheel, or why not
     * @param batteryPower at the battery, W
     * @param energyPerDay batteryPower over 24 hours, J
     * @param current at the battery, A, direct
     * @param voltage at the battery's poles, V
     */
    public record Yield(
            String nozzles,
            boolean asBuilt,
            boolean fullPipe,
            OperatingPoint.Hold hold,
            double batteryPower,
            double energyPerDay,
            double current,
            double voltage) {

        /** {@return whether the alternator holds the wheel with them} */
        public boolean held() {
            return hold == OperatingPoint.Hold.HELD;
        }
    }

    /**
     * A number derived from the design that a builder can recognise or doubt.
     *
     * @param what which number
     * @param element path of the element it is of
     * @param of name of the element where there are several of its kind; "" else
     * @param value in the SI unit of its kind
     * @param kind what it measures
     * @param assumed whether it rests on a value that was assumed, not told
     */
    public record UnderstoodNumber(
            What what, String element, String of, double value, QuantityKind kind, boolean assumed) {

        /** Which number. */
        public enum What {
            /** inside diameter of a pipe section. */
            PIPE_BORE,
            /** least wall of a pipe section. */
            PIPE_WALL,
            /** pressure at the nozzles with the water shut. */
            STANDING_PRESSURE,
            /** area of all open nozzles' outlets together. */
            NOZZLE_AREA,
            /** flow through the open nozzles. */
            FLOW,
            /** twice the distance from the shaft to where the jet meets the buckets. */
            PITCH_DIAMETER,
            /** alternator speed over the peak voltage between two leads, nothing connected, cold. */
            MOTOR_SPEED_PER_VOLT,
            /** voltage between two leads, rms, nothing connected, cold, at 1000 rpm of the alternator. */
            MOTOR_VOLTS_AT_1000_RPM,
            /** resistance between two leads, cold. */
            MOTOR_RESISTANCE,
            /** usual voltage of the whole battery. */
            BATTERY_NOMINAL_VOLTAGE,
            /** what a full battery holds. */
            BATTERY_ENERGY
        }
    }

    /**
     * The failures of one rule at one element over all nozzle sets and cases, taken as one.
     *
     * @param worst the one furthest beyond its limit
     * @param others the rest, worst first
     * @param waysForAll ways out after which none of them is left, found by solving the plant again; of the worst one's words
     * @param onlyForSome whether there are ways out, but none that holds for all of them
     */
    public record GroupedFailure(Finding worst, List<Finding> others, List<WayOut> waysForAll, boolean onlyForSome) {

        public GroupedFailure {
            others = List.copyOf(others);
            waysForAll = List.copyOf(waysForAll);
        }

        /** {@return how many findings of exactly that level it stands for} */
        public long count(Level level) {
            return Stream.concat(Stream.of(worst), others.stream())
                    .filter(f -> f.outcome().level() == level)
                    .count();
        }

        /** {@return how many findings it stands for} */
        public int size() {
            return 1 + others.size();
        }
    }
}
