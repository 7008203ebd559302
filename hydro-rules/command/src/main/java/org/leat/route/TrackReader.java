package org.leat.route;

import io.jenetics.jpx.GPX;
import io.jenetics.jpx.Length;
import io.jenetics.jpx.TrackSegment;
import io.jenetics.jpx.WayPoint;
import io.jenetics.jpx.geom.Geoid;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.jspecify.annotations.Nullable;

/**
 * Reads a track, GPX 1.0 or 1.1. Ways between points are geodesics on the WGS84 ellipsoid, by Vincenty's formula; what it holds of
 * heights is kept as it is. Bad content never throws.
 */
public final class TrackReader {

    private static final long LARGEST = 16L << 20;

    /** Way between neighbours beyond which a track has a hole, m. */
    private static final double LONGEST_STEP = 500;

    /** Of all points, how many may lack a height. */
    private static final double MOST_FILLED = 0.2;

    private TrackReader() {}

    /**
     * What a file says.
     *
     * @param track null where there is a fault
     * @param fault with its place; null where there is none
     */
    public record Read(@Nullable Track track, @Nullable String fault) {

        private static Read wrong(String fault) {
            return new Read(null, fault);
        }
    }

    /** {@return the track of a file} */
    public static Read read(Path file, String name) {
        try {
            if (!Files.isRegularFile(file) || Files.size(file) > LARGEST) {
                return Read.wrong(name + ": "
                        + (Files.isRegularFile(file) ? "larger than 16 MB" : "no such file, or no ordinary one"));
            }
            return read(Files.readAllBytes(file), name);
        } catch (IOException e) {
            return Read.wrong(name + ": the file cannot be read");
        }
    }

    static Read read(byte[] content, String name) {
        TrackPoints places = TrackPoints.of(content, name);
        if (places.fault() != null) {
            return Read.wrong(places.fault());
        }
        try {
            GPX gpx = GPX.Reader.of(GPX.Reader.Mode.LENIENT).read(new ByteArrayInputStream(content));
            if (gpx.getTracks().size() != 1) {
                return Read.wrong(name + ": holds "
                        + (gpx.getTracks().isEmpty()
                                ? "no track"
                                : gpx.getTracks().size() + " tracks")
                        + "; expected one, walked along the pipe");
            }
            List<WayPoint> points = gpx.getTracks()
                    .get(0)
                    .segments()
                    .flatMap(TrackSegment::points)
                    .toList();
            return track(points, places.lines(), name);
        } catch (IOException e) {
            return Read.wrong(name + ": not readable as GPX: "
                    + String.valueOf(e.getMessage()).replaceAll("\\s+", " "));
        }
    }

    private static Read track(List<WayPoint> points, List<Integer> lines, String name) {
        int count = points.size();
        if (count < 2) {
            return Read.wrong(
                    name + ": the track has " + count + (count == 1 ? " point" : " points") + "; expected many");
        }
        double[] along = new double[count];
        double[] heights = new double[count];
        int filled = 0;
        for (int i = 0; i < count; i++) {
            double step = i == 0 ? 0 : way(points.get(i - 1), points.get(i));
            if (step > LONGEST_STEP) {
                return Read.wrong(place(name, lines, i)
                        + String.format(
                                Locale.ROOT,
                                "track point %.0f m from the one before; expected no hole in the track",
                                step));
            }
            along[i] = i == 0 ? 0 : along[i - 1] + step;
            heights[i] = points.get(i).getElevation().map(Length::doubleValue).orElse(Double.NaN);
            filled += Double.isNaN(heights[i]) ? 1 : 0;
        }
        if (Double.isNaN(heights[0]) || Double.isNaN(heights[count - 1]) || filled > MOST_FILLED * count) {
            int missing = 0;
            while (!Double.isNaN(heights[missing]) && missing < count - 1) {
                missing++;
            }
            int shown = Double.isNaN(heights[0]) ? 0 : Double.isNaN(heights[count - 1]) ? count - 1 : missing;
            return Read.wrong(place(name, lines, shown) + "track point without a height (ele); " + filled + " of "
                    + count + " lack it, and the ends must have one");
        }
        fill(along, heights);
        boolean up = heights[count - 1] > heights[0];
        Track track = up ? turned(along, heights, filled) : new Track(along, heights, false, filled);
        return track.fall() > 0 && track.length() > 0
                ? new Read(track, null)
                : Read.wrong(name + ": the track does not fall");
    }

    private static String place(String name, List<Integer> lines, int point) {
        return name + (point < lines.size() ? ":" + lines.get(point) : "") + ": ";
    }

    /** Horizontal way, m; infinite where the formula does not find it, for points on opposite sides of the earth. */
    static double way(WayPoint from, WayPoint to) {
        try {
            return Geoid.WGS84.distance(from, to).doubleValue();
        } catch (ArithmeticException e) {
            return Double.POSITIVE_INFINITY;
        }
    }

    private static void fill(double[] along, double[] heights) {
        int known = 0;
        for (int i = 1; i < heights.length; i++) {
            if (Double.isNaN(heights[i])) {
                continue;
            }
            for (int j = known + 1; j < i; j++) {
                double way = along[i] - along[known];
                double share = way > 0 ? (along[j] - along[known]) / way : 0.5;
                heights[j] = heights[known] + share * (heights[i] - heights[known]);
            }
            known = i;
        }
    }

    private static Track turned(double[] along, double[] heights, int filled) {
        int count = along.length;
        double[] down = new double[count];
        double[] fall = new double[count];
        for (int i = 0; i < count; i++) {
            down[i] = along[count - 1] - along[count - 1 - i];
            fall[i] = heights[count - 1 - i];
        }
        return new Track(down, fall, true, filled);
    }
}
