package org.leat.readings;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * How likely each fault is by readings: its likelihood, its size integrated over, times how common it is. Sizes that these readings
 * would not show, by three standard uncertainties of all of them together, are left apart: no reading is for or against them, and a
 * sound plant stands for nothing that they would show.
 */
final class Posterior {

    private final FaultTable table;
    private final List<Observation> readings;
    private final Map<FaultKind, Double> common;
    private final List<Hypothesis> hypotheses = new ArrayList<>();
    private final double[] probability;
    private final double[] whole;
    private final double soundLog;
    /** ln of the likelihood at the size that suits best. */
    private final Map<FaultKind, Double> suiting = new EnumMap<>(FaultKind.class);

    /** @param common how common faults are against the others, in place of {@link FaultKind#weight} */
    Posterior(FaultTable table, List<Observation> readings, Map<FaultKind, Double> common) {
        this.table = table;
        this.readings = List.copyOf(readings);
        this.common = Map.copyOf(common);
        Hypothesis.Sound sound = Hypothesis.Sound.of(table, this.readings);
        List<Double> shares = new ArrayList<>();
        double soundLog = 0;
        for (FaultKind kind : table.kinds()) {
            List<Hypothesis> all = Hypothesis.all(table, kind, this.readings, sound);
            double most = Double.NEGATIVE_INFINITY;
            for (Hypothesis one : all) {
                if (!one.points().isEmpty()) {
                    hypotheses.add(one);
                    shares.add(Math.log(weight(kind) / all.size()));
                    most = Math.max(most, one.best().said().logLikelihood());
                    soundLog = kind == FaultKind.NOTHING ? one.logEvidence() : soundLog;
                }
            }
            suiting.put(kind, most);
        }
        this.soundLog = soundLog;
        int n = hypotheses.size();
        double[] log = new double[n];
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < n; i++) {
            log[i] = shares.get(i) + hypotheses.get(i).logEvidence();
            most = Math.max(most, log[i]);
        }
        this.whole = new double[n];
        this.probability = new double[n];
        double all = 0;
        double shown = 0;
        for (int i = 0; i < n; i++) {
            Hypothesis one = hypotheses.get(i);
            whole[i] = Math.exp(log[i] - most);
            probability[i] = one.kind() == FaultKind.NOTHING
                    ? whole[i]
                    : Math.exp(shares.get(i) + one.logEvidenceShown() - most);
            all += whole[i];
            shown += probability[i];
        }
        for (int i = 0; i < n; i++) {
            whole[i] /= all;
            probability[i] /= shown;
        }
    }

    FaultTable table() {
        return table;
    }

    List<Observation> readings() {
        return readings;
    }

    /** {@return every fault, on each set that may have it} */
    List<Hypothesis> hypotheses() {
        return hypotheses;
    }

    /** {@return how likely it is among all that the readings would show, and nothing} */
    double probability(int place) {
        return probability[place];
    }

    /** {@return how likely it is at any size} */
    double whole(int place) {
        return whole[place];
    }

    /** {@return how common faults are where that is not the usual} */
    Map<FaultKind, Double> common() {
        return common;
    }

    private double weight(FaultKind kind) {
        return common.getOrDefault(kind, kind.weight());
    }

    /** {@return how much better it suits the readings than a sound plant does, ln of the likelihoods' ratio at sizes that show} */
    double overSound(Hypothesis one) {
        long shown = one.points().stream().filter(Hypothesis.Point::shows).count();
        return shown == 0
                ? Double.NEGATIVE_INFINITY
                : one.logEvidenceShown() + Math.log((double) one.points().size() / shown) - soundLog;
    }

    /** {@return ln of the likelihood at the size of a fault that suits best} */
    double suiting(FaultKind kind) {
        return suiting.getOrDefault(kind, Double.NEGATIVE_INFINITY);
    }

    /** {@return the least χ² of all faults and sizes} */
    double leastSquares() {
        return hypotheses.stream()
                .flatMap(h -> h.points().stream())
                .mapToDouble(p -> p.said().squares())
                .min()
                .orElse(0);
    }
}
