package org.leat.plant.cases;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.hydraulics.NozzleOpening;
import org.leat.hydraulics.ValveClosing;
import org.leat.lazy.Once;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;
import org.leat.plant.solve.Rejoining;
import org.leat.plant.solved.Surge;

/**
 * The flow of one nozzle set stopped, at the nozzles or at the intake. Immutable; the method of characteristics runs when
 * first asked for, and once.
 *
 * <p>The highest pressures are the larger of two models, and of a third. The closed form (Joukowsky within 2L/a above the intake's level, so
 * that line packing is in it; Michaud beyond, with the {@link #effectiveTime} in which the valve stops the flow) can be followed by
 * hand and bounds a stop in one pipe, a slow one as long as a V0/(g H) is 2 or less. Else the method of characteristics is asked
 * too, which is void once the water column parts: what it says before counts. Where it parts after a stop at the nozzles, the blow of
 * its rejoining is asked of gas cavities: {@link #peak}.
 * Which of them gave a section's pressure is told by {@link #model}.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Closing implements Situation {

    private final NozzleGroup nozzles;
    private final Cause cause;
    private final ValveStop stop;
    private final Once<Double> effective;
    private final Amount criticalTime;
    private final double velocityChange;
    private final Amount surgeHead;
    private final List<Amount> closedForm;
    private final boolean bounds;
    private final @Nullable Once<Surge> surge;
    private final @Nullable Once<Rejoining> rejoining;
    private final boolean damped;

    Closing(
            NozzleGroup nozzles,
            Cause cause,
            ValveStop stop,
            Amount criticalTime,
            double velocityChange,
            Amount surgeHead,
            List<Amount> closedForm,
            boolean bounds,
            @Nullable Once<Surge> surge,
            @Nullable Once<Rejoining> rejoining,
            boolean damped) {
        this.nozzles = nozzles;
        this.cause = cause;
        this.stop = stop;
        this.effective = new Once<>(stop::effectiveTime);
        this.criticalTime = criticalTime;
        this.velocityChange = velocityChange;
        this.surgeHead = surgeHead;
        this.closedForm = List.copyOf(closedForm);
        this.bounds = bounds;
        this.surge = surge;
        this.rejoining = rejoining;
        this.damped = damped;
    }

    /** What stops the water. */
    public enum Cause {
        /** a valve in the penstock, shut by hand. */
        VALVE,
        /** the valve or needle at a nozzle; one nozzle of the set. */
        NOZZLE_SHUT,
        /** debris in one nozzle of the set: instant. */
        NOZZLE_PLUGGED,
        /** a valve at the intake, shut by hand while the nozzles stay open. */
        INLET_SHUT,
        /** leaves over the whole of the screen or the inlet: instant. */
        SCREEN_BLOCKED;

        /** {@return whether the water is stopped at the upper end, so that it drains away below} */
        public boolean atIntake() {
            return this == INLET_SHUT || this == SCREEN_BLOCKED;
        }
    }

    /** How a highest pressure was found. */
    public enum Model {
        /** Joukowsky, or Michaud, above the intake's level. */
        CLOSED_FORM,
        /** waves followed along the pipe in time. */
        CHARACTERISTICS,
        /** gas cavities along the pipe: the blow of a column that parted and rejoins. */
        REJOINING
    }

    /** {@return the set that was open} */
    public NozzleGroup nozzles() {
        return nozzles;
    }

    /** {@return what stops the water} */
    public Cause cause() {
        return cause;
    }

    /** {@return time of the whole travel of what is shut, s; zero for an instant stop} */
    public double closingTime() {
        return stop.time();
    }

    /** {@return time in which the flow stops, s: a valve stops most of it in the last of its travel} See {@link ValveClosing}. */
    public double effectiveTime() {
        return effective.get();
    }

    /** {@return the same for another time of the whole travel, s} */
    public double effectiveTime(double closingTime) {
        return stop.effectiveTime(closingTime);
    }

    /** {@return the valve that is shut; null for a stop that nobody times} */
    public @Nullable ValveNumbers valve() {
        return stop.valve();
    }

    /** {@return the open area of the nozzles while the travel takes a time, s} */
    NozzleOpening opening(double closingTime) {
        return stop.opening(closingTime);
    }

    /** {@return 2L/a of the whole penstock, s: a stop within it is as bad as an instant one} */
    public Amount criticalTime() {
        return criticalTime;
    }

    /** {@return change of velocity in the last section, m/s} */
    public double velocityChange() {
        return velocityChange;
    }

    /** {@return rise above the static head at the nozzles by the closed form, m; zero for a stop at the intake} */
    public Amount surgeHead() {
        return surgeHead;
    }

    /** {@return highest pressure in each section by the closed form, in order, Pa; unknown where a wave speed is} */
    public List<Amount> closedForm() {
        return closedForm;
    }

    /** {@return pressures by the method of characteristics; null where a wave speed is unknown, see {@link #criticalTime}} */
    public @Nullable Surge surge() {
        return surge == null ? null : surge.get();
    }

    /**
     * {@return highest pressure in each section before a parted column rejoins, by the model that gives more, in order, Pa; unknown
     * where a wave speed is} Where {@link #parts} is not null it can prove a pipe too weak, not strong enough: see {@link #peak}.
     */
    public List<Amount> sections() {
        Surge run = bounding();
        if (run == null) {
            return closedForm;
        }
        List<Amount> highest = new ArrayList<>();
        for (int i = 0; i < closedForm.size(); i++) {
            double waves = run.sections().get(i).highest();
            highest.add(Amount.of(Math.max(waves, closedForm.get(i).or(waves))));
        }
        return List.copyOf(highest);
    }

    /** The waves where they can press more than the closed form says and are not void. */
    private @Nullable Surge bounding() {
        Surge run = bounds ? null : surge();
        return run == null || !run.highestHolds() ? null : run;
    }

    /**
     * {@return the highest pressure of a section, the blow of a column that parts and rejoins included} The gas cavities run when
     * first needed, and once.
     */
    public StopPeak peak(int section) {
        Amount before = sections().get(section);
        return parts() == null || rejoining == null
                ? StopPeak.whole(before)
                : StopPeak.parted(before, rejoining, section, bounding() != null || bounds, damped);
    }

    /** {@return the model that gives the highest pressure of a section} */
    public Model model(int section) {
        if (peak(section).rejoined()) {
            return Model.REJOINING;
        }
        Surge run = bounding();
        return run != null
                        && closedForm.get(section) instanceof Amount.Known closed
                        && run.sections().get(section).highest() > closed.value()
                ? Model.CHARACTERISTICS
                : Model.CLOSED_FORM;
    }

    /** {@return lowest pressure in each section, in order, Pa; unknown where a wave speed is, or where the column parts} */
    public List<Amount> lowest() {
        Surge run = surge();
        List<Amount> lowest = new ArrayList<>();
        for (int i = 0; i < closedForm.size(); i++) {
            Amount.Unknown parts = run == null ? null : run.parts();
            lowest.add(
                    run == null
                            ? criticalTime
                            : parts != null
                                    ? parts
                                    : Amount.of(run.sections().get(i).lowest()));
        }
        return List.copyOf(lowest);
    }

    /** {@return why the pressures are not the last word: the water column parts; null where it holds or is not known to} */
    public Amount.@Nullable Unknown parts() {
        Surge run = surge();
        return run == null ? null : run.parts();
    }

    @Override
    public String id() {
        return switch (cause) {
                    case VALVE -> "closing/";
                    case NOZZLE_SHUT -> "nozzle-shut/";
                    case NOZZLE_PLUGGED -> "nozzle-plugged/";
                    case INLET_SHUT -> "inlet-shut/";
                    case SCREEN_BLOCKED -> "screen-blocked/";
                }
                + nozzles.name();
    }
}
