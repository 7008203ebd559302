package org.leat.readings;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricCurrent;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.ElectricResistance;
import javax.measure.quantity.Frequency;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.Demand;
import org.leat.design.Limits;
import org.leat.quantity.Measured;
import org.leat.quantity.Quantities.MomentOfInertia;
import org.leat.quantity.Quantities.RotationalSpeed;

/** What was read of a motor on the bench, before anything is built. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
@About("What was read of a motor on the bench")
public record BenchReadings(
        @About("version of the file format") @Limits(atLeast = 1, atMost = 1)
        int format,

        @About("of the motor or the day") @CanBeAbsent @Nullable
        String name,

        @About("of the readings") @CanBeAbsent @Nullable LocalDate day,

        @About("how well the meters show") @CanBeAbsent @Nullable
        Meters meters,

        @About("as counted by hand or by hall pulses of one turn, not from frequency and speed")
        @Limits(atLeast = 1, atMost = 200)
        @CanBeAbsent
        @Nullable
        Integer polePairs,

        @About("of the room, and of the winding that lay in it")
        @Limits(atLeast = 233.15, atMost = 333.15)
        @CanBeAbsent
        @Nullable
        Quantity<Temperature> temperature,

        @About("of everything that coasts, as felt at the motor's shaft")
        @Limits(above = 0, atMost = 1000)
        @CanBeAbsent
        @Nullable
        Measured<MomentOfInertia> inertia,

        @About("what was read, one setting of drive and meters an item") @Limits(items = 1, mostItems = 2000)
        List<Row> readings) {

    public BenchReadings {
        readings = List.copyOf(readings);
        Demand.limits(BenchReadings.class, format, name, day, meters, polePairs, temperature, inertia, readings)
                .hold();
    }

    /** How well the meters show, where a reading has no ± of its own. */
    @About("How well the meters show, where a reading has no ± of its own")
    public record Meters(
            @About("of alternating volts, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
            Quantity<Dimensionless> volts,

            @About("of amperes, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
            Quantity<Dimensionless> amps,

            @About("of a speed, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
            Quantity<Dimensionless> speed,

            @About("of a resistance, of what is read") @Limits(above = 0, atMost = 0.5) @CanBeAbsent @Nullable
            Quantity<Dimensionless> resistance) {

        public Meters {
            Demand.limits(Meters.class, volts, amps, speed, resistance).hold();
        }
    }

    /** One setting of drive and meters: volts, resistance, amperes of shorted leads, or a time of coasting. */
    @About("One setting of drive and meters")
    public record Row(
            @About("of the motor's shaft") @Limits(atLeast = 0, atMost = 4000) @CanBeAbsent @Nullable
            Measured<RotationalSpeed> speed,

            @About("between two leads") @Limits(above = 0, atMost = 20000) @CanBeAbsent @Nullable
            Measured<Frequency> frequency,

            @About("alternating, between leads A and B, nothing connected")
            @Limits(atLeast = 0, atMost = 2000)
            @CanBeAbsent
            @Nullable
            Measured<ElectricPotential> voltsAb,

            @About("between leads B and C") @Limits(atLeast = 0, atMost = 2000) @CanBeAbsent @Nullable
            Measured<ElectricPotential> voltsBc,

            @About("between leads C and A") @Limits(atLeast = 0, atMost = 2000) @CanBeAbsent @Nullable
            Measured<ElectricPotential> voltsCa,

            @About("direct, behind a bridge with a capacitor, nothing connected")
            @Limits(above = 0, atMost = 3000)
            @CanBeAbsent
            @Nullable
            Measured<ElectricPotential> bridgeVolts,

            @About("between leads A and B") @Limits(above = 0, atMost = 10000) @CanBeAbsent @Nullable
            Measured<ElectricResistance> resistanceAb,

            @About("between leads B and C") @Limits(above = 0, atMost = 10000) @CanBeAbsent @Nullable
            Measured<ElectricResistance> resistanceBc,

            @About("between leads C and A") @Limits(above = 0, atMost = 10000) @CanBeAbsent @Nullable
            Measured<ElectricResistance> resistanceCa,

            @About("alternating, rms, of lead A, all three shorted")
            @Limits(atLeast = 0, atMost = 2000)
            @CanBeAbsent
            @Nullable
            Measured<ElectricCurrent> ampsA,

            @About("of lead B") @Limits(atLeast = 0, atMost = 2000) @CanBeAbsent @Nullable
            Measured<ElectricCurrent> ampsB,

            @About("of lead C") @Limits(atLeast = 0, atMost = 2000) @CanBeAbsent @Nullable
            Measured<ElectricCurrent> ampsC,

            @About("since the drive was taken off, nothing connected")
            @Limits(atLeast = 0, atMost = 86400)
            @CanBeAbsent
            @Nullable
            Quantity<Time> time,

            @About("of the winding, where it is not the room's")
            @Limits(atLeast = 233.15, atMost = 473.15)
            @CanBeAbsent
            @Nullable
            Quantity<Temperature> temperature) {

        public Row {
            Demand demand = Demand.limits(
                    Row.class,
                    speed,
                    frequency,
                    voltsAb,
                    voltsBc,
                    voltsCa,
                    bridgeVolts,
                    resistanceAb,
                    resistanceBc,
                    resistanceCa,
                    ampsA,
                    ampsB,
                    ampsC,
                    time,
                    temperature);
            boolean volts = any(voltsAb, voltsBc, voltsCa, bridgeVolts);
            boolean ohms = any(resistanceAb, resistanceBc, resistanceCa);
            boolean amps = any(ampsA, ampsB, ampsC);
            long kinds =
                    Stream.of(volts, ohms, amps, time != null).filter(b -> b).count();
            String wanted = "one thing: volts, a resistance, amps of shorted leads, or a time of coasting";
            boolean onlyPoles = kinds == 0 && speed != null && frequency != null;
            demand.that(kinds == 1 || onlyPoles, time != null ? "time" : "speed", time != null ? time : speed, wanted);
            if (volts || amps || time != null) {
                demand.that(
                        speed != null || (frequency != null && time == null),
                        "speed",
                        speed,
                        time != null ? "a speed" : "a speed, or a frequency");
            }
            if (ohms && kinds == 1) {
                demand.that(
                        speed == null && frequency == null,
                        speed != null ? "speed" : "frequency",
                        speed != null ? speed : frequency,
                        "no speed: a resistance is read at rest");
            }
            if (time == null && speed != null) {
                demand.that(speed.si() > 0, "speed", speed, "a speed above nil");
            }
            demand.hold();
        }

        private static boolean any(@Nullable Object... values) {
            return Stream.of(values).anyMatch(Objects::nonNull);
        }

        /** {@return volts of the pairs AB, BC, CA; not a number where one was not read} */
        double[] volts() {
            return si(voltsAb, voltsBc, voltsCa);
        }

        /** {@return resistances of the pairs AB, BC, CA; not a number where one was not read} */
        double[] ohms() {
            return si(resistanceAb, resistanceBc, resistanceCa);
        }

        /** {@return amperes of the leads A, B, C; not a number where one was not read} */
        double[] amps() {
            return si(ampsA, ampsB, ampsC);
        }

        private static double[] si(@Nullable Measured<?>... read) {
            double[] values = new double[read.length];
            for (int i = 0; i < read.length; i++) {
                Measured<?> one = read[i];
                values[i] = one == null ? Double.NaN : one.si();
            }
            return values;
        }
    }
}
