package org.leat.page;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.leat.choice.PartsFront;

/** Sets of parts by their price and their energy: those with the fewest warnings joined by a line, the others beside it. */
final class FrontPicture {

    private static final double TOP = 28;
    private static final double FOOT = 250;
    private static final double LEFT = 50;
    private static final double RIGHT = 388;
    private static final double KILOWATT_HOUR = 3.6e6;

    /** Two numbers nearer to each other than this cannot be read. */
    private static final double ROOM = 15;

    private final List<PartsFront.Point> points;
    private final int fewest;

    FrontPicture(List<PartsFront.Point> points) {
        this.points = points;
        this.fewest = points.stream().mapToInt(p -> p.warnings().size()).min().orElse(0);
    }

    void draw(Markup page, String currency) {
        Drawing on = Drawing.begin(page, "front", "Energy of a year over the price of the parts", FOOT + 42);
        Plot plot = new Plot(
                on,
                around(points.stream().mapToDouble(FrontPicture::price).toArray(), LEFT, RIGHT),
                around(points.stream().mapToDouble(FrontPicture::energy).toArray(), FOOT, TOP));
        plot.axes("price, " + currency, "energy of a year, kWh", 5);
        double[] across = calm().mapToDouble(FrontPicture::price).toArray();
        double[] up = calm().mapToDouble(FrontPicture::energy).toArray();
        plot.line(across, up, "line s-run");
        List<double[]> written = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            PartsFront.Point point = points.get(i);
            boolean isCalm = point.warnings().size() == fewest;
            plot.dot(price(point), energy(point), isCalm ? "dot" : "dot-bad");
            double x = plot.x(price(point));
            double y = plot.y(energy(point)) - 8;
            if (written.stream().noneMatch(w -> Math.hypot(w[0] - x, w[1] - y) < ROOM)) {
                written.add(new double[] {x, y});
                on.text(x, y, Integer.toString(i + 1), "tick mid");
            }
        }
        on.end();
        Legend key = new Legend().mark("dot", fewest == 0 ? "without a warning" : "with " + told(fewest));
        if (points.stream().anyMatch(p -> p.warnings().size() > fewest)) {
            key.mark("dot-bad", fewest == 0 ? "with warnings" : "with more warnings");
        }
        key.write(page);
    }

    private Stream<PartsFront.Point> calm() {
        return points.stream().filter(p -> p.warnings().size() == fewest);
    }

    static String told(int warnings) {
        return warnings == 1 ? "1 warning" : warnings + " warnings";
    }

    private static double price(PartsFront.Point point) {
        return point.price().doubleValue();
    }

    private static double energy(PartsFront.Point point) {
        return point.energy() / KILOWATT_HOUR;
    }

    private static Scale around(double[] values, double start, double end) {
        double least = Arrays.stream(values).min().orElse(0);
        double most = Arrays.stream(values).max().orElse(1);
        double edge = most > least ? 0.08 * (most - least) : Math.max(1, 0.1 * most);
        return Scale.even(Math.max(0, least - edge), most + edge, start, end);
    }
}
