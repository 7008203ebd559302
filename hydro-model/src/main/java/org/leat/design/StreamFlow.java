package org.leat.design;

import java.time.LocalDate;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;
import org.leat.quantity.Quantities.Conductivity;
import org.leat.quantity.Quantities.VolumeFlow;
import org.leat.quantity.Si;

/** Flow of the stream: one number, a year of it, or the readings of a gauging. */
@API(status = API.Status.STABLE, since = "0.1")
@About("Flow of the stream: one number, a year of it, or the readings of a gauging")
public sealed interface StreamFlow {

    /** One flow for the whole year. */
    @About("One flow for the whole year")
    @Plain
    public record Constant(
            @About("the flow") @Limits(atLeast = 0) Measured<VolumeFlow> flow) implements StreamFlow {

        public Constant {
            Demand.limits(Constant.class, flow).hold();
        }
    }

    /** A flow-duration curve. */
    @About("A flow-duration curve")
    public record DurationCurve(
            @About("points in order of rising share") @Limits(items = 2)
            List<DurationPoint> points) implements StreamFlow {

        public DurationCurve {
            points = List.copyOf(points);
            Demand.limits(DurationCurve.class, points)
                    .that(
                            ascending(points),
                            "points",
                            "shares that do not rise",
                            "shares rising and flows not rising along the list")
                    .hold();
        }

        private static boolean ascending(List<DurationPoint> points) {
            for (int i = 1; i < points.size(); i++) {
                if (!(Si.of(points.get(i).exceeded()) > Si.of(points.get(i - 1).exceeded()))
                        || Si.of(points.get(i).flow()) > Si.of(points.get(i - 1).flow())) {
                    return false;
                }
            }
            return true;
        }
    }

    /** Mean flow of each month. */
    @About("Mean flow of each month")
    public record Months(
            @About("twelve flows, January first") @Limits(items = 12, mostItems = 12, atLeast = 0)
            List<Quantity<VolumeFlow>> flows)
            implements StreamFlow {

        public Months {
            flows = List.copyOf(flows);
            Demand.limits(Months.class, flows)
                    .that(flows.size() == 12, "flows", flows.size() + " flows", "twelve, January first")
                    .hold();
        }
    }

    /** Flow of each day of a gauged stretch. */
    @About("Flow of each day of a gauged stretch, of a year or more")
    public record Daily(
            @About("the first of the days") LocalDate from,

            @About("mean flow of each day in order, none left out") @Limits(items = 365, mostItems = 7305, atLeast = 0)
            List<Quantity<VolumeFlow>> flows)
            implements StreamFlow {

        public Daily {
            flows = List.copyOf(flows);
            Demand.limits(Daily.class, from, flows).hold();
        }
    }

    /** Bucket and stopwatch. */
    @About("Bucket and stopwatch")
    public record Bucket(
            @About("what the bucket holds") @Limits(above = 0)
            Quantity<Volume> volume,

            @About("filling times, one a reading") @Limits(above = 0, items = 1)
            List<Quantity<Time>> times)
            implements StreamFlow {

        public Bucket {
            times = List.copyOf(times);
            Demand.limits(Bucket.class, volume, times).hold();
        }
    }

    /** Float over a measured reach. */
    @About("Float over a measured reach")
    public record Floats(
            @About("mean wetted cross-section of the reach") @Limits(above = 0)
            Quantity<Area> area,

            @About("length of the reach") @Limits(above = 0) Quantity<Length> length,

            @About("float times, one a reading") @Limits(above = 0, items = 1)
            List<Quantity<Time>> times,

            @About("mean over surface velocity") @Limits(above = 0, atMost = 1) @CanBeAbsent @Nullable
            Quantity<Dimensionless> surfaceFactor)
            implements StreamFlow {

        public Floats {
            times = List.copyOf(times);
            Demand.limits(Floats.class, area, length, times, surfaceFactor).hold();
        }
    }

    /** Dilution of a salt slug. */
    @About("Dilution of a salt slug")
    public record SaltSlug(
            @About("salt poured in") @Limits(above = 0) Quantity<Mass> mass,

            @About("kilograms of salt per cubic metre for one microsiemens per centimetre") @Limits(above = 0)
            double calibration,

            @About("conductivity before the slug") @Limits(atLeast = 0)
            Quantity<Conductivity> background,

            @About("conductivity against time until it is back") @Limits(items = 3, mostItems = 5000)
            List<SaltReading> readings)
            implements StreamFlow {

        public SaltSlug {
            readings = List.copyOf(readings);
            Demand.limits(SaltSlug.class, mass, calibration, background, readings)
                    .hold();
        }
    }

    /** Thin-plate V-notch weir, ISO 1438. */
    @About("Thin-plate V-notch weir, ISO 1438")
    public record VNotchWeir(
            @About("notch angle") @Limits(above = 0) Quantity<Angle> angle,

            @About("water level above the notch, upstream") @Limits(above = 0)
            Measured<Length> head,

            @About("notch above the channel bed") @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Length> crestHeight,

            @About("width of the approach channel") @Limits(above = 0) @CanBeAbsent @Nullable
            Quantity<Length> channelWidth)
            implements StreamFlow {

        public VNotchWeir {
            Demand.limits(VNotchWeir.class, angle, head, crestHeight, channelWidth)
                    .hold();
        }
    }

    /** Thin-plate rectangular weir, ISO 1438. */
    @About("Thin-plate rectangular weir, ISO 1438")
    public record RectangularWeir(
            @About("width of the notch") @Limits(above = 0) Quantity<Length> width,

            @About("water level above the crest, upstream") @Limits(above = 0)
            Measured<Length> head,

            @About("crest above the channel bed") @Limits(above = 0)
            Quantity<Length> crestHeight,

            @About("width of the approach channel") @Limits(above = 0)
            Quantity<Length> channelWidth)
            implements StreamFlow {

        public RectangularWeir {
            Demand.limits(RectangularWeir.class, width, head, crestHeight, channelWidth)
                    .that(
                            Si.of(channelWidth) >= Si.of(width),
                            "channelWidth",
                            channelWidth,
                            "at least the notch's width, " + Demand.print(width))
                    .hold();
        }
    }
}
