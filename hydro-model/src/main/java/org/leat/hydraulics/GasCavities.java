package org.leat.hydraulics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * One run of a discrete gas cavity model on one grid: the method of characteristics with a trace of free gas at every node, which
 * swells to a cavity where the water would boil. Staggered grid, {@code Δt = Δx/a}, volumes over 2 Δt:
 *
 * <pre>
 * C+  H = CP − B Qu     CP = H + B Qd − R Qd|Qd|    at the node upstream, Δt ago
 * C−  H = CM + B Qd     CM = H − B Qu + R Qu|Qu|    at the node downstream, Δt ago
 * ∀ = ∀(2Δt ago) + 2 Δt (Qd − Qu)
 * (H − z − hv) ∀ = C3 = α0 · (volume of a reach) · (−hv)
 * </pre>
 *
 * <p>Qu flows into a node from above, Qd out of it below, m³/s; z elevation, hv pressure head at which water boils, m; ∀ gas
 * volume, m³. Sections of different bore and wave speed meet in a node like any other. At the nozzles: what is open passes
 * {@code Q = τ Q0 √(H/H0)}; where no head is left there, air comes in, and the water that returns must first drive it out; where
 * all is shut, a cavity as elsewhere. Source: Wylie, J. Fluids Eng. 106 (1984) 307 (from memory; its gas fraction 1e-7 and ψ near
 * 1 as quoted in later work).
 */
final class GasCavities {

    static final double GAS_FRACTION = 1e-7;

    private static final double DIED = 0.7;
    private static final double SAME = 1.01;

    private final SurgeLine line;
    private final int reaches;
    private final double timeStep;
    private final double waveSpeedChange;
    private final double vapourHead;
    private final double flow;
    private final double workingHead;
    private final NozzleOpening opening;

    /** B and R of each reach. */
    private final double[] impedance;

    private final double[] resistance;

    /** Of each node: elevation, head at which water boils, gas constant. */
    private final double[] elevation;

    private final double[] boiling;
    private final double[] gas;

    /** Of each node: sum of 1/B of the reaches beside it, and the volume that a metre of head drives in between two visits. */
    private final double[] admittance;

    private final double[] driven;
    private final ShortPieces pieces;
    private final int[] firstNode;

    private final double[] head;
    private final double[] above;
    private final double[] below;
    private final double[] volume;
    private final double[] highest;

    /** Air let in at open nozzles, m³. */
    private double air;

    private final double level;
    private final double band;
    private final double openAtLast;
    private final List<GridBlows.Blow> blows = new ArrayList<>();
    private boolean low;
    private double parted = Double.NaN;
    private double rejoined = Double.NaN;

    GasCavities(SurgeLine line, double flow, NozzleOpening opening, double vapourHead, int wished) {
        this.line = line;
        this.flow = flow;
        this.opening = opening;
        this.vapourHead = vapourHead;
        ReachGrid grid = new ReachGrid(line.sections(), wished);
        timeStep = grid.timeStep;
        waveSpeedChange = grid.waveSpeedChange;
        workingHead = line.workingHead(flow);
        pieces = grid.pieces;
        int sections = pieces.lasting.size();
        reaches = grid.nodes() - sections;
        impedance = new double[reaches];
        resistance = new double[reaches];
        elevation = new double[reaches + 1];
        boiling = new double[reaches + 1];
        gas = new double[reaches + 1];
        admittance = new double[reaches + 1];
        driven = new double[reaches + 1];
        firstNode = new int[sections + 1];
        for (int i = 0; i < sections; i++) {
            lay(i, grid);
        }
        join();
        head = new double[reaches + 1];
        above = new double[reaches + 1];
        below = new double[reaches + 1];
        volume = new double[reaches + 1];
        highest = new double[reaches + 1];
        start();
        openAtLast = opening.at(opening.lastChange() + timeStep);
        double loss = (line.tankHead() - workingHead) / workingHead;
        level = line.tankHead() / (1 + loss * openAtLast * openAtLast);
        band = 0.05 * (level - elevation[reaches] - vapourHead);
    }

