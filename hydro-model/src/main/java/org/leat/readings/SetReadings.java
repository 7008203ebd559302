package org.leat.readings;

import java.time.LocalDate;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.Limits;
import org.leat.quantity.Measured;
import org.leat.quantity.Quantities.RotationalSpeed;
import org.leat.quantity.Quantities.VolumeFlow;
import org.leat.readings.Channel.LoadState;

/** What was read with one nozzle set open: part of a day's readings, or a line of a log, with its day. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@About("What was read with one nozzle set open")
public record SetReadings(
        @About("of the reading; in a log alone, where each line has it") @CanBeAbsent @Nullable
        LocalDate day,

        @About("of the day; for people") @CanBeAbsent @Nullable
        String time,

        @About("the set as the design names it, or its bores, as 10 mm + 10 mm; the set open as built if left out")
        @CanBeAbsent
        @Nullable
        String nozzles,

        @About("what the alternator works on; the bus if left out") @CanBeAbsent @Nullable
        Leads leads,

        @About("gauge by the nozzles, water running") @CanBeAbsent @Nullable
        Measured<Pressure> runningPressure,

        @About("gauge half-way down the pipe, water running") @CanBeAbsent @Nullable
        Measured<Pressure> midwayPressure,

        @About("of the nozzles together") @CanBeAbsent @Nullable
        Measured<VolumeFlow> flow,

        @About("into the pipe at the intake") @CanBeAbsent @Nullable
        Measured<VolumeFlow> intakeFlow,

        @About("of the wheel") @CanBeAbsent @Nullable Measured<RotationalSpeed> speed,

        @About("between two leads") @CanBeAbsent @Nullable Measured<Frequency> frequency,

        @About("alternating, rms, between two leads: one pair, or all three") @Limits(mostItems = 3)
        List<Measured<ElectricPotential>> voltsBetweenLeads,

        @About("direct, behind the bridge") @CanBeAbsent @Nullable
        Measured<ElectricPotential> bridgeVolts,

        @About("direct, at the battery's poles") @CanBeAbsent @Nullable
        Measured<ElectricPotential> batteryVolts,

        @About("direct, behind the bridge, before anything branches off") @CanBeAbsent @Nullable
        Measured<ElectricCurrent> bridgeAmps,

        @About("direct, into the battery; below nil where it gives") @CanBeAbsent @Nullable
        Measured<ElectricCurrent> batteryAmps,

        @About("alternating, rms, of one lead") @CanBeAbsent @Nullable
        Measured<ElectricCurrent> leadAmps,

        @About("of the winding, after hours of running") @CanBeAbsent @Nullable
        Quantity<Temperature> windingTemperature) {

    public SetReadings {
        voltsBetweenLeads = List.copyOf(voltsBetweenLeads);
        Demand.limits(
                        SetReadings.class,
                        day,
                        time,
                        nozzles,
                        leads,
                        runningPressure,
                        midwayPressure,
                        flow,
                        intakeFlow,
                        speed,
                        frequency,
                        voltsBetweenLeads,
                        bridgeVolts,
                        batteryVolts,
                        bridgeAmps,
                        batteryAmps,
                        leadAmps,
                        windingTemperature)
                .hold();
    }

    /** What the alternator works on. */
    public enum Leads {
        /** the bus with its battery. */
        @About("the bus with its battery")
        BUS,
        /** the dump load alone, the battery disconnected. */
        @About("the dump load alone, the battery disconnected")
        DUMP,
        /** nothing. */
        @About("nothing")
        OPEN
    }

    /** {@return what the alternator works on} */
    public LoadState state() {
        return leads == null
                ? LoadState.BUS
                : switch (leads) {
                    case BUS -> LoadState.BUS;
                    case DUMP -> LoadState.DUMP;
                    case OPEN -> LoadState.OPEN;
                };
    }
}
