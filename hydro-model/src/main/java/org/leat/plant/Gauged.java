package org.leat.plant;

import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.design.ClinometerLeg;
import org.leat.design.GrossHead;
import org.leat.design.StreamFlow;
import org.leat.quantity.Si;

/**
 * A head or flow from what was read.
 *
 * @param value m or m³/s
 * @param plusMinus zero where none is known
 */
record Gauged(double value, double plusMinus) {

    private static final double GRAVITY = 9.80665;

    /** {@return the head; zero or below where the readings say so} */
    static Gauged head(GrossHead head, double density) {
        if (head instanceof GrossHead.Stated stated) {
            return new Gauged(stated.head().si(), stated.head().plusMinusSi());
        } else if (head instanceof GrossHead.Gauge gauge) {
            double perPascal = 1 / (density * GRAVITY);
            return new Gauged(
                    gauge.pressure().si() * perPascal + Si.of(gauge.gaugeAboveNozzle(), 0),
                    gauge.pressure().plusMinusSi() * perPascal);
        } else if (head instanceof GrossHead.Tube tube) {
            double sum = 0;
            for (Quantity<Length> step : tube.steps()) {
                sum += Si.of(step);
            }
            return new Gauged(
                    sum, Si.of(tube.reading(), 0) * Math.sqrt(tube.steps().size()));
        }
        return clinometer((GrossHead.Clinometer) head);
    }

    private static Gauged clinometer(GrossHead.Clinometer read) {
        double reading = Si.of(read.angleReading(), 0);
        double sum = 0;
        double squares = 0;
        for (ClinometerLeg leg : read.legs()) {
            double distance = Si.of(leg.distance());
            double angle = Si.of(leg.angle());
            sum += distance * Math.sin(angle);
            double error = distance * Math.cos(angle) * reading;
            squares += error * error;
        }
        return new Gauged(sum, Math.sqrt(squares));
    }

    /** {@return one flow, or null where it is not one, or the readings lie outside what can be gauged so} */
    static @Nullable Gauged flow(StreamFlow flow) {
        if (flow instanceof StreamFlow.Constant constant) {
            return new Gauged(constant.flow().si(), constant.flow().plusMinusSi());
        }
        return null;
    }
}