    private void lay(int i, ReachGrid grid) {
        SurgeSection s = pieces.lasting.get(i);
        int count = grid.first[i + 1] - grid.first[i] - 1;
        firstNode[i + 1] = firstNode[i] + count;
        double half = GAS_FRACTION * -vapourHead * s.area() * s.length() / count / 2;
        for (int k = 0; k <= count; k++) {
            int node = firstNode[i] + k;
            elevation[node] = s.fromElevation() + k * (s.toElevation() - s.fromElevation()) / count;
            gas[node] += k == 0 || k == count ? half : 2 * half;
        }
        for (int k = firstNode[i]; k < firstNode[i + 1]; k++) {
            impedance[k] = grid.impedance[i];
            resistance[k] = grid.resistance[i];
        }
    }

    private void join() {
        for (int k = 0; k <= reaches; k++) {
            admittance[k] = (k == 0 ? 0 : 1 / impedance[k - 1]) + (k == reaches ? 0 : 1 / impedance[k]);
            driven[k] = 2 * timeStep * admittance[k];
            boiling[k] = elevation[k] + vapourHead;
        }
    }

    private void start() {
        double h = line.tankHead();
        for (int k = 0; k <= reaches; k++) {
            head[k] = h;
            double absolute = h - elevation[k] - vapourHead;
            if (!(absolute > 0)) {
                throw new IllegalArgumentException("the water boils before the stop, at node " + k);
            }
            volume[k] = gas[k] / absolute;
            h -= k < reaches ? resistance[k] * flow * Math.abs(flow) : 0;
        }
        Arrays.fill(above, flow);
        Arrays.fill(below, flow);
        System.arraycopy(head, 0, highest, 0, head.length);
    }

    /** Runs to a time, s, or until the blows have died down; {@return what was found}. */
    GridBlows run(double duration, int least) {
        int steps = (int) Math.ceil(duration / timeStep);
        boolean done = false;
        for (int step = 1; step <= steps && !done; step++) {
            boolean even = (step & 1) == 0;
            if (even) {
                tank();
            }
            inner(even ? 2 : 1);
            if (((step ^ reaches) & 1) == 0) {
                nozzles(step * timeStep);
            }
            done = ((step ^ reaches) & 1) == 0
                    && watch(step * timeStep)
                    && blows.size() >= 2 * least
                    && diedDown(least);
        }
        close();
        return new GridBlows(reaches, waveSpeedChange, parted, rejoined, blows, done || doneGrowing());
    }

    private double down(int k) {
        double q = below[k - 1];
        return head[k - 1] + q * (impedance[k - 1] - resistance[k - 1] * Math.abs(q));
    }

    private double up(int k) {
        double q = above[k + 1];
        return head[k + 1] - q * (impedance[k] - resistance[k] * Math.abs(q));
    }

    private void tank() {
        below[0] = (line.tankHead() - up(0)) / impedance[0];
        above[0] = below[0];
    }

    /**
     * Every other node between the ends: the loop in which nearly all the time of a study goes. Written out, with every array at hand,
     * for the compiler of a short run, which keeps no field in a register.
     */
    private void inner(int from) {
        double[] h = head;
        double[] qa = above;
        double[] qb = below;
        double[] v = volume;
        double[] top = highest;
        double[] z = impedance;
        double[] r = resistance;
        double[] both = admittance;
        double[] room = driven;
        double[] base = boiling;
        double[] c3 = gas;
        double upper = z[from - 1];
        double upperLoss = r[from - 1];
        for (int k = from; k < reaches; k += 2) {
            double lower = z[k];
            double lowerLoss = r[k];
            double down = qb[k - 1];
            double up = qa[k + 1];
            double cp = h[k - 1] + down * (upper - upperLoss * Math.abs(down));
            double cm = h[k + 1] - up * (lower - lowerLoss * Math.abs(up));
            double liquid = (cp / upper + cm / lower) / both[k];
            double a = room[k];
            double c = c3[k];
            double b = v[k] - a * (liquid - base[k]);
            double root = Math.sqrt(b * b + 4 * a * c);
            double absolute = b > 0 ? 2 * c / (b + root) : (root - b) / (2 * a);
            double now = base[k] + absolute;
            v[k] = c / absolute;
            h[k] = now;
            qa[k] = (cp - now) / upper;
            qb[k] = (now - cm) / lower;
            if (now > top[k]) {
                top[k] = now;
            }
            if (k + 1 < reaches) {
                upper = z[k + 1];
                upperLoss = r[k + 1];
            }
        }
    }

