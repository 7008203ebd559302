package org.leat.route;

import java.util.ArrayList;
import java.util.List;

/**
 * A track from its upper to its lower end. Immutable.
 */
public final class Track {

    private final double[] along;
    private final double[] heights;
    private final boolean turned;
    private final int filled;

    /**
     * A stretch between two points that were kept.
     *
     * @param along its length on the map, m
     * @param fall by the track's own heights, m; negative where it rises
     */
    public record Stretch(double along, double fall) {}

    Track(double[] along, double[] heights, boolean turned, int filled) {
        this.along = along.clone();
        this.heights = heights.clone();
        this.turned = turned;
        this.filled = filled;
    }

    /** {@return how many points it has} */
    public int points() {
        return along.length;
    }

    /** {@return its length on the map, m} */
    public double length() {
        return along[along.length - 1];
    }

    /** {@return how far it falls by its own heights, m} */
    public double fall() {
        return heights[0] - heights[heights.length - 1];
    }

    /** {@return whether it was recorded upwards} */
    public boolean turned() {
        return turned;
    }

    /** {@return points without a height, taken straight between their neighbours} */
    public int filled() {
        return filled;
    }

    /**
     * {@return its shape from the upper end, drawn with few stretches}
     *
     * @param noise of its heights, m: a point no farther than this from the straight line is none of the shape
     */
    public List<Stretch> shape(double noise) {
        List<Integer> kept = DouglasPeucker.kept(along, heights, noise);
        List<Stretch> stretches = new ArrayList<>();
        for (int i = 1; i < kept.size(); i++) {
            int from = kept.get(i - 1);
            int to = kept.get(i);
            stretches.add(new Stretch(along[to] - along[from], heights[from] - heights[to]));
        }
        return stretches;
    }
}
