package org.leat.plant.cases;

import org.jspecify.annotations.Nullable;
import org.leat.design.ShutOff;
import org.leat.hydraulics.NozzleOpening;
import org.leat.hydraulics.ValveClosing;
import org.leat.hydraulics.ValveKind;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solved.WaterSide;

/**
 * The water of a plant stopped at the nozzles or at the intake: at once, or by a valve that is shut in a time.
 *
 * @param valve null for a stop at once
 * @param flow through the valve before, m³/s
 * @param netHead before the nozzles, m
 * @param grossHead m
 * @param left share of the nozzle area that stays open
 * @param returnTime 2 L/a of the whole line, s; unknown where a wave speed is
 */
record ValveStop(
        @Nullable ValveNumbers valve, double flow, double netHead, double grossHead, double left, Amount returnTime) {

    /** {@code a V0/(g H)} up to which the hammer of a valve stays below that of its flow without inertia. */
    private static final double FOLLOWED = 2;

    /** {@return a stop that nobody times: a plug, or leaves on the screen} */
    static ValveStop atOnce(double left) {
        return new ValveStop(null, 0, 1, 1, left, Amount.of(0));
    }

    /** {@return the valve of the penstock that stops the water fastest; null where there is none} */
    static @Nullable ValveStop worst(PlantNumbers numbers, WaterSide water, Amount returnTime) {
        ValveStop worst = null;
        double least = 0;
        for (SectionNumbers section : numbers.penstock().sections()) {
            for (ValveNumbers valve : section.valves()) {
                ValveStop stop = new ValveStop(valve, water.flow(), water.netHead(), water.grossHead(), 0, returnTime);
                double time = stop.effectiveTime();
                if (worst == null || time < least) {
                    worst = stop;
                    least = time;
                }
            }
        }
        return worst;
    }

    /** {@return the valve or needle of one nozzle; of a bore not stated as wide as the penstock} */
    static ValveStop nozzle(
            PlantNumbers numbers, WaterSide water, ValveNumbers valve, double flow, double left, Amount returnTime) {
        double bore =
                valve.bore() > 0 ? valve.bore() : numbers.penstock().last().bore();
        ValveNumbers known = new ValveNumbers(valve.kind(), valve.closingTime(), bore, valve.path());
        return new ValveStop(known, flow, water.netHead(), water.grossHead(), left, returnTime);
    }

    /** {@return the valve at the intake, of which the kind is not stated} */
    static ValveStop inlet(PlantNumbers numbers, WaterSide water, double time, Amount returnTime) {
        double bore = numbers.penstock().sections().get(0).bore();
        ValveNumbers valve = new ValveNumbers(ShutOff.GATE_VALVE, time, bore, null);
        return new ValveStop(valve, water.flow(), water.netHead(), water.grossHead(), 0, returnTime);
    }

    /** {@return the time of the whole travel, s} */
    double time() {
        return valve == null ? 0 : valve.closingTime();
    }

    /** {@return the time in which the flow stops, s} See {@link ValveClosing#effectiveTime}. */
    double effectiveTime() {
        return effectiveTime(time());
    }

    /** {@return that of another closing time, s} */
    double effectiveTime(double closingTime) {
        return valve != null && returnTime instanceof Amount.Known known
                ? ValveClosing.effectiveTime(kind(valve), headShare(valve, grossHead), closingTime, known.value())
                : closingTime;
    }

    /** {@return whether the closed form of the flow bounds the waves in one pipe, for a Joukowsky rise of the whole flow, m} */
    boolean followedByFlow(double joukowsky) {
        return left == 0 && joukowsky <= FOLLOWED * netHead;
    }

    /** {@return the open area of the nozzles while it is shut in a time, s} */
    NozzleOpening opening(double closingTime) {
        return valve == null || closingTime == 0
                ? NozzleOpening.step(left)
                : ValveClosing.opening(kind(valve), headShare(valve, netHead), closingTime, left);
    }

    private double headShare(ValveNumbers of, double head) {
        return ValveClosing.headShare(kind(of), flow, of.bore(), netHead, head);
    }

    private static ValveKind kind(ValveNumbers valve) {
        return switch (valve.kind()) {
            case NEEDLE -> ValveKind.NEEDLE;
            case GATE_VALVE -> ValveKind.GATE;
            case GLOBE_VALVE -> ValveKind.GLOBE;
            case BALL_VALVE -> ValveKind.BALL;
            case BUTTERFLY_VALVE -> ValveKind.BUTTERFLY;
        };
    }
}
