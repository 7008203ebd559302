package org.leat.choice;

import org.apiguardian.api.API;
import org.leat.quantity.QuantityKind;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record UnderstoodNumber(What what, String element, String of, double value, QuantityKind kind, boolean assumed) {

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
