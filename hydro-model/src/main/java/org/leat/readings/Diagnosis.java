package org.leat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.special.Gamma;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * What is wrong with a plant, by its readings: each fault's likelihood, its size integrated over, times how common it is; ranked. A
 * reading that only a changed build explains within its tolerance accuses nobody.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Diagnosis {

    /** Below this share of readings as unlikely under the best fault, no single fault explains them. */
    private static final double UNEXPLAINED = 1e-4;

    /** Faults whose readings suit within this factor cannot be told apart by them. */
    private static final double ALIKE = 3;

    /** Least probability to be spoken of. */
    private static final double WORTH = 0.02;

    /** Least probability at which what can hurt someone is told first. */
    private static final double DANGER = 0.05;

    /** Likelihood over that of a sound plant below which the readings do not accuse a fault. */
    private static final double ACCUSED = 1.5;

    /** ln of the likelihood over that of a sound plant within which readings do not show a fault. */
    private static final double UNSEEN = 0.1;

    private static final double LOW = 0.025;

    /** Further readings told of. */
    private static final int MOST_NEXT = 4;

    /** Bits by which a reading with nothing changed on the bus is preferred to one that needs a change. */
    private static final double EASIER = 0.05;

    /**
     * One fault and how likely it is.
     *
     * @param kind of fault
     * @param nozzles the one set that has it; "" where that does not matter
     * @param probability of it
     * @param size that suits best, as {@link FaultKind} counts it; for another nozzle its bore, m; not a number where it has none
     * @param low least size that suits, 95 %
     * @param high greatest size that suits, 95 %
     */
    public record Ranked(FaultKind kind, String nozzles, double probability, double size, double low, double high) {}

    /**
     * Faults that the readings cannot tell from the first.
     *
     * @param kind of the other fault
     * @param separating the reading that would; null where none of the plant's would
     */
    public record Twin(FaultKind kind, @Nullable Channel separating) {}

    /**
     * A reading not yet taken.
     *
     * @param channel what would be read
     * @param bits that it would tell of which fault it is, on average
     */
    public record Next(Channel channel, double bits) {}

    /**
     * Two faults together.
     *
     * @param one of them
     * @param other of them
     * @param sizeOfOne as {@link FaultKind} counts it
     * @param sizeOfOther as {@link FaultKind} counts it
     * @param share of their probability among all pairs
     */
    public record Pair(FaultKind one, FaultKind other, double sizeOfOne, double sizeOfOther, double share) {}

    private final List<Ranked> ranked;
    private final List<Twin> twins;
    private final List<Next> next;
    private final List<Pair> pairs;
    private final List<Ranked> dangers;
    private final List<FaultKind> unseen;
    private final double suits;

    private Diagnosis(
            List<Ranked> ranked,
            List<Ranked> dangers,
            List<FaultKind> unseen,
            List<Twin> twins,
            List<Next> next,
            List<Pair> pairs,
            double suits) {
        this.dangers = List.copyOf(dangers);
        this.unseen = List.copyOf(unseen);
        this.ranked = List.copyOf(ranked);
        this.twins = List.copyOf(twins);
        this.next = List.copyOf(next);
        this.pairs = List.copyOf(pairs);
        this.suits = suits;
    }

    /** {@return what is wrong, each fault as common as it usually is} */
    public static Diagnosis of(FaultTable table, List<Observation> readings) {
        return of(table, readings, Map.of());
    }

    /**
     * {@return what is wrong}
     *
     * @param common how common faults are against the others, in place of {@link FaultKind#weight}
     */
    public static Diagnosis of(FaultTable table, List<Observation> readings, Map<FaultKind, Double> common) {
        return new Working(table, readings, common).diagnosis();
    }

    /** {@return every fault worth a word, the likeliest first; with nothing read, as common as they are} */
    public List<Ranked> ranked() {
        return ranked;
    }

    /** {@return faults that can hurt someone and that the readings make likelier, the likeliest first: told before all else} */
    public List<Ranked> dangers() {
        return dangers;
    }

    /** {@return faults that these readings would hardly show, so that their probability is that of having been looked for no more} */
    public List<FaultKind> unseen() {
        return unseen;
    }

    /** {@return what cannot be told from the first by these readings} */
    public List<Twin> twins() {
        return twins;
    }

    /** {@return the readings that would tell most, the best first} */
    public List<Next> next() {
        return next;
    }

    /** {@return how often readings under the likeliest fault would be as far off as these, a share} */
    public double suits() {
        return suits;
    }

    /** {@return whether no single fault explains the readings} */
    public boolean unexplained() {
        return suits < UNEXPLAINED;
    }

    /** {@return the likeliest two faults together, where no single one explains the readings; else none} */
    public List<Pair> pairs() {
        return pairs;
    }

    /** {@return probability of a fault} */
    public double probability(FaultKind kind) {
        return ranked.stream()
                .filter(r -> r.kind() == kind)
                .mapToDouble(Ranked::probability)
                .sum();
    }

    /** One diagnosis being made. */
    private static final class Working {
        private final FaultTable table;
        private final List<Observation> readings;
        private final Map<FaultKind, Double> common;
        private final List<Hypothesis> hypotheses = new ArrayList<>();
        private final double[] probability;
        /** ln of the likelihood at the size that suits best. */
        private final Map<FaultKind, Double> suiting = new EnumMap<>(FaultKind.class);

        Working(FaultTable table, List<Observation> readings, Map<FaultKind, Double> common) {
            this.table = table;
            this.readings = List.copyOf(readings);
            this.common = common;
            List<Double> log = new ArrayList<>();
            for (FaultKind kind : table.kinds()) {
                List<Hypothesis> all = Hypothesis.all(table, kind, this.readings);
                double weight = weight(kind);
                double most = Double.NEGATIVE_INFINITY;
                for (Hypothesis one : all) {
                    if (!one.points().isEmpty()) {
                        hypotheses.add(one);
                        log.add(Math.log(weight / all.size()) + one.logEvidence());
                        most = Math.max(most, one.best().said().logLikelihood());
                    }
                }
                suiting.put(kind, most);
            }
            double most = log.stream().mapToDouble(d -> d).max().orElse(0);
            double sum = log.stream().mapToDouble(d -> Math.exp(d - most)).sum();
            this.probability =
                    log.stream().mapToDouble(d -> Math.exp(d - most) / sum).toArray();
        }

        Diagnosis diagnosis() {
            Integer[] order = new Integer[hypotheses.size()];
            for (int i = 0; i < order.length; i++) {
                order[i] = i;
            }
            Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -probability[i]));
            List<Ranked> ranked = new ArrayList<>();
            for (int i : order) {
                if (probability[i] >= WORTH || ranked.isEmpty()) {
                    ranked.add(ranked(hypotheses.get(i), probability[i]));
                }
            }
            Hypothesis first = hypotheses.get(order[0]);
            double squares = hypotheses.stream()
                    .flatMap(h -> h.points().stream())
                    .mapToDouble(p -> p.said().squares())
                    .min()
                    .orElse(0);
            double suits =
                    readings.isEmpty() ? 1 : Gamma.regularizedGammaQ(readings.size() / 2.0, Math.max(0, squares) / 2);
            List<Twin> twins = first.kind() == FaultKind.NOTHING ? List.of() : twins(first, ranked);
            List<Pair> pairs = suits < UNEXPLAINED ? new FaultPairs(table, readings).likeliest(2) : List.of();
            List<Ranked> dangers = ranked.stream().filter(this::accused).toList();
            return new Diagnosis(ranked, dangers, unseen(), twins, next(), pairs, suits);
        }

        /** Whether it can hurt someone, is not unlikely, and suits the readings better than a sound plant does. */
        private boolean accused(Ranked one) {
            double sound = 0;
            for (int i = 0; i < probability.length; i++) {
                sound += hypotheses.get(i).kind() == FaultKind.NOTHING ? probability[i] : 0;
            }
            return one.kind().dangerous()
                    && one.probability() >= DANGER
                    && one.probability() / weight(one.kind()) > ACCUSED * sound / weight(FaultKind.NOTHING);
        }

        private List<FaultKind> unseen() {
            double sound = hypotheses.stream()
                    .filter(h -> h.kind() == FaultKind.NOTHING)
                    .mapToDouble(Hypothesis::logEvidence)
                    .findFirst()
                    .orElse(0);
            return table.kinds().stream()
                    .filter(kind -> kind != FaultKind.NOTHING)
                    .filter(kind -> hypotheses.stream()
                            .filter(h -> h.kind() == kind)
                            .allMatch(h -> Math.abs(h.logEvidence() - sound) < UNSEEN))
                    .toList();
        }

        private double weight(FaultKind kind) {
            return common.getOrDefault(kind, kind.weight());
        }

        private Ranked ranked(Hypothesis one, double share) {
            String nozzles = one.set() < 0
                    ? ""
                    : table.expectations().sets().get(one.set()).name();
            if (!one.kind().sized()) {
                boolean bore = one.kind() == FaultKind.NOZZLE_OTHER;
                double size = bore ? one.best().size() : Double.NaN;
                return new Ranked(one.kind(), nozzles, share, size, size, size);
            }
            double[] weights = one.weights();
            double low = quantile(one, weights, LOW);
            double high = quantile(one, weights, 1 - LOW);
            FaultSize.Size fit = new FaultSize(table, one, readings).fitted();
            return new Ranked(
                    one.kind(),
                    nozzles,
                    share,
                    Math.min(Math.max(fit.size(), low / fit.factor()), high * fit.factor()),
                    Math.min(low, fit.size() / fit.factor()),
                    Math.max(high, fit.size() * fit.factor()));
        }

        private static double quantile(Hypothesis one, double[] weights, double share) {
            double sum = 0;
            for (int i = 0; i < weights.length; i++) {
                sum += weights[i];
                if (sum >= share) {
                    return one.points().get(i).size();
                }
            }
            return one.points().get(weights.length - 1).size();
        }

        private List<Twin> twins(Hypothesis first, List<Ranked> ranked) {
            List<Twin> twins = new ArrayList<>();
            double best = suiting.getOrDefault(first.kind(), 0.0);
            for (FaultKind kind : table.kinds()) {
                boolean other = kind != first.kind() && kind != FaultKind.NOTHING;
                boolean alike = suiting.getOrDefault(kind, Double.NEGATIVE_INFINITY) > best - Math.log(ALIKE);
                boolean spoken = ranked.stream().anyMatch(r -> r.kind() == kind);
                if (other && alike && spoken) {
                    twins.add(new Twin(kind, separating(first, kind)));
                }
            }
            return twins;
        }

        private @Nullable Channel separating(Hypothesis first, FaultKind kind) {
            Hypothesis other = hypotheses.stream()
                    .filter(h -> h.kind() == kind)
                    .max(Comparator.comparingDouble(Hypothesis::logEvidence))
                    .orElse(first);
            Channel best = null;
            // what would tell them apart must do so by two standard uncertainties
            double most = 2;
            for (Channel channel : candidates()) {
                Told one = told(first, channel);
                Told two = told(other, channel);
                double apart = Math.abs(one.mean() - two.mean()) / Math.sqrt(one.variance() + two.variance());
                if (apart > most * 1.01) {
                    most = apart;
                    best = channel;
                }
            }
            return best;
        }

        /** Readings that were not taken and that the plant tells. */
        private List<Channel> candidates() {
            List<Channel> all = new ArrayList<>();
            Expectations expected = table.expectations();
            all.add(Channel.standing());
            for (var set : expected.sets()) {
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
            return all;
        }

        /**
         * What a fault lets one expect of a further reading.
         *
         * @param mean SI
         * @param variance the instrument's included
         */
        private record Told(double mean, double variance) {}

        private Told told(Hypothesis one, Channel channel) {
            Hypothesis.Reader reader = new Hypothesis.Reader(table, one.kind(), one.set());
            double[] weights = one.weights();
            double mean = 0;
            double square = 0;
            double variance = 0;
            for (int i = 0; i < weights.length; i++) {
                if (weights[i] > 1e-3) {
                    Hypothesis.Point point = one.points().get(i);
                    double[] moved = reader.moved(channel, point.node());
                    double value = reader.value(channel, point);
                    for (int b = 0; b < moved.length && !readings.isEmpty(); b++) {
                        value += moved[b] * point.said().tolerances()[b];
                    }
                    double own =
                            Math.hypot(channel.what().usualUncertainty(value), reader.model(channel, point.node()));
                    double left = readings.isEmpty()
                            ? square(moved)
                            : point.evidence().left(moved);
                    mean += weights[i] * value;
                    square += weights[i] * value * value;
                    variance += weights[i] * (own * own + left);
                }
            }
            double sum = Arrays.stream(weights).filter(w -> w > 1e-3).sum();
            mean /= sum;
            return new Told(mean, variance / sum + Math.max(0, square / sum - mean * mean));
        }

        private static double square(double[] values) {
            double sum = 0;
            for (double value : values) {
                sum += value * value;
            }
            return sum;
        }

        private List<Next> next() {
            List<Hypothesis> alive = new ArrayList<>();
            List<Double> shares = new ArrayList<>();
            for (int i = 0; i < hypotheses.size(); i++) {
                if (probability[i] > 0.005) {
                    alive.add(hypotheses.get(i));
                    shares.add(probability[i]);
                }
            }
            List<Next> all = new ArrayList<>();
            for (Channel channel : candidates()) {
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
                if (!told && best.size() < MOST_NEXT) {
                    best.add(one);
                }
            }
            return best;
        }

        private double worth(Next next) {
            Channel channel = next.channel();
            boolean open = readings.stream().anyMatch(r -> r.channel().nozzles().equals(channel.nozzles()));
            return next.bits()
                    + (channel.state() == LoadState.BUS || channel.state() == LoadState.SHUT ? EASIER : 0)
                    + (open ? EASIER : 0);
        }

        private static final double[] NODES = {-2.0201829, -0.9585725, 0, 0.9585725, 2.0201829};
        private static final double[] WEIGHTS = {0.0199532, 0.3936193, 0.9453087, 0.3936193, 0.0199532};

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
}
