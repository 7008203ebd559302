package org.leat.plant.solved;

import java.util.List;
import org.apiguardian.api.API;

/**
 * Water from the intake to the jets, steady. Made by the solver alone; two are equal where all their numbers are.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public interface WaterSide {

    /** {@return m³/s} */
    double flow();

    /** {@return intake water level to nozzle axis, m} */
    double grossHead();

    /** {@return total head just upstream of the nozzles, after branches, m; mean weighted by flow} */
    double netHead();

    /** {@return head lost at the screen, m} */
    double screenLoss();

    /** {@return how full the pipe is} */
    Filling filling();

    /** {@return all jets together} */
    JetSum jetSum();

    /** {@return what happens in each section, in order} */
    List<SectionFlow> sections();

    /** {@return pressure from the intake down: one at the top and one at each section's end} */
    List<NodePressure> nodes();

    /** {@return one for each open nozzle, in the set's order} */
    List<Jet> jets();

    /**
     * How full the pipe is.
     *
     * @param fullPipe whether the stream brings enough to keep the pipe full
     * @param fullPipeFlow what the nozzles would pass with the pipe full, m³/s
     * @param airLength length of pipe from the intake that is not full, m; zero with a full pipe
     */
    record Filling(boolean fullPipe, double fullPipeFlow, double airLength) {}

    /**
     * All jets together.
     *
     * @param velocity mean weighted by flow, m/s
     * @param power of all, W
     */
    record JetSum(double velocity, double power) {}

    /** {@return head lost on the way over gross head; one less netHead over grossHead} */
    default double frictionShare() {
        return 1 - netHead() / grossHead();
    }

    /** {@return whether the stream brings enough to keep the pipe full} */
    default boolean fullPipe() {
        return filling().fullPipe();
    }

    /** {@return what the nozzles would pass with the pipe full, m³/s} */
    default double fullPipeFlow() {
        return filling().fullPipeFlow();
    }

    /** {@return length of pipe from the intake that is not full, m; zero with a full pipe} */
    default double airLength() {
        return filling().airLength();
    }

    /** {@return mean of the jets weighted by flow, m/s} */
    default double jetVelocity() {
        return jetSum().velocity();
    }

    /** {@return of all jets, W} */
    default double jetPower() {
        return jetSum().power();
    }

    /**
     * One jet.
     *
     * @param bore of the nozzle, m
     * @param diameter of the jet, m
     * @param flow m³/s
     * @param head total head just upstream of this nozzle, m
     * @param velocity m/s
     * @param power W
     */
    record Jet(double bore, double diameter, double flow, double head, double velocity, double power) {}

    /**
     * Pressure at one point of the penstock.
     *
     * @param at {@code intake}, or the name of the section that ends here
     * @param distance along the pipe from the intake, m
     * @param elevation above the nozzle axis, m
     * @param pressure above atmosphere, Pa; below zero where the point lies above the hydraulic grade line
     */
    record NodePressure(String at, double distance, double elevation, double pressure) {}

    /**
     * Steady flow in one section.
     *
     * @param section name
     * @param velocity in the full bore, m/s
     * @param reynolds Reynolds number
     * @param frictionFactor Darcy
     * @param frictionLoss along the filled length, m
     * @param fittingsLoss m
     */
    record SectionFlow(
            String section,
            double velocity,
            double reynolds,
            double frictionFactor,
            double frictionLoss,
            double fittingsLoss) {}
}
