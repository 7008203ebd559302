package org.leat.arbitraries;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Angle;
import javax.measure.quantity.Area;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.Length;
import javax.measure.quantity.Mass;
import javax.measure.quantity.Pressure;
import javax.measure.quantity.Temperature;
import javax.measure.quantity.Time;
import javax.measure.quantity.Volume;
import org.leat.arbitraries.Designs.Scale;
import org.leat.design.ClinometerLeg;
import org.leat.design.DurationPoint;
import org.leat.design.Fitting;
import org.leat.design.FittingKind;
import org.leat.design.GrossHead;
import org.leat.design.Intake;
import org.leat.design.Penstock;
import org.leat.design.Pipe;
import org.leat.design.PolyethyleneGrade;
import org.leat.design.SaltReading;
import org.leat.design.Screen;
import org.leat.design.Section;
import org.leat.design.SettlingBasin;
import org.leat.design.Site;
import org.leat.design.Stream;
import org.leat.design.StreamFlow;
import org.leat.design.Sunlight;
import org.leat.design.TemperatureRange;
import org.leat.design.Vent;
import org.leat.quantity.Quantities.Conductivity;
import org.leat.quantity.Quantities.VolumeFlow;
import org.leat.quantity.Si;

/** The water's side of random plants. */
final class WaterParts {

    private WaterParts() {}

    static Site site(Draw d, Scale s) {
        return new Site(
                head(d, s.head()),
                d.maybe(() -> d.quantity(0, 3000, "m", Length.class)),
                d.maybe(() -> temperatures(d, 0, 5, 8, 22)),
                d.maybe(() -> temperatures(d, -20, 5, 15, 40)),
                d.maybe(() -> new Stream(
                        flow(d, s.flow()),
                        d.maybe(() -> d.quantity(0, s.flow() * 500, "L/s", VolumeFlow.class)),
                        d.maybe(() -> d.quantity(30, 100, "%", Dimensionless.class)))),
                null);
    }

    private static TemperatureRange temperatures(Draw d, double a, double b, double c, double e) {
        return new TemperatureRange(celsius(d.between(a, b)), celsius(d.between(c, e)));
    }

    private static Quantity<Temperature> celsius(double value) {
        return Si.quantity(value, "°C", Temperature.class);
    }

    private static GrossHead head(Draw d, double head) {
        int n = d.whole(1, 5);
        return switch (d.whole(0, 5)) {
            case 0 ->
                new GrossHead.Tube(
                        d.list(n, n, () -> metres(head / n)), d.maybe(() -> d.quantity(1, 20, "mm", Length.class)));
            case 1 ->
                new GrossHead.Gauge(
                        d.measured(head * 0.0981, "bar", Pressure.class),
                        d.maybe(() -> d.quantity(-0.5, 1, "m", Length.class)));
            case 2 -> {
                double degrees = d.between(5, 35);
                double distance = head / n / Math.sin(Math.toRadians(degrees));
                yield new GrossHead.Clinometer(
                        d.list(n, n, () -> new ClinometerLeg(metres(distance), Si.quantity(degrees, "°", Angle.class))),
                        d.maybe(() -> d.quantity(0.2, 1, "°", Angle.class)));
            }
            default -> new GrossHead.Stated(d.measured(head, "m", Length.class));
        };
    }

    private static Quantity<Length> metres(double value) {
        return Si.quantity(Draw.rounded(value, 4), "m", Length.class);
    }

