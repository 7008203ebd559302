package org.leat.readings;

import org.apiguardian.api.API;
import org.leat.quantity.QuantityKind;

/**
 * What can be read on a plant, with the uncertainty that a usual instrument has where none is told (common practice; standard
 * uncertainty, one sigma).
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public enum ReadingKind {
    /** At the gauge by the nozzles, every nozzle shut. */
    STANDING_PRESSURE(QuantityKind.PRESSURE, 0.01, 500),
    /** At the gauge by the nozzles, water running. */
    RUNNING_PRESSURE(QuantityKind.PRESSURE, 0.01, 500),
    /** At a gauge half-way down the pipe, water running. */
    MIDWAY_PRESSURE(QuantityKind.PRESSURE, 0.01, 500),
    /** Of the nozzles together, by bucket and watch below the wheel. */
    FLOW(QuantityKind.VOLUME_FLOW, 0.02, 1e-6),
    /** Into the pipe at the intake. */
    INTAKE_FLOW(QuantityKind.VOLUME_FLOW, 0.03, 1e-6),
    /** Of the wheel, by an optical counter. */
    SPEED(QuantityKind.ROTATIONAL_SPEED, 0.003, 0.05),
    /** Between two leads of the alternator. */
    FREQUENCY(QuantityKind.FREQUENCY, 0.003, 0.02),
    /** Alternating, between two leads of the alternator, rms: the largest of the pairs. */
    LEAD_VOLTS(QuantityKind.VOLTAGE, 0.008, 0.05),
    /** Largest of the three pairs less the least, over the largest. */
    LEAD_SPREAD(QuantityKind.RATIO, 0, 0.01),
    /** Direct, behind the bridge. */
    BRIDGE_VOLTS(QuantityKind.VOLTAGE, 0.004, 0.03),
    /** Direct, at the battery's poles. */
    BATTERY_VOLTS(QuantityKind.VOLTAGE, 0.004, 0.03),
    /** Direct, behind the bridge, before anything branches off. */
    BRIDGE_AMPS(QuantityKind.CURRENT, 0.012, 0.05),
    /** Direct, into the battery; below nil where it gives. */
    BATTERY_AMPS(QuantityKind.CURRENT, 0.012, 0.05),
    /** Alternating, of one lead, rms. */
    LEAD_AMPS(QuantityKind.CURRENT, 0.015, 0.05),
    /** Of the winding, after hours of running. */
    WINDING_TEMPERATURE(QuantityKind.TEMPERATURE, 0, 2);

    private final QuantityKind kind;
    private final double share;
    private final double least;

    ReadingKind(QuantityKind kind, double share, double least) {
        this.kind = kind;
        this.share = share;
        this.least = least;
    }

    /** {@return what its number measures} */
    public QuantityKind kind() {
        return kind;
    }

    /**
     * {@return the standard uncertainty of a usual instrument, SI} Common practice: a gauge of 1 % of what it shows, an optical
     * counter of 0.3 %, a hand meter of 0.4 % on direct and 0.8 % on alternating volts, a clamp of 1.2 to 1.5 %, bucket and watch 2 %.
     *
     * @param value read, SI
     */
    public double usualUncertainty(double value) {
        double ofValue = share * value;
        return Math.sqrt(ofValue * ofValue + least * least);
    }
}
