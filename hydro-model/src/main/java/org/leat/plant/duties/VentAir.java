package org.leat.plant.duties;

import org.leat.hydraulics.AirInflow;
import org.leat.hydraulics.BurstFlow;
import org.leat.hydraulics.VentSizes;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.plant.numbers.SectionNumbers;

/** Air that must enter through the vent as fast as water leaves below. The coldest air is the densest, and enters slowest. */
public final class VentAir {

    /** Of dry air, J/(kg K). */
    private static final double GAS_CONSTANT = 287.05;

    private static final String PATH = "/intake/vent/bore";

    private VentAir() {}

    /** {@return the greatest drop of pressure at a vent while the line drains, Pa} Practice; less where the wall is weaker. */
    public static double drainingDrop() {
        return AirInflow.DRAINING_DROP;
    }

    /**
     * {@return least bore of a vent, m}
     *
     * @param flow of water that leaves, m³/s
     * @param drop of pressure at the vent, Pa
     */
    public static Amount leastBore(PlantNumbers numbers, double flow, double drop) {
        double pressure = numbers.site().atmosphericPressure();
        return Amount.of(AirInflow.leastBore(flow, drop, AirInflow.SHARP, pressure, density(numbers)), PATH);
    }

    /** {@return drop of pressure at a vent, Pa} No number where the air would be choked. See {@link #leastBore}. */
    public static Amount drop(PlantNumbers numbers, double flow, double bore) {
        double pressure = numbers.site().atmosphericPressure();
        return Amount.of(AirInflow.drop(flow, bore, AirInflow.SHARP, pressure, density(numbers)), PATH);
    }

    /** {@return the next size of pipe that can be bought, m} None above DN 150. */
    public static Amount size(double bore) {
        return Amount.of(VentSizes.atLeast(bore), PATH);
    }

    /**
     * {@return flow of a pipe that has burst at the worst place, its top shut, m³/s} From the top to the end of each section by
     * the mean slope and the least bore down to there; nil where it nowhere falls.
     */
    public static double burstFlow(PlantNumbers numbers) {
        double top = numbers.penstock().sections().get(0).fromElevation();
        double length = 0;
        double bore = numbers.penstock().sections().get(0).bore();
        double greatest = 0;
        for (SectionNumbers section : numbers.penstock().sections()) {
            length += section.length();
            bore = Math.min(bore, section.bore());
            double slope = Math.min(1, (top - section.toElevation()) / length);
            if (slope > 0) {
                greatest = Math.max(greatest, BurstFlow.of(BurstFlow.USUAL, slope, bore));
            }
        }
        return greatest;
    }

    private static double density(PlantNumbers numbers) {
        return numbers.site().atmosphericPressure()
                / (GAS_CONSTANT * numbers.site().lowestAirTemperature());
    }
}
