package org.leat.hydraulics;

import java.util.List;

/**
 * Highest and lowest head met at every node of a line during a surge. Heads are above the nozzle axis, m; a joint has a node in
 * each of its sections. A section too short for the grid has the heads of the joint it lies at.
 */
public final class HeadEnvelope {

    private final int[] first;
    private final double[] distance;
    private final double[] elevation;
    private final double[] highest;
    private final double[] lowest;
    private final double timeStep;
    private final double waveSpeedChange;
    private final boolean airEntered;

    HeadEnvelope(List<SurgeSection> sections, ReachGrid grid, double[] highest, double[] lowest, boolean airEntered) {
        first = new int[sections.size() + 1];
        for (int i = 0; i < sections.size(); i++) {
            int host = grid.pieces.host[i];
            first[i + 1] = first[i] + (grid.pieces.side[i] == 0 ? grid.first[host + 1] - grid.first[host] : 2);
        }
        int nodes = first[sections.size()];
        distance = new double[nodes];
        elevation = new double[nodes];
        this.highest = new double[nodes];
        this.lowest = new double[nodes];
        timeStep = grid.timeStep;
        waveSpeedChange = grid.waveSpeedChange;
        this.airEntered = airEntered;
        double start = 0;
        for (int i = 0; i < sections.size(); i++) {
            SurgeSection s = sections.get(i);
            int host = grid.pieces.host[i];
            int side = grid.pieces.side[i];
            for (int j = first[i]; j < first[i + 1]; j++) {
                double share = (j - first[i]) / (double) (first[i + 1] - 1 - first[i]);
                distance[j] = start + share * s.length();
                elevation[j] = s.fromElevation() + share * (s.toElevation() - s.fromElevation());
                int node = side > 0
                        ? grid.first[host + 1] - 1
                        : side < 0 ? grid.first[host] : grid.first[host] + j - first[i];
                this.highest[j] = highest[node];
                this.lowest[j] = lowest[node];
            }
            start += s.length();
        }
    }

    /** {@return number of nodes} */
    public int nodes() {
        return distance.length;
    }

    /** {@return first node of a section; {@code firstNode(i + 1) − 1} is its last} */
    public int firstNode(int section) {
        return first[section];
    }

    /** {@return distance of a node along the line, m} */
    public double distance(int node) {
        return distance[node];
    }

    /** {@return elevation of a node above the nozzle axis, m} */
    public double elevation(int node) {
        return elevation[node];
    }

    /** {@return highest head at a node, m} */
    public double highest(int node) {
        return highest[node];
    }

    /** {@return lowest head at a node, m} */
    public double lowest(int node) {
        return lowest[node];
    }

    /** {@return highest head, m, at a share of a section's length from its upper end; straight between nodes} */
    public double highestAt(int section, double share) {
        return at(highest, section, share);
    }

    /** {@return lowest head, m, at a share of a section's length from its upper end; straight between nodes} */
    public double lowestAt(int section, double share) {
        return at(lowest, section, share);
    }

    private double at(double[] heads, int section, double share) {
        double place = share * (first[section + 1] - 1 - first[section]);
        int node = (int) Math.min(Math.floor(place + 1e-9), first[section + 1] - 2.0 - first[section]);
        double beyond = place - node;
        int j = first[section] + node;
        return beyond < 1e-9 ? heads[j] : heads[j] + beyond * (heads[j + 1] - heads[j]);
    }

    /** {@return greatest pressure head, head less elevation, in a section, m} */
    public double highestPressureHead(int section) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (int j = first[section]; j < first[section + 1]; j++) {
            greatest = Math.max(greatest, highest[j] - elevation[j]);
        }
        return greatest;
    }

    /** {@return least pressure head, head less elevation, in a section, m; below 0 under the atmosphere's pressure} */
    public double lowestPressureHead(int section) {
        double least = Double.POSITIVE_INFINITY;
        for (int j = first[section]; j < first[section + 1]; j++) {
            least = Math.min(least, lowest[j] - elevation[j]);
        }
        return least;
    }

    /** {@return node of the least pressure head} */
    public int lowestPressureNode() {
        int node = 0;
        for (int j = 1; j < lowest.length; j++) {
            if (lowest[j] - elevation[j] < lowest[node] - elevation[node]) {
                node = j;
            }
        }
        return node;
    }

    /** {@return whether the water would boil somewhere: the envelope is then void} See {@link VapourHead}. */
    public boolean cavitates(double vapourHead) {
        int node = lowestPressureNode();
        return lowest[node] - elevation[node] < vapourHead;
    }

    /** {@return whether air came in through the nozzles} */
    public boolean airEntered() {
        return airEntered;
    }

    /** {@return largest relative adjustment of a wave speed that the grid needed} */
    public double waveSpeedChange() {
        return waveSpeedChange;
    }

    /** {@return step in time, s} */
    public double timeStep() {
        return timeStep;
    }
}