    private static StreamFlow flow(Draw d, double wanted) {
        double flow = wanted * d.spread(0.5, 5);
        double litres = flow * 1000;
        return switch (d.whole(0, 8)) {
            case 0 -> durationCurve(d, litres);
            case 1 ->
                new StreamFlow.Months(
                        d.list(12, 12, () -> d.quantity(litres * 0.3, litres * 3, "L/s", VolumeFlow.class)));
            case 2 ->
                new StreamFlow.Bucket(
                        d.quantity(8, 60, "L", Volume.class),
                        d.list(1, 4, () -> d.quantity(15 / litres, 40 / litres, "s", Time.class)));
            case 3 ->
                new StreamFlow.Floats(
                        d.quantity(flow * 2, flow * 10, "m²", Area.class),
                        d.quantity(3, 20, "m", Length.class),
                        d.list(1, 4, () -> d.quantity(10, 90, "s", Time.class)),
                        d.maybe(() -> d.quantity(60, 90, "%", Dimensionless.class)));
            case 4 -> saltSlug(d, flow);
            case 5 ->
                new StreamFlow.VNotchWeir(
                        d.quantity(40, 100, "°", Angle.class),
                        d.measured(d.between(60, 300), "mm", Length.class),
                        d.maybe(() -> d.quantity(100, 400, "mm", Length.class)),
                        d.maybe(() -> d.quantity(0.8, 2, "m", Length.class)));
            case 6 ->
                new StreamFlow.RectangularWeir(
                        d.quantity(0.2, 0.6, "m", Length.class),
                        d.measured(d.between(40, 200), "mm", Length.class),
                        d.quantity(100, 400, "mm", Length.class),
                        d.quantity(0.7, 2, "m", Length.class));
            default -> new StreamFlow.Constant(d.measured(litres, "L/s", VolumeFlow.class));
        };
    }

    private static StreamFlow durationCurve(Draw d, double litres) {
        List<Double> shares =
                new ArrayList<>(List.of(5.0, 30.0, 50.0, 70.0, 95.0).subList(0, d.whole(2, 5)));
        double first = litres * d.between(1, 6);
        List<DurationPoint> points = shares.stream()
                .sorted(Comparator.naturalOrder())
                .map(share -> new DurationPoint(
                        Si.quantity(share, "%", Dimensionless.class),
                        Si.quantity(Draw.rounded(first * Math.exp(-share / 40), 3), "L/s", VolumeFlow.class)))
                .toList();
        return new StreamFlow.DurationCurve(points);
    }

    private static StreamFlow saltSlug(Draw d, double flow) {
        double calibration = 0.00048;
        double grams = d.between(100, 2000);
        double area = grams / 1000 / calibration / flow; // microsiemens per centimetre times seconds
        List<SaltReading> readings = new ArrayList<>();
        double[] form = {0, 1, 2, 1, 0};
        for (int i = 0; i < form.length; i++) {
            readings.add(new SaltReading(
                    Si.quantity(10.0 * i, "s", Time.class),
                    Si.quantity(Draw.rounded(50 + form[i] * area / 40, 5), "uS/cm", Conductivity.class)));
        }
        return new StreamFlow.SaltSlug(
                Si.quantity(grams, "g", Mass.class),
                calibration,
                Si.quantity(50, "uS/cm", Conductivity.class),
                readings);
    }

    static Intake intake(Draw d, Scale s) {
        Screen screen = switch (d.whole(0, 2)) {
            case 0 ->
                new Screen.DrilledHoles(
                        d.whole(20, 2000),
                        d.quantity(1.5, 8, "mm", Length.class),
                        d.maybe(() -> d.quantity(0, 80, "%", Dimensionless.class)),
                        null);
            case 1 ->
                new Screen.Mesh(
                        d.quantity(0.02, 1, "m²", Area.class),
                        d.quantity(0.5, 5, "mm", Length.class),
                        d.quantity(0.2, 1, "mm", Length.class),
                        null);
            default ->
                new Screen.Bars(
                        d.quantity(0.02, 1, "m²", Area.class),
                        d.quantity(5, 30, "mm", Length.class),
                        d.quantity(2, 8, "mm", Length.class),
                        d.maybe(() -> d.quantity(30, 90, "°", Angle.class)),
                        d.maybe(d::yes),
                        null);
        };
        return new Intake(
                screen,
                d.maybe(() -> d.quantity(0.05, 1.5, "m", Length.class)),
                d.maybe(() -> new SettlingBasin(
                        d.quantity(0.5, 4, "m", Length.class),
                        d.quantity(0.3, 2, "m", Length.class),
                        d.quantity(0.2, 1, "m", Length.class))),
                d.maybe(() -> new Vent(d.quantity(10, 50, "mm", Length.class), d.maybe(d::yes), null)),
                d.maybe(() -> d.quantity(1, 60, "s", Time.class)),
                null,
                null);
    }

