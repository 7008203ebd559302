package org.leat.sure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import org.leat.check.Comparison;
import org.leat.check.Examined;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.Trial;
import org.leat.sure.Sureness.Basis;
import org.leat.sure.Sureness.OfVerdict;
import org.leat.sure.Sureness.Share;

/** Moves every input of an examined design, one at a time and then, for what is near its limit, all together. */
final class Study {

    /** Plants sampled: a power of two, see {@link SobolPoints}. */
    static final int POINTS = 1024;

    /** Of a value's variance; what is less matters not at all. */
    private static final double LEAST_SHARE = 1e-6;

    private final int count;
    private final Trial trial;
    private final List<VariedInput> inputs;
    private final Answers base;
    private final List<Ends> ends = new ArrayList<>();

    /** What rules answer with one input moved down and up, and where to. */
    private record Ends(double low, Answers atLow, double high, Answers atHigh) {}

    private Study(Trial trial, int count) {
        this.count = count;
        this.trial = trial;
        this.inputs = VariedInput.all(trial.plant());
        this.base = Answers.of(trial.outcomes());
    }

    /** {@return how sure the verdicts are, so many plants sampled: a power of two} */
    static Sureness of(Examined examined, int count) {
        Trial trial = examined.trial();
        if (trial == null || !trial.plant().unsolvable().isEmpty()) {
            return new Sureness(List.of(), List.of(), 0, OptionalDouble.empty(), 0);
        }
        return new Study(trial, count).sureness(examined.report());
    }

    /** What compares a value, and what turns at an end of an assumption. */
    private static List<Finding> subjects(Report report) {
        return report.findings().stream()
                .filter(f -> f.outcome().comparison() != null || !f.restsOn().isEmpty())
                .toList();
    }

    private Sureness sureness(Report report) {
        List<Finding> subjects = subjects(report);
        for (int i = 0; i < inputs.size(); i++) {
            ends.add(ends(i));
        }
        List<OfVerdict> first = subjects.stream().map(this::firstOrder).toList();
        Samples samples = sample(first);
        return new Sureness(
                inputs.stream().map(VariedInput::input).toList(),
                first.stream().map(samples::told).toList(),
                samples.points(),
                errorStands(report, samples) ? OptionalDouble.of(1) : samples.anyError(),
                samples.doubtful());
    }

    /** An error that is not near its limit, or compares nothing, is not sampled: it stands. */
    private static boolean errorStands(Report report, Samples samples) {
        return report.findings().stream()
                .map(Finding::outcome)
                .anyMatch(o -> fails(o) && o.level() == Level.ERROR && !samples.asks(o.identity()));
    }

    /** One standard uncertainty either way, no further than the range. */
    private Ends ends(int index) {
        Sureness.Input input = inputs.get(index).input();
        double u = input.standardUncertainty();
        double low = Math.max(input.low(), input.value() - u);
        double high = Math.min(input.high(), input.value() + u);
        return new Ends(low, answers(index, low), high, answers(index, high));
    }

    private Answers answers(int index, double to) {
        if (to == inputs.get(index).input().value()) {
            return base;
        }
        double[] values = new double[inputs.size()];
        Arrays.fill(values, Double.NaN);
        values[index] = to;
        return Answers.of(outcomes(values, rule -> true));
    }

    /** {@return what rules answer with inputs moved; nothing where there can be no such design} */
    private List<Outcome> outcomes(double[] values, Predicate<String> rules) {
        try {
            return VariedInput.moved(trial, inputs, values).outcomes(rules);
        } catch (IllegalArgumentException e) {
            return List.of();
        }
    }

