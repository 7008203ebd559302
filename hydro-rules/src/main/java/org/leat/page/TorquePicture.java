package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.TorqueOverSpeed;
import org.leat.plant.numbers.Amount;
import org.leat.plant.solved.OperatingPoint;

/** What the runner gives and what the alternator asks, on every nozzle set. */
final class TorquePicture {

    private static final double RPM = 30 / Math.PI;

    /** A hill of the alternator's far above what the runner can give is cut off here, in times the runner's most. */
    private static final double CUT = 1.5;

    private final Plant plant;
    private final List<TorqueOverSpeed> curves = new ArrayList<>();

    private TorquePicture(Plant plant) {
        this.plant = plant;
        for (Running running : plant.solve().running()) {
            curves.add(TorqueOverSpeed.of(plant.numbers(), running));
        }
    }

    static Figure of(Plant plant) {
        TorquePicture picture = new TorquePicture(plant);
        return new Figure(
                Topic.TORQUE,
                "The wheel runs where its falling line first meets the alternator's rising one. Look how far the crossing lies"
                        + " before the top of the alternator's hill: past it nothing holds the wheel, and it runs away along"
                        + " its own line to the cross at the foot.",
                picture::draw,
                List.of(picture.table()));
    }

    private void draw(Markup page) {
        Drawing on = Drawing.begin(page, Topic.TORQUE.id(), "Torque of runner and alternator over speed", 300);
        double fastest =
                curves.stream().mapToDouble(TorqueOverSpeed::runawaySpeed).max().orElse(1);
        OptionalDouble limit = limit();
        double end = limit.isPresent() && limit.getAsDouble() < 1.6 * fastest
                ? Math.max(fastest, limit.getAsDouble())
                : fastest;
        double stall = curves.stream()
                .mapToDouble(c -> c.points().get(0).runner())
                .max()
                .orElse(1);
        double hill = curves.stream()
                .flatMap(c -> c.points().stream())
                .mapToDouble(TorqueOverSpeed.Point::alternator)
                .max()
                .orElse(1);
        double most = 1.05 * Math.max(stall, Math.min(hill, CUT * stall));
        Plot plot = new Plot(on, Scale.even(0, 1.03 * end * RPM, 40, 392), Scale.even(0, most, 258, 28));
        plot.axes("speed of the wheel, rpm", "torque, N\u00b7m", 5);
        if (limit.isPresent() && limit.getAsDouble() <= end) {
            plot.upright(limit.getAsDouble() * RPM, "alternator\u2019s limit", "line s-limit");
        }
        for (int i = 0; i < curves.size(); i++) {
            if (i > 0 && sameAlternator(curves.get(i), curves.get(0), most)) {
                continue;
            }
            plot.line(speeds(curves.get(i)), alternator(curves.get(i), most), "line s-alternator");
        }
        for (int i = 0; i < curves.size(); i++) {
            plot.line(speeds(curves.get(i)), runner(curves.get(i)), "line " + series(i));
        }
        Legend key = new Legend();
        for (int i = 0; i < curves.size(); i++) {
            OperatingPoint at = running(i).operatingPoint();
            plot.dot(
                    at.speed() * RPM,
                    Math.max(0, at.torque()),
                    at.hold() == OperatingPoint.Hold.HELD ? "dot" : "dot-bad");
            plot.cross(curves.get(i).runawaySpeed() * RPM, 0, "cross");
            key.line(
                    "line " + series(i),
                    "runner, " + running(i).nozzles().name() + ": " + held(at) + " at " + ShownText.speed(at.speed())
                            + ", runs away at " + ShownText.speed(curves.get(i).runawaySpeed()));
        }
        on.end();
        key.line("line s-alternator", "alternator with its no-load loss, on the bus as it runs");
        if (limit.isPresent() && limit.getAsDouble() <= end) {
            key.line(
                    "line s-limit",
                    "alternator\u2019s speed limit, " + ShownText.speed(limit.getAsDouble()) + " of the wheel");
        }
        key.write(page);
    }

    /** Look of the line of a nozzle set: told apart by dashes, not by colour alone. */
    static String series(int set) {
        return "s-set" + set % 6;
    }

    /** Whether two hills lie on each other as far as an eye can tell, so that one line is enough. */
    private static boolean sameAlternator(TorqueOverSpeed one, TorqueOverSpeed other, double most) {
        double[] speeds = speeds(other);
        double[] torques = alternator(other, most);
        double[] own = alternator(one, most);
        int at = 0;
        for (int i = 0; i < own.length; i++) {
            double speed = one.points().get(i).speed() * RPM;
            while (at + 2 < speeds.length && speeds[at + 1] < speed) {
                at++;
            }
            double share = (speed - speeds[at]) / (speeds[at + 1] - speeds[at]);
            double there = torques[at] + share * (torques[at + 1] - torques[at]);
            if (speed <= speeds[speeds.length - 1] && Math.abs(own[i] - there) > 0.02 * most) {
                return false;
            }
        }
        return true;
    }

    private OptionalDouble limit() {
        return plant.numbers().alternator().speedLimit() instanceof Amount.Known known
                ? OptionalDouble.of(known.value() / plant.numbers().alternator().gearRatio())
                : OptionalDouble.empty();
    }

    private Running running(int set) {
        return plant.solve().running().get(set);
    }

    private static double[] speeds(TorqueOverSpeed curve) {
        return curve.points().stream().mapToDouble(p -> p.speed() * RPM).toArray();
    }

    private static double[] runner(TorqueOverSpeed curve) {
        return curve.points().stream().mapToDouble(p -> Math.max(0, p.runner())).toArray();
    }

    /** Left out where it is cut off, so that no line is drawn along the top. */
    private static double[] alternator(TorqueOverSpeed curve, double most) {
        return curve.points().stream()
                .mapToDouble(p -> p.alternator() <= most ? Math.max(0, p.alternator()) : Double.NaN)
                .toArray();
    }

    private static String held(OperatingPoint at) {
        return switch (at.hold()) {
            case HELD -> "held";
            case NOT_HELD -> "not held";
            case BELOW_CUT_IN -> "below cut-in, no current,";
            case DOES_NOT_START -> "does not start, at rest,";
        };
    }

    private DataTable table() {
        DataTable table = new DataTable(
                "Where the wheel runs",
                "nozzle set",
                "speed",
                "torque",
                "alternator\u2019s most",
                "share of it",
                "runaway",
                "alternator holds it");
        for (int i = 0; i < curves.size(); i++) {
            OperatingPoint at = running(i).operatingPoint();
            table.row(
                    running(i).nozzles().name() + (running(i).nozzles().asBuilt() ? " (open)" : ""),
                    ShownText.speed(at.speed()),
                    ShownText.torque(at.torque()),
                    ShownText.torque(at.peak().torque()),
                    at.peak().torque() > 0
                            ? ShownText.percent(at.torque() / at.peak().torque())
                            : "",
                    ShownText.speed(curves.get(i).runawaySpeed()),
                    held(at).replace(", no current,", ""));
        }
        return table;
    }
}
