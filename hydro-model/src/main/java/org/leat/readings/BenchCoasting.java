package org.leat.readings;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;

/**
 * What slows a motor that coasts, by least squares over all runs: ω falls by a + κ ω in a second, each run from a speed of its own.
 * Times that begin anew begin a new run.
 *
 * @param constant a, rad/s²
 * @param growing κ, 1/s
 * @param constantStandard uncertainty of a, one sigma; not a number where nothing is left over
 * @param growingStandard uncertainty of κ, one sigma
 * @param fastest speed read, rad/s
 * @param slowest speed read, rad/s
 */
record BenchCoasting(
        double constant,
        double growing,
        double constantStandard,
        double growingStandard,
        double fastest,
        double slowest) {

    /** Beyond so many standard uncertainties a part below nil is no chance. */
    private static final double NO_CHANCE = 3;

    private static final double STRAIGHT = 1e-9;

    private record Point(int run, double time, double speed, double standard, String path) {}

    /** {@return the fit; null where fewer than two speeds of one run are there} What cannot be goes to the list. */
    static @Nullable BenchCoasting of(BenchReadings file, double speedShare, List<MotorBench.Cannot> cannot) {
        List<Point> points = points(file, speedShare, cannot);
        int runs = points.isEmpty() ? 0 : points.get(points.size() - 1).run() + 1;
        if (points.size() < runs + 1) {
            return null;
        }
        double fastest = points.stream().mapToDouble(Point::speed).max().orElse(0);
        double slowest = points.stream().mapToDouble(Point::speed).min().orElse(0);
        boolean both = points.size() > runs + 1;
        double[] fit = fitted(points, runs, true, both);
        if (fit.length == 0) {
            return null;
        }
        String path = points.get(points.size() - 1).path();
        if (both && fit[1] < 0) {
            if (fit[1] < -NO_CHANCE * fit[3]) {
                cannot.add(new MotorBench.Cannot(path, MotorBench.Why.TORQUE_FALLS, fit[1]));
            }
            fit = fitted(points, runs, true, false);
        } else if (fit[0] < 0) {
            if (fit[0] < -NO_CHANCE * fit[2]) {
                cannot.add(new MotorBench.Cannot(path, MotorBench.Why.TORQUE_ABOVE_PROPORTION, fit[0]));
            }
            fit = fitted(points, runs, false, true);
        }
        return fit.length == 0 ? null : new BenchCoasting(fit[0], fit[1], fit[2], fit[3], fastest, slowest);
    }

    private static List<Point> points(BenchReadings file, double speedShare, List<MotorBench.Cannot> cannot) {
        List<Point> points = new ArrayList<>();
        int run = -1;
        Point last = null;
        for (int i = 0; i < file.readings().size(); i++) {
            BenchReadings.Row row = file.readings().get(i);
            Measured<?> speed = row.speed();
            if (row.time() == null || speed == null) {
                last = null;
                continue;
            }
            double time = Si.of(row.time());
            String path = "/readings[" + i + "]";
            double standard =
                    Math.max(speed.plusMinusSi() > 0 ? speed.plusMinusSi() / 2 : speedShare * speed.si(), 0.05);
            if (last != null && time > last.time()) {
                if (speed.si() >= last.speed()) {
                    cannot.add(new MotorBench.Cannot(path + "/speed", MotorBench.Why.COASTS_FASTER, speed.si()));
                    continue;
                }
            } else if (last != null && time == last.time()) {
                cannot.add(new MotorBench.Cannot(path + "/time", MotorBench.Why.SAME_TIME, time));
                continue;
            } else {
                run++;
            }
            last = new Point(run, time, speed.si(), standard, path);
            points.add(last);
        }
        return points;
    }

    /** Constant and growing part, their uncertainties; empty where nothing fits. */
    private static double[] fitted(List<Point> points, int runs, boolean constant, boolean growing) {
        int parts = (constant ? 1 : 0) + (growing ? 1 : 0);
        double[] read =
                points.stream().mapToDouble(p -> p.speed() / p.standard()).toArray();
        double[] start = new double[parts + runs];
        double[] begun = new double[runs];
        double steepest = 0;
        double speed = 1;
        for (int i = points.size() - 1; i >= 0; i--) {
            Point p = points.get(i);
            if (i > 0 && points.get(i - 1).run() == p.run()) {
                Point before = points.get(i - 1);
                steepest = (before.speed() - p.speed()) / (p.time() - before.time());
                speed = before.speed();
            }
            start[parts + p.run()] = p.speed();
            begun[p.run()] = p.time();
        }
        start[0] = constant ? (growing ? 0.7 : 1) * steepest : steepest / speed;
        if (constant && growing) {
            start[1] = 0.3 * steepest / speed;
        }
        LeastSquaresFit.Result result = LeastSquaresFit.of(
                at -> {
                    double a = constant ? at[0] : 0;
                    double kappa = growing ? at[parts - 1] : 0;
                    double[] values = new double[points.size()];
                    for (int i = 0; i < values.length; i++) {
                        Point p = points.get(i);
                        values[i] = speed(a, kappa, at[parts + p.run()], p.time() - begun[p.run()]) / p.standard();
                    }
                    return values;
                },
                read,
                start);
        if (!(result instanceof LeastSquaresFit.Fitted fit)) {
            return new double[0];
        }
        double[] at = fit.parameters();
        double[] standard = fit.weighted();
        return new double[] {
            constant ? at[0] : 0,
            growing ? at[parts - 1] : 0,
            constant ? standard[0] : 0,
            growing ? standard[parts - 1] : 0
        };
    }

    /** {@link org.leat.electrics.CoastingCurve}, also of parts below nil, on the way to those that are not. */
    private static double speed(double a, double kappa, double from, double time) {
        double x = kappa * time;
        double shape = Math.abs(x) < STRAIGHT ? 1 : -Math.expm1(-x) / x;
        return from * Math.exp(-x) - a * time * shape;
    }

    /** {@return the fall of speed in a second at a speed, rad/s²} */
    double at(double speed) {
        return constant + growing * speed;
    }
}
