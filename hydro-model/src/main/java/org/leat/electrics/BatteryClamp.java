package org.leat.electrics;

import org.leat.law.Physical;

/**
 * Alternator and bridge on a bus that holds its voltage: a battery behind its own and its cables' resistance, or a
 * regulator that holds the voltage (resistance nil). A bare resistor is a bus of no voltage.
 *
 * @param alternator at working temperature, see {@link AlternatorConstants#atWindingTemperature}
 * @param leadResistance of one lead from alternator to bridge, Ω
 * @param diode of the bridge
 * @param busVoltage EMF of the battery, or the voltage held, V
 * @param busResistance of battery and d.c. cables, both ways, Ω
 */
public record BatteryClamp(
        AlternatorConstants alternator,
        double leadResistance,
        DiodeLine diode,
        double busVoltage,
        double busResistance) {

    public BatteryClamp {
        Physical.notNegative("lead resistance", leadResistance);
        Physical.notNegative("bus voltage", busVoltage);
        Physical.notNegative("bus resistance", busResistance);
    }

    /** {@return EMF of the bus and two diode thresholds, V} */
    public double clampVoltage() {
        return busVoltage + 2 * diode.threshold();
    }

    /**
     * {@return the working point at a mechanical angular speed}
     *
     * @param speed rad/s, nil or above
     */
    public BridgeOperatingPoint at(double speed) {
        Physical.notNegative("speed", speed);
        double winding = alternator.phaseResistance();
        BridgeCurrents i = ThreeModeBridge.solve(
                alternator.phaseEmf(speed),
                alternator.reactance(speed),
                winding + leadResistance + diode.slope(),
                clampVoltage(),
                busResistance);
        double squares = 3 * i.phaseCurrentRms() * i.phaseCurrentRms();
        double copper = squares * winding;
        double lead = squares * leadResistance;
        double diodes = 2 * diode.threshold() * i.directCurrent() + squares * diode.slope();
        double dc = busVoltage * i.directCurrent() + busResistance * i.directCurrentRms() * i.directCurrentRms();
        double airGap = copper + lead + diodes + dc;
        return new BridgeOperatingPoint(
                speed,
                i.directCurrent(),
                busVoltage + busResistance * i.directCurrent(),
                i.phaseCurrentRms(),
                airGap,
                speed > 0 ? airGap / speed : 0,
                copper,
                lead,
                diodes,
                dc,
                i.mode());
    }
}
