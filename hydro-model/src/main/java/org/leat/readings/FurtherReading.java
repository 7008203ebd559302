package org.leat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.Diagnosis.Next;

/** What a reading not yet taken would tell: which of all would tell most, which parts two faults, which shows one. */
final class FurtherReading {

    /** Readings told of. */
    private static final int MOST = 4;

    /** Bits by which a reading with nothing changed on the bus is preferred to one that needs a change. */
    private static final double EASIER = 0.05;

    /** What is less likely is left out. */
    private static final double ALIVE = 0.005;

    /** Standard uncertainties by which a reading must tell two faults apart. */
    private static final double APART = 2;

    /** Standard uncertainties by which a reading must be moved to show a fault. */
    private static final double SHOWS = 3;

    /** Standard uncertainties beyond which one reading is as good as another, and the easier is told. */
    private static final double PLENTY = 6;

    private static final double[] NODES = {-2.0201829, -0.9585725, 0, 0.9585725, 2.0201829};
    private static final double[] WEIGHTS = {0.0199532, 0.3936193, 0.9453087, 0.3936193, 0.0199532};

    private final Posterior posterior;
    private final FaultTable table;
    private final List<Observation> readings;
    private final List<Channel> candidates;

    FurtherReading(Posterior posterior) {
        this.posterior = posterior;
        this.table = posterior.table();
        this.readings = posterior.readings();
        this.candidates = candidates();
    }

    /** Readings that were not taken and that the plant tells. */
    private List<Channel> candidates() {
        List<Channel> all = new ArrayList<>();
        Expectations expected = table.expectations();
        all.add(Channel.standing());
        for (NozzleGroup set : expected.sets()) {
            for (LoadState state : List.of(LoadState.BUS, LoadState.OPEN, LoadState.DUMP)) {
                for (ReadingKind what : ReadingKind.values()) {
                    Channel channel = new Channel(set.name(), state, what);
                    if (Channel.exists(state, what) && expected.known(channel)) {
                        all.add(channel);
                    }
                }
            }
        }
        all.removeIf(channel -> readings.stream().anyMatch(r -> r.channel().equals(channel)));
        return List.copyOf(all);
    }

    /**
     * What a fault lets one expect of a further reading.
     *
     * @param mean SI
     * @param variance the instrument's included
     */
    private record Told(double mean, double variance) {}