    static Penstock penstock(Draw d, Scale s) {
        int n = d.whole(1, 3);
        boolean elevations = d.yes();
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double from = Draw.rounded(s.head() * (n - i) / n, 6);
            double to = Draw.rounded(s.head() * (n - i - 1) / n, 6);
            double length = Math.max((from - to) * d.spread(1.05, 8), 1);
            sections.add(new Section(
                    List.of("upper", "run", "lower [steep]").get(i),
                    pipe(d, s),
                    metres(length),
                    elevations ? Si.quantity(from, "m", Length.class) : null,
                    elevations ? Si.quantity(to, "m", Length.class) : null,
                    d.list(0, 3, () -> fitting(d)),
                    d.maybe(d::yes),
                    d.maybe(d::yes)));
        }
        return new Penstock(
                sections,
                d.maybe(() -> d.quantity(4, 16, "bar", Pressure.class)),
                null,
                null,
                d.maybe(() -> d.of(Sunlight.class)),
                d.maybe(d::yes),
                null,
                null,
                d.maybe(d::yes),
                null,
                null,
                null);
    }

    private static Fitting fitting(Draw d) {
        return new Fitting(
                d.of(FittingKind.class),
                d.maybe(() -> d.whole(1, 6)),
                null,
                d.maybe(() -> d.between(0.02, 5)),
                d.maybe(() -> d.quantity(0.2, 60, "s", Time.class)),
                null);
    }

    /** A pipe whose velocity would be half to three metres a second. */
    private static Pipe pipe(Draw d, Scale s) {
        double bore = Math.sqrt(4 * s.flow() / Math.PI / d.between(0.5, 3)) * 1000;
        Quantity<Length> outside = Si.quantity(Draw.rounded(bore * 1.13, 3), "mm", Length.class);
        return switch (d.whole(0, 4)) {
            case 0 ->
                new Pipe.Polyethylene(
                        d.maybe(() -> "ISO 4427"),
                        d.of(PolyethyleneGrade.class),
                        outside,
                        d.of(11.0, 13.6, 17.0, 21.0, 26.0),
                        null,
                        null,
                        null);
            case 1 ->
                new Pipe.PvcU(
                        d.maybe(() -> "ISO 1452"),
                        outside,
                        Si.quantity(d.of(6.0, 10.0, 16.0), "bar", Pressure.class),
                        null,
                        null);
            case 2 ->
                new Pipe.Steel(
                        null,
                        outside,
                        d.quantity(1.5, Math.max(1.6, bore * 0.05), "mm", Length.class),
                        d.maybe(() -> d.quantity(195, 355, "MPa", Pressure.class)),
                        null,
                        d.maybe(() -> d.quantity(0.02, 0.5, "mm", Length.class)));
            case 3 ->
                new Pipe.Hose(
                        Si.quantity(Draw.rounded(bore, 3), "mm", Length.class),
                        d.maybe(() -> d.quantity(3, 12, "bar", Pressure.class)),
                        null,
                        null,
                        d.maybe(() -> d.quantity(2, 6, "mm", Length.class)),
                        null,
                        d.maybe(d::yes),
                        null);
            default ->
                new Pipe.OtherPipe(
                        Si.quantity(Draw.rounded(bore, 3), "mm", Length.class),
                        d.quantity(2, 10, "mm", Length.class),
                        d.maybe(() -> d.quantity(4, 16, "bar", Pressure.class)),
                        d.maybe(() -> d.quantity(0.5, 210, "GPa", Pressure.class)),
                        null,
                        d.maybe(() -> d.between(0.25, 0.48)),
                        null,
                        d.maybe(() -> d.quantity(0.003, 0.3, "mm", Length.class)));
        };
    }
}
