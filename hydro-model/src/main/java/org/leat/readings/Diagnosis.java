package org.leat.readings;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import org.apache.commons.math3.special.Gamma;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.lazy.Once;
import org.leat.readings.Channel.ReadingKind;

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

    private static final double LOW = 0.025;

    /**
     * One fault and how likely it is.
     *
     * @param kind of fault
     * @param nozzles the one set that has it; "" where that does not matter
     * @param probability of it, at a size that the readings would show, among all such and nothing
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
     * A fault that the readings would not show at any size.
     *
     * @param kind of fault
     * @param showing the reading that would show it; null where none of the plant's would
     */
    public record Unseen(FaultKind kind, @Nullable Channel showing) {}

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
    private final List<FaultKind> alike;
    private final Once<List<Twin>> twins;
    private final Once<List<Next>> next;
    private final Once<List<Pair>> pairs;
    private final List<Ranked> dangers;
    private final Once<List<Unseen>> unseen;
    private final double suits;

    private Diagnosis(
            List<Ranked> ranked,
            List<Ranked> dangers,
            Once<List<Unseen>> unseen,
            List<FaultKind> alike,
            Once<List<Twin>> twins,
            Once<List<Next>> next,
            Once<List<Pair>> pairs,
            double suits) {
        this.dangers = List.copyOf(dangers);
        this.unseen = unseen;
        this.ranked = List.copyOf(ranked);
        this.alike = List.copyOf(alike);
        this.twins = twins;
        this.next = next;
        this.pairs = pairs;
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
        return new Working(new Posterior(table, readings, common)).diagnosis();
    }

    /**
     * {@return every fault worth a word, the likeliest first; with nothing read, as common as they are} What these readings would not
     * show is no reason against calling a plant sound: {@link #unseen} names it.
     */
    public List<Ranked> ranked() {
        return ranked;
    }

    /** {@return faults that can hurt someone and that the readings make likelier, the likeliest first: told before all else} */
    public List<Ranked> dangers() {
        return dangers;
    }

    /** {@return faults that these readings would not show at any size, which says nothing for or against them} */
    public List<Unseen> unseen() {
        return unseen.get();
    }

    /** {@return what cannot be told from the first by these readings} */
    public List<Twin> twins() {
        return twins.get();
    }

    /** {@return the faults of {@link #twins}, without looking for what would tell them apart} */
    List<FaultKind> alike() {
        return alike;
    }

    /** {@return the readings that would tell most, the best first} */
    public List<Next> next() {
        return next.get();
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
        return pairs.get();
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
        private final Posterior posterior;
        private final FurtherReading further;

        Working(Posterior posterior) {
            this.posterior = posterior;
            this.table = posterior.table();
            this.readings = posterior.readings();
            this.further = new FurtherReading(posterior);
        }

        Diagnosis diagnosis() {
            List<Hypothesis> hypotheses = posterior.hypotheses();
            List<Integer> order = new ArrayList<>();
            for (int i = 0; i < hypotheses.size(); i++) {
                order.add(i);
            }
            order.sort(Comparator.comparingDouble((Integer i) -> -posterior.probability(i)));
            List<Ranked> ranked = new ArrayList<>();
            List<Ranked> dangers = new ArrayList<>();
            for (int i : order) {
                if (posterior.probability(i) >= WORTH || ranked.isEmpty()) {
                    Ranked one = ranked(hypotheses.get(i), posterior.probability(i));
                    ranked.add(one);
                    if (one.kind().dangerous()
                            && one.probability() >= DANGER
                            && posterior.overSound(hypotheses.get(i)) > Math.log(ACCUSED)) {
                        dangers.add(one);
                    }
                }
            }
            Hypothesis first = hypotheses.get(order.get(0));
            double suits = readings.isEmpty()
                    ? 1
                    : Gamma.regularizedGammaQ(readings.size() / 2.0, Math.max(0, posterior.leastSquares()) / 2);
            List<FaultKind> alike = first.kind() == FaultKind.NOTHING ? List.of() : alike(first, ranked);
            Once<List<Twin>> twins = new Once<>(() -> alike.stream()
                    .map(kind -> new Twin(kind, separating(first, kind)))
                    .toList());
            Once<List<Pair>> pairs = new Once<>(() ->
                    suits < UNEXPLAINED ? new FaultPairs(table, readings, posterior.common()).likeliest(2) : List.of());
            return new Diagnosis(
                    ranked, dangers, new Once<>(this::unseen), alike, twins, new Once<>(further::next), pairs, suits);
        }

        private List<Unseen> unseen() {
            // a meter that shows other volts matters where volts were read
            boolean volts = readings.stream().anyMatch(r -> r.channel().what() == ReadingKind.LEAD_VOLTS);
            return table.kinds().stream()
                    .filter(kind -> kind != FaultKind.NOTHING && (volts || !kind.ofMeter()))
                    .filter(kind -> posterior.hypotheses().stream().noneMatch(h -> h.kind() == kind && h.shows()))
                    .map(kind -> new Unseen(kind, further.showing(kind)))
                    .toList();
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

        private List<FaultKind> alike(Hypothesis first, List<Ranked> ranked) {
            List<FaultKind> all = new ArrayList<>();
            double best = posterior.suiting(first.kind());
            for (FaultKind kind : table.kinds()) {
                boolean other = kind != first.kind() && kind != FaultKind.NOTHING;
                boolean alike = posterior.suiting(kind) > best - Math.log(ALIKE);
                boolean spoken = ranked.stream().anyMatch(r -> r.kind() == kind);
                if (other && alike && spoken) {
                    all.add(kind);
                }
            }
            return all;
        }

        private @Nullable Channel separating(Hypothesis first, FaultKind kind) {
            Hypothesis other = posterior.hypotheses().stream()
                    .filter(h -> h.kind() == kind)
                    .max(Comparator.comparingDouble(Hypothesis::logEvidence))
                    .orElse(first);
            return further.separating(first, other);
        }
    }
}
