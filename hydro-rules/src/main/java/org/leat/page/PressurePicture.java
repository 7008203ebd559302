package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leat.check.Report;
import org.leat.page.Drawing.Place;
import org.leat.plant.Plant;
import org.leat.plant.cases.PressureProfile;
import org.leat.plant.cases.PressureProfile.Point;
import org.leat.plant.numbers.Amount;
import org.leat.report.Wording;

/** Ground above, pressures below, along the pipe from the intake to the nozzles. */
final class PressurePicture {

    private static final double BAR = 1e5;
    private static final double LEFT = 40;
    private static final double RIGHT = 392;

    private final PressureProfile profile;
    private final List<Amount> forAMoment;
    private final double[] distance;

    /** Ratings for a moment are those of the section that ends at each point, of the first at the intake. */
    private PressurePicture(PressureProfile profile, List<Amount> forAMoment) {
        this.profile = profile;
        this.forAMoment = forAMoment;
        this.distance = profile.points().stream().mapToDouble(Point::distance).toArray();
    }

    static Figure of(Report report, @Nullable Plant plant, Wording wording) {
        PressureProfile profile = report.profile();
        List<Amount> forAMoment = new ArrayList<>();
        for (int i = 0; i < profile.points().size(); i++) {
            forAMoment.add(
                    plant == null
                            ? Amount.notStated("/penstock")
                            : plant.numbers()
                                    .penstock()
                                    .sections()
                                    .get(Math.max(0, i - 1))
                                    .surgeRatingHot());
        }
        PressurePicture picture = new PressurePicture(profile, forAMoment);
        return new Figure(Topic.PRESSURE, picture.caption(wording), picture::draw, List.of(picture.table()));
    }

    private String caption(Wording wording) {
        StringBuilder text = new StringBuilder(
                "Standing and running must stay below the lower dashed line, the highest pressure of a stop out of the shaded field:"
                        + " beyond them the pipe, its wall at its hottest, is stressed more than it is rated for. Below zero"
                        + " the pipe is sucked in.");
        if (profile.highestDuring() != null) {
            text.append(" Highest in ").append(profile.highestDuring());
            text.append(profile.rejoined() ? ", as the water column, having parted, rejoins" : "");
            text.append("; lowest in ").append(profile.lowestDuring()).append('.');
        }
        Amount.Unknown parts = profile.parts();
        if (parts != null) {
            text.append(" Not the last word: ")
                    .append(wording.phrase(parts.reason()))
                    .append('.');
        }
        return text.toString();
    }

    private void draw(Markup page) {
        Drawing on = Drawing.begin(page, Topic.PRESSURE.id(), "Ground and pressures along the pipe", 388);
        double length = distance[distance.length - 1];
        Scale x = Scale.even(0, length, LEFT, RIGHT);
        ground(on, x);
        double[] standing = bars(Point::standing);
        double[] running = bars(Point::running);
        double[] highest = amounts(Point::highest);
        double[] lowest = amounts(Point::lowest);
        double[] rating = amounts(Point::ratingHot);
        double[] moment =
                forAMoment.stream().mapToDouble(a -> a.or(Double.NaN) / BAR).toArray();
        double most = 1.08 * Math.max(0.5, greatest(standing, running, highest, rating, moment));
        double least = Math.min(0, least(lowest, running) * 1.1);
        Plot plot = new Plot(on, x, Scale.even(least, most, 346, 126));
        rated(on, plot, rating, moment, most);
        plot.axes("m along the pipe", "bar", 5);
        plot.line(distance, standing, "line s-water");
        plot.line(distance, running, "line s-run");
        plot.line(distance, highest, "line s-high");
        plot.line(distance, lowest, "line s-low");
        rings(on, plot, standing, rating);
        rings(on, plot, highest, moment);
        on.end();
        int last = distance.length - 1;
        Point end = profile.points().get(last);
        new Legend()
                .line("line s-water", "standing, nozzles shut: " + ShownText.bar(end.standing()) + " at the nozzle")
                .line("line s-run", "running: " + ShownText.bar(end.running()))
                .line("line s-high", "highest: " + ShownText.bar(end.highest()))
                .line("line s-low", "lowest: " + ShownText.bar(end.lowest()))
                .line("line s-rating", "rating of the pipe, hottest wall: " + ShownText.bar(end.ratingHot()))
                .line("line s-moment", "what it may see for a moment: " + ShownText.bar(forAMoment.get(last)))
                .write(page);
    }

