package org.leat.electrics;

/**
 * Voltages that the parts behind an alternator must stand when it runs away with no load.
 *
 * <p>Each diode sees the peak line EMF in reverse. The output goes to the same peak, less two diode drops, which are not
 * taken off here. An empty capacitor that is connected to a turning machine overshoots to at most {@value #INRUSH} times
 * the peak, a battery that opens under load gives {@value #LOAD_DUMP} times for a moment and then the runaway voltage for
 * as long as water runs. Both factors are the worst of stored circuit simulations, rounded up (ngspice; 1.615 with 100 µF, 1.261 with 470 µF), and
 * no upper bounds: small capacitors can go higher. Step the case with {@link BridgeTimeStepper} for a given plant.
 */
public final class ReverseVoltage {

    /** Overshoot of an empty capacitor switched to a turning machine, over the peak line EMF. */
    public static final double INRUSH = 1.62;

    /** Peak when a battery opens under load with a capacitor on the bus, over the peak line EMF at that speed. */
    public static final double LOAD_DUMP = 1.27;

    private ReverseVoltage() {}

    /**
     * {@return peak line EMF with no load, V: diode reverse voltage and d.c. open-circuit voltage}
     *
     * @param machine at 20 °C
     * @param speed runaway, rad/s
     * @param fluxFactor of the coldest magnets, see {@link MagnetTemperature}
     */
    public static double openCircuit(AlternatorConstants machine, double speed, double fluxFactor) {
        return machine.linePeak(speed) * fluxFactor;
    }

    /** {@return what an empty capacitor may see when it is connected at once, V} */
    public static double inrush(double openCircuit) {
        return INRUSH * openCircuit;
    }

    /** {@return what the bus may see in the first moment after the battery opens, V} */
    public static double loadDump(double openCircuit) {
        return LOAD_DUMP * openCircuit;
    }
}
