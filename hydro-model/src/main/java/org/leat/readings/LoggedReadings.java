package org.leat.readings;

import java.time.LocalDate;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.quantity.Measured;
import org.leat.quantity.RotationalSpeed;
import org.leat.quantity.VolumeFlow;

/** One line of a log: what was read at one time, running on the bus. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@About("One line of a log: what was read at one time, running on the bus")
public record LoggedReadings(
        @About("of the reading") LocalDate day,

        @About("of the day; for people") @CanBeAbsent @Nullable
        String time,

        @About("the nozzle set, as the design names it; the set open as built if left out") @CanBeAbsent @Nullable
        String nozzles,

        @About("gauge by the nozzles, water running") @CanBeAbsent @Nullable
        Measured<Pressure> runningPressure,

        @About("of the nozzles together") @CanBeAbsent @Nullable
        Measured<VolumeFlow> flow,

        @About("of the wheel") @CanBeAbsent @Nullable Measured<RotationalSpeed> speed,

        @About("direct, behind the bridge") @CanBeAbsent @Nullable
        Measured<ElectricPotential> bridgeVolts,

        @About("direct, at the battery's poles") @CanBeAbsent @Nullable
        Measured<ElectricPotential> batteryVolts,

        @About("direct, behind the bridge, before anything branches off") @CanBeAbsent @Nullable
        Measured<ElectricCurrent> bridgeAmps,

        @About("direct, into the battery; below nil where it gives") @CanBeAbsent @Nullable
        Measured<ElectricCurrent> batteryAmps,

        @About("of the winding") @CanBeAbsent @Nullable Quantity<Temperature> windingTemperature) {

    public LoggedReadings {
        Demand.limits(
                        LoggedReadings.class,
                        day,
                        time,
                        nozzles,
                        runningPressure,
                        flow,
                        speed,
                        bridgeVolts,
                        batteryVolts,
                        bridgeAmps,
                        batteryAmps,
                        windingTemperature)
                .hold();
    }

    /** {@return the same as one set of a day's readings} */
    public SetReadings asSet() {
        return new SetReadings(
                nozzles,
                SetReadings.Leads.BUS,
                runningPressure,
                null,
                flow,
                null,
                speed,
                null,
                List.of(),
                bridgeVolts,
                batteryVolts,
                bridgeAmps,
                batteryAmps,
                null,
                windingTemperature);
    }
}