    private Told told(Hypothesis one, Channel channel) {
        FaultReader.At at = new FaultReader(table, one.kind(), one.set()).at(channel);
        double[] weights = one.weights();
        double mean = 0;
        double square = 0;
        double variance = 0;
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] > 1e-3) {
                Hypothesis.Point point = one.points().get(i);
                double[] moved = at.moved(point.node());
                double[] off = point.said().tolerances();
                double value = at.value(point);
                for (int b = 0; b < off.length; b++) {
                    value += moved[b] * off[b];
                }
                double own = channel.what().usualUncertainty(value);
                double model = at.model(point.node());
                double left = readings.isEmpty()
                        ? square(moved)
                        : point.said().evidence().left(moved);
                mean += weights[i] * value;
                square += weights[i] * value * value;
                variance += weights[i] * (own * own + model * model + left);
                sum += weights[i];
            }
        }
        mean /= sum;
        return new Told(mean, variance / sum + Math.max(0, square / sum - mean * mean));
    }

    private static double square(double[] values) {
        return Arrays.stream(values).map(v -> v * v).sum();
    }

    /** {@return the reading that tells two faults apart best; null where none does} */
    @Nullable
    Channel separating(Hypothesis first, Hypothesis other) {
        Channel best = null;
        double most = 0;
        for (Channel channel : candidates) {
            Told one = told(first, channel);
            Told two = told(other, channel);
            double apart = Math.abs(one.mean() - two.mean()) / Math.sqrt(one.variance() + two.variance());
            double worth = ease(channel) * Math.min(apart, PLENTY);
            if (apart > APART && worth > most * 1.01) {
                most = worth;
                best = channel;
            }
        }
        return best;
    }

    /** {@return the reading that would show a fault of a middle size best, or of the greatest; null where none would} */
    @Nullable
    Channel showing(FaultKind kind) {
        FaultReader reader = new FaultReader(table, kind, kind.ofOneNozzle() ? 0 : -1);
        int last = reader.nodes() - 1;
        for (int node : new int[] {last / 2, last}) {
            Channel best = null;
            double most = 0;
            for (Channel channel : candidates) {
                FaultReader.At at = reader.at(channel);
                double value = at.value(node);
                double moved = Math.abs(value - at.sound());
                double open = Math.hypot(
                        channel.what().usualUncertainty(value),
                        Math.max(at.model(node), table.expectations().uncertainty(channel)));
                double worth = ease(channel) * Math.min(moved / open, PLENTY);
                if (moved / open > SHOWS && worth > most * 1.01) {
                    most = worth;
                    best = channel;
                }
            }
            if (best != null) {
                return best;
            }
        }
        return null;
    }

    /** {@return the readings of most expected information, the best first} */
    List<Next> next() {
        List<Hypothesis> alive = new ArrayList<>();
        List<Double> shares = new ArrayList<>();
        for (int i = 0; i < posterior.hypotheses().size(); i++) {
            if (posterior.whole(i) > ALIVE) {
                alive.add(posterior.hypotheses().get(i));
                shares.add(posterior.whole(i));
            }
        }
        List<Next> all = new ArrayList<>();
        for (Channel channel : candidates) {
            double bits = bits(alive, shares, channel);
            if (bits > 0.01) {
                all.add(new Next(channel, bits));
            }
        }
        all.sort(Comparator.comparingDouble((Next n) -> -worth(n)));
        List<Next> best = new ArrayList<>();
        for (Next one : all) {
            boolean told = best.stream()
                    .anyMatch(n -> n.channel().what() == one.channel().what()
                            && n.channel().state() == one.channel().state());
            if (!told && best.size() < MOST) {
                best.add(one);
            }
        }
        return best;
    }

    private double worth(Next next) {
        return next.bits() + EASIER * easy(next.channel());
    }

    private double ease(Channel channel) {
        return 1 + 0.1 * easy(channel);
    }

    /** Two for a set that was read, on the bus; one for one of these. */
    private int easy(Channel channel) {
        boolean open = readings.stream().anyMatch(r -> r.channel().nozzles().equals(channel.nozzles()));
        return (channel.state() == LoadState.BUS || channel.state() == LoadState.SHUT ? 1 : 0) + (open ? 1 : 0);
    }

    /** Mean of ln f/Σ p f over each fault's reading, by Gauss and Hermite, in bits. */
    private double bits(List<Hypothesis> alive, List<Double> shares, Channel channel) {
        List<Told> told = alive.stream().map(h -> told(h, channel)).toList();
        double sum = 0;
        double whole = shares.stream().mapToDouble(d -> d).sum();
        for (int h = 0; h < told.size(); h++) {
            for (int n = 0; n < NODES.length; n++) {
                double x = told.get(h).mean() + Math.sqrt(2 * told.get(h).variance()) * NODES[n];
                double all = 0;
                for (int g = 0; g < told.size(); g++) {
                    all += shares.get(g) / whole * density(told.get(g), x);
                }
                double own = density(told.get(h), x);
                if (own > 0 && all > 0) {
                    sum += shares.get(h) / whole * WEIGHTS[n] / Math.sqrt(Math.PI) * Math.log(own / all);
                }
            }
        }
        return sum / Math.log(2);
    }

    private static double density(Told told, double x) {
        double off = x - told.mean();
        return Math.exp(-0.5 * off * off / told.variance()) / Math.sqrt(told.variance());
    }
}