    private void nozzles(double time) {
        int k = reaches;
        double b = impedance[k - 1];
        double cp = down(k);
        double share = time > opening.lastChange() ? openAtLast : opening.at(time);
        if (share == 0) {
            volume[k] += air;
            air = 0;
            head[k] = cavity(k, cp);
            above[k] = (cp - head[k]) / b;
            below[k] = 0;
        } else if (cp < 0 || air > 0) {
            head[k] = 0;
            above[k] = (cp - head[k]) / b;
            below[k] = above[k];
            air = Math.max(0, air - 2 * timeStep * above[k]);
        } else {
            double full = share * flow;
            double c = full * full / workingHead;
            double half = c * b / 2;
            double q = cp == 0 ? 0 : c * cp / (half + Math.sqrt(half * half + c * cp));
            head[k] = cp - b * q;
            above[k] = q;
            below[k] = q;
        }
        highest[k] = Math.max(highest[k], head[k]);
    }

    /** The head at which the gas has room: {@code h (S + a (h − h_liquid)) = C3}, a quadratic with one root above nought. */
    private double cavity(int k, double liquidHead) {
        double base = boiling[k];
        double a = driven[k];
        double c3 = gas[k];
        double b = volume[k] - a * (liquidHead - base);
        double root = Math.sqrt(b * b + 4 * a * c3);
        double h = b > 0 ? 2 * c3 / (b + root) : (root - b) / (2 * a);
        volume[k] = c3 / h;
        return base + h;
    }

    /** Whether a blow ends at the nozzles: the head falls below its level at rest, having been above it. */
    private boolean watch(double time) {
        double h = head[reaches];
        double absolute = h - elevation[reaches] - vapourHead;
        double margin = level - elevation[reaches] - vapourHead;
        if (Double.isNaN(parted) && absolute < 0.02 * margin) {
            parted = time;
        } else if (!Double.isNaN(parted) && Double.isNaN(rejoined) && absolute > 0.1 * margin) {
            rejoined = time;
        }
        if (low) {
            low = h <= level + band;
            return false;
        }
        low = h < level - band;
        if (low) {
            close();
        }
        return low;
    }

    /** Ends a blow: notes its highest pressure head in each section, and begins anew. */
    private void close() {
        double rise = 0;
        for (double h : highest) {
            if (h - level > rise) {
                rise = h - level;
            }
        }
        double[] peaks = new double[pieces.host.length];
        for (int i = 0; i < peaks.length; i++) {
            peaks[i] = peak(i);
        }
        blows.add(new GridBlows.Blow(highest[reaches] - elevation[reaches], rise, peaks));
        System.arraycopy(head, 0, highest, 0, head.length);
    }

    private double peak(int section) {
        int host = pieces.host[section];
        if (pieces.side[section] != 0) {
            SurgeSection piece = line.sections().get(section);
            int joint = pieces.side[section] < 0 ? firstNode[host] : firstNode[host + 1];
            return highest[joint] - Math.min(piece.fromElevation(), piece.toElevation());
        }
        double peak = Double.NEGATIVE_INFINITY;
        for (int k = firstNode[host]; k <= firstNode[host + 1]; k++) {
            double pressure = highest[k] - elevation[k];
            if (pressure > peak) {
                peak = pressure;
            }
        }
        return peak;
    }

    /** Whether the last blows all rise well less above the level at rest than the greatest. */
    private boolean diedDown(int least) {
        int early = blows.size() - least;
        return risen(early, blows.size()) <= DIED * risen(0, early);
    }

    /** Whether the later half of the blows brought nothing greater: waves that merely go on swinging do not. */
    private boolean doneGrowing() {
        int half = (blows.size() + 1) / 2;
        return risen(half, blows.size()) <= SAME * risen(0, half);
    }

    private double risen(int from, int to) {
        double rise = 0;
        for (int k = from; k < to; k++) {
            rise = Math.max(rise, blows.get(k).rise());
        }
        return rise;
    }
}
