package org.leat.plant.numbers;

import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Place;

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
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@Withers
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
        BatteryNumbers battery)
        implements PlantNumbersBuilder.With {
    public PlantNumbers {
        cables = List.copyOf(cables);
    }

    /**
     * {@return voltage at which a full battery's surplus goes into the dump load, V: that which switches it on, where it is
     * stated, else the regulator's absorption set point}
     */
    public double fullVoltage() {
        double absorption = battery.absorptionVoltage();
        return dumpLoad == null ? absorption : dumpLoad.triggerVoltage().or(absorption);
    }

    /**
     * What cables add between the parts.
     *
     * @param phase of one core from alternator to bridge, Ω
     * @param bridgeToRegulator there and back, Ω; all the way to the battery where there is no regulator
     * @param regulatorToBattery there and back, Ω; zero where there is no regulator
     */
    public record BusResistance(double phase, double bridgeToRegulator, double regulatorToBattery) {

        /** {@return what the cables add; empty where none of them joins two parts of the bus} */
        public static Optional<BusResistance> of(List<CableNumbers> cables, boolean regulated) {
            double phase = between(cables, Place.ALTERNATOR, Place.RECTIFIER)
                    + between(cables, Place.ALTERNATOR, Place.REGULATOR)
                    + between(cables, Place.ALTERNATOR, Place.BATTERY);
            double upper = 2 * between(cables, Place.RECTIFIER, Place.REGULATOR);
            double lower = 2 * between(cables, Place.REGULATOR, Place.BATTERY);
            double whole = 2 * between(cables, Place.RECTIFIER, Place.BATTERY);
            return phase + upper + lower + whole == 0
                    ? Optional.empty()
                    : Optional.of(joined(phase, upper + whole, lower, regulated));
        }

        /** {@return one loop from bridge to battery, Ω there and back, and nothing before the bridge} */
        public static BusResistance loop(double loop) {
            return new BusResistance(0, loop, 0);
        }

        private static BusResistance joined(double phase, double upper, double lower, boolean regulated) {
            return regulated ? new BusResistance(phase, upper, lower) : new BusResistance(phase, upper + lower, 0);
        }

        /** Runs side by side between the same parts share the current. */
        private static double between(List<CableNumbers> cables, Place one, Place other) {
            double conductance = 0;
            for (CableNumbers cable : cables) {
                if (cable.joins(one, other)) {
                    conductance += 1 / cable.coreResistance();
                }
            }
            return conductance == 0 ? 0 : 1 / conductance;
        }
    }
}