    /** The ground from the side, the pipe on it. */
    private void ground(Drawing on, Scale x) {
        double[] elevation =
                profile.points().stream().mapToDouble(Point::elevation).toArray();
        double top = Math.max(1e-3, greatest(elevation));
        Plot plot = new Plot(on, x, Scale.even(Math.min(0, least(elevation)), top, 88, 26));
        plot.axes("", "ground, m above the nozzle", 2);
        List<Place> outline = new ArrayList<>();
        for (int i = 0; i < elevation.length; i++) {
            outline.add(new Place(plot.x(distance[i]), plot.y(elevation[i])));
        }
        StringBuilder d = new StringBuilder("M" + Drawing.pair(LEFT, 92));
        outline.forEach(p -> d.append('L').append(Drawing.pair(p.x(), p.y())));
        on.path(d.append('L').append(Drawing.pair(RIGHT, 92)).append('Z').toString(), "earth");
        on.through(outline, "line s-pipe");
    }

    /** The ratings of each section, and the field in which nothing may be even for a moment. */
    private void rated(Drawing on, Plot plot, double[] rating, double[] moment, double most) {
        for (int i = 1; i < distance.length; i++) {
            double left = plot.x(distance[i - 1]);
            double right = plot.x(distance[i]);
            double top = Double.isNaN(moment[i]) ? rating[i] : moment[i];
            if (!Double.isNaN(top)) {
                on.rectangle(left, plot.y(most), right - left, plot.y(top) - plot.y(most), "beyond");
            }
            if (!Double.isNaN(moment[i])) {
                on.line(left, plot.y(moment[i]), right, plot.y(moment[i]), "line s-moment");
            }
            if (!Double.isNaN(rating[i])) {
                on.line(left, plot.y(rating[i]), right, plot.y(rating[i]), "line s-rating");
            }
        }
    }

    /** Rings the ends of a line that lie beyond what the section above them is rated for. */
    private void rings(Drawing on, Plot plot, double[] pressure, double[] rated) {
        for (int i = 1; i < distance.length; i++) {
            if (pressure[i] > rated[i]) {
                on.circle(plot.x(distance[i]), plot.y(pressure[i]), 7, "ring-bad");
            }
        }
    }

    private DataTable table() {
        DataTable table = new DataTable(
                "Pressures along the pipe",
                "point",
                "distance",
                "ground",
                "standing",
                "running",
                "highest",
                "lowest",
                "rating",
                "for a moment");
        for (int i = 0; i < profile.points().size(); i++) {
            Point point = profile.points().get(i);
            table.row(
                    point.at(),
                    ShownText.length(point.distance()),
                    ShownText.length(point.elevation()),
                    ShownText.bar(point.standing()),
                    ShownText.bar(point.running()),
                    ShownText.bar(point.highest()),
                    ShownText.bar(point.lowest()),
                    ShownText.bar(point.ratingHot()),
                    ShownText.bar(forAMoment.get(i)));
        }
        return table;
    }

    private double[] bars(Function<Point, Double> which) {
        return profile.points().stream().mapToDouble(p -> which.apply(p) / BAR).toArray();
    }

    private double[] amounts(Function<Point, Amount> which) {
        return profile.points().stream()
                .mapToDouble(p -> which.apply(p).or(Double.NaN) / BAR)
                .toArray();
    }

    private static double greatest(double[]... all) {
        double most = 0;
        for (double[] some : all) {
            for (double one : some) {
                most = one > most ? one : most;
            }
        }
        return most;
    }

    private static double least(double[]... all) {
        double least = 0;
        for (double[] some : all) {
            for (double one : some) {
                least = one < least ? one : least;
            }
        }
        return least;
    }
}
