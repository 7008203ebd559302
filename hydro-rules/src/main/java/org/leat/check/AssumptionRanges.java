package org.leat.check;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import org.jspecify.annotations.Nullable;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.file.Position;
import org.leat.plant.Plant;
import org.leat.plant.numbers.Assumption;

/**
 * Moves each assumption of a plant, one at a time, to both ends of its range and judges again. A verdict that fails at
 * an end of a range, or cannot be judged there, but not at the value assumed is open: it hangs on the field that was not
 * given.
 */
final class AssumptionRanges {

    private final List<Assumption> assumptions;
    private final Map<Identity, Verdict> settled;
    private final Map<Identity, List<SensitiveVerdict>> hanging = new TreeMap<>();

    private AssumptionRanges(List<Assumption> assumptions, List<Verdict> verdicts) {
        this.assumptions = assumptions;
        this.settled = byIdentity(verdicts);
    }

    static AssumptionRanges explore(List<RuleRun> runs, Plant plant, List<Verdict> verdicts) {
        return explore(runs, plant.assumptions(), verdicts, moved -> new Trials(plant.like(moved)));
    }

    /**
     * {@return the same}
     *
     * @param moved the plant with the assumption of a path moved to a value
     */
    static AssumptionRanges explore(
            List<RuleRun> runs,
            List<Assumption> assumptions,
            List<Verdict> verdicts,
            Function<Map<String, Double>, Trials> moved) {
        AssumptionRanges ranges = new AssumptionRanges(assumptions, verdicts);
        Map<Identity, Verdict> base = byIdentity(verdicts);
        for (Assumption assumption : assumptions) {
            Map<Identity, Verdict> low = moved(runs, moved, assumption, assumption.low(), base);
            Map<Identity, Verdict> high = moved(runs, moved, assumption, assumption.high(), base);
            ranges.compare(assumption, base, low, high);
        }
        return ranges;
    }

    private static Map<Identity, Verdict> moved(
            List<RuleRun> runs,
            Function<Map<String, Double>, Trials> moved,
            Assumption assumption,
            double to,
            Map<Identity, Verdict> base) {
        if (to == assumption.value() || !Double.isFinite(to)) {
            return base;
        }
        return byIdentity(Verdict.all(runs, moved.apply(Map.of(assumption.path(), to))));
    }

    private static Map<Identity, Verdict> byIdentity(List<Verdict> verdicts) {
        Map<Identity, Verdict> map = new LinkedHashMap<>();
        for (Verdict verdict : verdicts) {
            map.merge(verdict.outcome().identity(), verdict, AssumptionRanges::worse);
        }
        return map;
    }

    private static Verdict worse(Verdict one, Verdict other) {
        return one.outcome().kind().compareTo(other.outcome().kind()) <= 0 ? one : other;
    }

    private void compare(
            Assumption assumption,
            Map<Identity, Verdict> base,
            Map<Identity, Verdict> low,
            Map<Identity, Verdict> high) {
        Map<Identity, Verdict> all = new TreeMap<>(base);
        low.forEach(all::putIfAbsent);
        high.forEach(all::putIfAbsent);
        all.forEach((id, any) -> {
            Verdict lowVerdict = low.get(id);
            Verdict highVerdict = high.get(id);
            if (!base.containsKey(id) && failsInAnotherCase(base, id, worseOf(lowVerdict, highVerdict))) {
                return; // the worst case of a failure is another there
            }
            Kind now = kind(base.get(id));
            Kind atLow = kind(lowVerdict);
            Kind atHigh = kind(highVerdict);
            if (turns(now, atLow) || turns(now, atHigh)) {
                hanging.computeIfAbsent(id, i -> new ArrayList<>())
                        .add(new SensitiveVerdict(assumption.path(), atLow, atHigh));
                Verdict failing = worseOf(lowVerdict, highVerdict);
                open(id, now, failing, assumption);
            }
        });
    }

    /** Whether the same rule fails already at the same place, and as badly as it would there. */
    private static boolean failsInAnotherCase(Map<Identity, Verdict> base, Identity id, @Nullable Verdict there) {
        return there != null
                && base.entrySet().stream()
                        .anyMatch(other -> other.getKey().rule().equals(id.rule())
                                && other.getKey().path().equals(id.path())
                                && other.getValue().outcome() instanceof Outcome.Fail fails
                                && fails.level().compareTo(there.outcome().level()) >= 0);
    }

    /** What would fail, or could no longer be judged: a pass that hangs on luck is none. A question answered well is not. */
    private static boolean turns(Kind now, Kind then) {
        return now != then && (now == Kind.FAIL || then == Kind.FAIL || (now == Kind.PASS && then == Kind.OPEN));
    }

    private static @Nullable Verdict worseOf(@Nullable Verdict low, @Nullable Verdict high) {
        return low == null ? high : high == null ? low : worse(low, high);
    }

    private static Kind kind(@Nullable Verdict verdict) {
        return verdict == null ? Kind.NOT_APPLICABLE : verdict.outcome().kind();
    }

    private void open(Identity id, Kind now, @Nullable Verdict failing, Assumption assumption) {
        if (failing == null || now == Kind.FAIL || now == Kind.OPEN || now == Kind.REVIEW) {
            return;
        }
        Verdict verdict = settled.getOrDefault(id, failing);
        if (verdict.outcome().kind() == Kind.OPEN) {
            return; // hangs on an earlier assumption too
        }
        Outcome was = verdict.outcome();
        Message message = Message.of(CommonMessages.HANGS_ON_ASSUMPTION, Arg.at("field", assumption.path()));
        settled.put(
                id,
                verdict.with(new Outcome.Open(
                        was.identity(), failing.outcome().level(), was.comparison(), message, assumption.path())));
    }

    /** {@return every verdict, passes that hang on an assumption turned into open questions} */
    List<Verdict> settled() {
        return List.copyOf(settled.values());
    }

    /** {@return what a verdict rests on} */
    List<SensitiveVerdict> under(Identity id) {
        return hanging.getOrDefault(id, List.of());
    }

    /** {@return each assumption with the verdicts that hang on it} */
    List<AssumedValue> assumed(Function<String, Position> positions) {
        List<AssumedValue> values = new ArrayList<>();
        for (Assumption assumption : assumptions) {
            List<Identity> turns = new ArrayList<>();
            hanging.forEach((id, list) -> {
                if (list.stream().anyMatch(h -> h.field().equals(assumption.path()))) {
                    turns.add(id);
                }
            });
            values.add(new AssumedValue(assumption, positions.apply(assumption.path()), turns));
        }
        return values;
    }
}
