package org.leat.plant;

import java.util.List;

/**
 * The flow of one nozzle set stopped, by the closed form.
 *
 * @param nozzles the set that was open
 * @param cause what stops the water
 * @param closingTime s; zero for an instant stop
 * @param criticalTime 2L/a of the whole penstock: a stop within it is as bad as an instant one, s
 * @param velocityChange in the last section, m/s
 * @param surgeHead above the static head at the nozzles, m
 * @param sections highest pressure in each section, in order, Pa; unknown where a wave speed is
 */
public record Closing(
        NozzleGroup nozzles,
        Cause cause,
        double closingTime,
        Amount criticalTime,
        double velocityChange,
        Amount surgeHead,
        List<Amount> sections)
        implements Situation {
    public Closing {
        sections = List.copyOf(sections);
    }

    /** What stops the water. */
    public enum Cause {
        /** a valve in the penstock, shut by hand. */
        VALVE,
        /** the valve or needle at a nozzle; one nozzle of the set. */
        NOZZLE_SHUT,
        /** debris in one nozzle of the set: instant. */
        NOZZLE_PLUGGED
    }

    @Override
    public String id() {
        return switch (cause) {
                    case VALVE -> "closing/";
                    case NOZZLE_SHUT -> "nozzle-shut/";
                    case NOZZLE_PLUGGED -> "nozzle-plugged/";
                }
                + nozzles.name();
    }
}
