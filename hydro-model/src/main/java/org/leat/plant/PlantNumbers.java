package org.leat.plant;

import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Every number of a plant, in SI.
 *
 * @param site stream, head and weather
 * @param water in the pipe while running
 * @param penstock pipe from intake to nozzles
 * @param nozzles nozzle sets
 * @param runner wheel
 * @param alternator as its equivalent star
 * @param rectifier diode bridge
 * @param cables runs between the parts, in the design's order
 * @param busResistance what cables add between the parts
 * @param regulator charge regulator; of kind {@code NONE} where the design has none
 * @param dumpLoad null where the design has none or tells neither its resistance nor its power
 * @param battery battery
 */
public record PlantNumbers(
        SiteNumbers site,
        WaterNumbers water,
        PenstockNumbers penstock,
        NozzleNumbers nozzles,
        RunnerNumbers runner,
        AlternatorNumbers alternator,
        RectifierNumbers rectifier,
        List<CableNumbers> cables,
        BusResistance busResistance,
        RegulatorNumbers regulator,
        @Nullable DumpLoadNumbers dumpLoad,
        BatteryNumbers battery) {
    public PlantNumbers {
        cables = List.copyOf(cables);
    }

    /**
     * {@return voltage at which a full battery's surplus goes into the dump load, V: that which switches it on, where it is
     * stated, else the regulator's absorption set point}
     */
    public double fullVoltage() {
        return dumpLoad == null || dumpLoad.triggerVoltage() == null
                ? battery.absorptionVoltage()
                : dumpLoad.triggerVoltage();
    }

    /**
     * What cables add between the parts.
     *
     * @param phase of one core from alternator to bridge, Ω
     * @param bridgeToRegulator there and back, Ω; all the way to the battery where there is no regulator
     * @param regulatorToBattery there and back, Ω; zero where there is no regulator
     */
    public record BusResistance(double phase, double bridgeToRegulator, double regulatorToBattery) {}
}