    /** {@return what the slopes tell; {@link Basis#SAMPLED} and no probability where sampling must} */
    private OfVerdict firstOrder(Finding finding) {
        Outcome outcome = finding.outcome();
        Comparison compared = outcome.comparison();
        if (compared == null) {
            return toSample(finding, OptionalDouble.empty(), List.of());
        }
        boolean alone = base.atPlace(outcome.identity()) == 1;
        double[] at = Exceedance.of(compared);
        List<List<FirstOrder.Slope>> slopes = new ArrayList<>();
        for (int side = 0; side < at.length; side++) {
            slopes.add(new ArrayList<>());
        }
        boolean turns = !finding.restsOn().isEmpty();
        for (int i = 0; i < inputs.size(); i++) {
            Ends end = ends.get(i);
            Outcome low = end.atLow.like(outcome.identity(), alone);
            Outcome high = end.atHigh.like(outcome.identity(), alone);
            double[] atLow = Exceedance.alike(compared, low);
            double[] atHigh = Exceedance.alike(compared, high);
            if (low == null || high == null || atLow == null || atHigh == null) {
                return toSample(finding, OptionalDouble.empty(), List.of());
            }
            turns |= fails(low) == compared.holds() || fails(high) == compared.holds();
            Sureness.Input input = inputs.get(i).input();
            for (int side = 0; side < at.length; side++) {
                slopes.get(side)
                        .add(FirstOrder.slope(
                                new FirstOrder.At(end.low, atLow[side]),
                                new FirstOrder.At(input.value(), at[side]),
                                new FirstOrder.At(end.high, atHigh[side]),
                                input.standardUncertainty()));
            }
        }
        return judged(finding, at, slopes, turns);
    }

    private static boolean fails(Outcome outcome) {
        return outcome.kind() == Kind.FAIL;
    }

    private OfVerdict judged(Finding finding, double[] at, List<List<FirstOrder.Slope>> slopes, boolean turns) {
        boolean near = turns;
        boolean moved = turns;
        double failing = 0;
        int nearest = 0;
        for (int side = 0; side < at.length; side++) {
            double u = FirstOrder.uncertainty(slopes.get(side));
            double most = FirstOrder.withBends(slopes.get(side));
            if (!Double.isFinite(most)) {
                return toSample(finding, OptionalDouble.empty(), List.of());
            }
            moved |= most > 0;
            near |= most > 0 && Math.abs(at[side]) <= Sureness.NEAR * most;
            failing += u > 0 ? FailingProbability.of(at[side], u) : at[side] > 0 ? 1 : 0;
            nearest = Math.abs(at[side]) < Math.abs(at[nearest]) ? side : nearest;
        }
        double u = FirstOrder.uncertainty(slopes.get(nearest));
        List<Share> shares = shares(slopes.get(nearest), u);
        if (near) {
            return toSample(finding, OptionalDouble.of(u), shares);
        }
        return new OfVerdict(
                finding,
                moved ? Basis.FIRST_ORDER : Basis.UNMOVED,
                moved ? OptionalDouble.of(u) : OptionalDouble.empty(),
                moved ? OptionalDouble.of(Math.min(1, failing)) : OptionalDouble.empty(),
                0,
                shares);
    }

    private static OfVerdict toSample(Finding finding, OptionalDouble uncertainty, List<Share> shares) {
        return new OfVerdict(finding, Basis.SAMPLED, uncertainty, OptionalDouble.empty(), 0, shares);
    }

    private List<Share> shares(List<FirstOrder.Slope> slopes, double uncertainty) {
        List<Share> shares = new ArrayList<>();
        for (int i = 0; i < inputs.size() && uncertainty > 0; i++) {
            double part = slopes.get(i).contribution() / uncertainty;
            if (part * part > LEAST_SHARE) {
                shares.add(new Share(inputs.get(i).input().path(), slopes.get(i).contribution(), part * part));
            }
        }
        shares.sort(Comparator.comparingDouble(Share::share).reversed().thenComparing(Share::path));
        return shares;
    }

    /** Asks the rules of verdicts near their limits about plants all over the ranges. */
    private Samples sample(List<OfVerdict> first) {
        Samples samples = new Samples(
                first.stream()
                        .filter(v -> v.basis() == Basis.SAMPLED)
                        .map(OfVerdict::finding)
                        .toList(),
                base);
        if (samples.isEmpty() || inputs.isEmpty()) {
            return samples;
        }
        for (double[] point : SobolPoints.of(inputs.size(), count)) {
            for (int i = 0; i < point.length; i++) {
                Sureness.Input input = inputs.get(i).input();
                point[i] = input.low() + point[i] * (input.high() - input.low());
            }
            samples.add(Answers.of(outcomes(point, samples.rules())));
        }
        return samples;
    }
}
