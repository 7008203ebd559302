package org.leat.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.PriorityQueue;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.BooleanSupplier;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * The exact front of a {@link SelectionProblem}: every set for which no other costs no more, gains no less and has no more faults, one of
 * these being better.
 *
 * <p>Sets come cheapest first, by best-first branch and bound over the choices in their order. A set is checked only if it gains
 * more than every kept one: each of those costs no more, so that what is skipped costs no less and gains no more than a set kept.
 * Fewer faults are a third aim: when the front of two aims is whole, it is searched again among sets with fewer faults than the
 * worst on it, and so on until no set is left or the checks allowed are used up. What was solved or checked once is remembered.
 *
 * <p>Work is dealt out in portions of fixed size and taken in order, so that the answer and the counts are the same for any number
 * of threads.
 */
final class FrontSearch {

    /** Checks begun together, before the first of them is known to be needed: fixed, whatever the threads. */
    private static final int TOGETHER = 4;

    private final SelectionProblem problem;
    private final int portion;
    private final int[] options;
    private final Map<List<Integer>, Double> gains = new HashMap<>();
    private final Map<List<Integer>, Integer> checks = new HashMap<>();
    private int forbidden;
    private List<Integer> refused = List.of();

    /**
     * A search.
     *
     * @param portion sets whose gain is looked at together
     */
    FrontSearch(SelectionProblem problem, int portion) {
        this.problem = problem;
        this.portion = portion;
        this.options = problem.options().clone();
    }

    /**
     * How far a search goes.
     *
     * @param threads that look at once
     * @param faults that a set may have at most
     * @param checks after which no further search among sets with fewer faults is begun or gone on with; the first is not cut short
     * @param goOn asked after each portion, and between checks; the search ends as it is where it says no
     */
    record SearchExtent(int threads, int faults, long checks, Predicate<Counts> goOn) {}

    /**
     * What was looked at.
     *
     * @param solved sets whose gain was asked for
     * @param checked sets that were checked
     * @param forbidden of those, that must not be
     * @param kept on the front so far
     * @param reached cost below which everything is settled
     */
    record Counts(int solved, int checked, int forbidden, int kept, long reached) {}

    /** A set on the front. */
    record FrontPoint(List<Integer> set, long cost, double gain, int faults) {

        private boolean beats(FrontPoint other) {
            boolean noWorse = cost <= other.cost && gain >= other.gain && faults <= other.faults;
            return noWorse && (cost < other.cost || gain > other.gain || faults < other.faults);
        }
    }

    /** What came of it. */
    enum SearchEnd {
        /** The front of three aims is whole. */
        WHOLE,
        /** The front of cost and gain is whole; fewer faults were not looked for to the end. */
        OF_TWO_AIMS,
        /** It was stopped before. */
        STOPPED
    }

    /**
     * The front.
     *
     * @param points by cost, among equals by gain, the highest first
     * @param counts what was looked at
     * @param reached cost below which the front of cost and gain is whole
     * @param possible gain that no set exceeds that was not settled; empty where all were, or where nothing bounds it
     * @param fewer faults below which nothing is proven; zero where the front is whole, empty where nothing is proven
     * @param refused the last set that must not be; empty where there was none
     */
    record Front(
            List<FrontPoint> points,
            SearchEnd end,
            Counts counts,
            long reached,
            OptionalDouble possible,
            OptionalInt fewer,
            List<Integer> refused) {}

    /** A set of which the first options are taken. */
    private static final class Node {
        private final int[] set;
        private final int known;
        private final long least;
        private final double given;

        Node(int[] set, int known, long least, double given) {
            this.set = set;
            this.known = known;
            this.least = least;
            this.given = given;
        }

        int[] set() {
            return set;
        }

        int known() {
            return known;
        }

        long least() {
            return least;
        }

        double given() {
            return given;
        }
    }

    private static final Comparator<Node> CHEAPEST = Comparator.comparingLong(Node::least)
            .thenComparing(Comparator.comparingInt(Node::known).reversed())
            .thenComparing(Node::set, Arrays::compare);

    private record CandidateSet(List<Integer> set, long cost, double gain) {}

    private static final Comparator<CandidateSet> BEST_FIRST = Comparator.comparingLong(CandidateSet::cost)
            .thenComparing(Comparator.comparingDouble(CandidateSet::gain).reversed());

    /** One search among sets with no more faults than allowed. */
    private static final class Level {
        private final List<FrontPoint> kept = new ArrayList<>();
        private final PriorityQueue<Node> open = new PriorityQueue<>(CHEAPEST);
        private double best = Double.NEGATIVE_INFINITY;
        private long reached;
        private boolean stopped;
    }

    /** {@return the front} */
    Front search(SearchExtent extent) {
        ExecutorService threads = Executors.newFixedThreadPool(Math.max(1, extent.threads()), work -> {
            Thread thread = new Thread(work, "search");
            thread.setDaemon(true);
            return thread;
        });
        try {
            return search(extent, threads);
        } finally {
            threads.shutdownNow();
        }
    }

    private Front search(SearchExtent extent, ExecutorService threads) {
        Level first = level(extent, extent.faults(), threads, false);
        List<FrontPoint> points = new ArrayList<>(first.kept);
        OptionalDouble possible =
                first.open.stream().mapToDouble(node -> problem.mostGain(node.set(), node.known())).max().stream()
                        .filter(Double::isFinite)
                        .findFirst();
        if (first.stopped) {
            return front(points, SearchEnd.STOPPED, first, possible, OptionalInt.empty());
        }
        Level last = first;
        while (!last.kept.isEmpty()) {
            int fewer = last.kept.stream().mapToInt(FrontPoint::faults).max().orElse(0);
            if (fewer == 0) {
                break;
            }
            last = checks.size() >= extent.checks() ? null : level(extent, fewer - 1, threads, true);
            if (last == null || last.stopped) {
                if (last != null) {
                    points.addAll(last.kept);
                }
                return front(points, SearchEnd.OF_TWO_AIMS, first, possible, OptionalInt.of(fewer));
            }
            points.addAll(last.kept);
        }
        return front(points, SearchEnd.WHOLE, first, possible, OptionalInt.of(0));
    }

    private Front front(List<FrontPoint> all, SearchEnd end, Level first, OptionalDouble possible, OptionalInt fewer) {
        List<FrontPoint> points = new ArrayList<>();
        for (FrontPoint point : all) {
            if (all.stream().noneMatch(other -> other.beats(point))
                    && points.stream().noneMatch(p -> p.set().equals(point.set()))) {
                points.add(point);
            }
        }
        points.sort(Comparator.comparingLong(FrontPoint::cost)
                .thenComparing(Comparator.comparingDouble(FrontPoint::gain).reversed())
                .thenComparingInt(FrontPoint::faults));
        return new Front(List.copyOf(points), end, counts(first), first.reached, possible, fewer, refused);
    }

    private Counts counts(Level level) {
        return new Counts(gains.size(), checks.size(), forbidden, level.kept.size(), level.reached);
    }

    private Level level(SearchExtent extent, int faults, ExecutorService threads, boolean limited) {
        Level level = new Level();
        int[] nothing = new int[options.length];
        push(level, nothing, 0);
        List<Node> taken = new ArrayList<>();
        while (true) {
            taken.clear();
            take(level, taken);
            if (taken.isEmpty()) {
                level.reached = SelectionProblem.NONE;
                return level;
            }
            level.reached = taken.get(0).least();
            if (isEnded(extent, level, limited)) {
                level.stopped = true;
                level.open.addAll(taken);
                return level;
            }
            List<CandidateSet> candidates = solved(taken, threads);
            int to = check(level, candidates, faults, threads, () -> isEnded(extent, level, limited));
            if (to < candidates.size()) {
                level.stopped = true;
                level.reached = candidates.get(to).cost();
                for (CandidateSet left : candidates.subList(to, candidates.size())) {
                    level.open.add(new Node(array(left.set()), options.length, left.cost(), level.best));
                }
                return level;
            }
        }
    }

    private boolean isEnded(SearchExtent extent, Level level, boolean limited) {
        return !extent.goOn().test(counts(level)) || (limited && checks.size() >= extent.checks());
    }

    /** Takes whole sets, cheapest first, as many as a portion has. */
    private void take(Level level, List<Node> taken) {
        while (taken.size() < portion && !level.open.isEmpty()) {
            Node node = level.open.poll();
            if (node.given() < level.best) {
                // told for less than must be exceeded by now
                long least = problem.leastCost(node.set(), node.known(), level.best);
                if (least == SelectionProblem.NONE) {
                    continue;
                }
                if (least > node.least()) {
                    level.open.add(new Node(node.set(), node.known(), least, level.best));
                    continue;
                }
            }
            if (node.known() == options.length) {
                taken.add(node);
                continue;
            }
            for (int option = 0; option < options[node.known()]; option++) {
                int[] child = node.set().clone();
                child[node.known()] = option;
                push(level, child, node.known() + 1);
            }
        }
    }

    private void push(Level level, int[] set, int known) {
        long least = problem.leastCost(set, known, level.best);
        if (least != SelectionProblem.NONE) {
            level.open.add(new Node(set, known, least, level.best));
        }
    }

    private List<CandidateSet> solved(List<Node> nodes, ExecutorService threads) {
        List<List<Integer>> sets = new ArrayList<>();
        for (Node node : nodes) {
            sets.add(Arrays.stream(node.set()).boxed().toList());
        }
        List<List<Integer>> unknown =
                sets.stream().filter(set -> !gains.containsKey(set)).toList();
        List<Double> found = all(unknown, set -> problem.gain(array(set)), threads);
        for (int i = 0; i < unknown.size(); i++) {
            gains.put(unknown.get(i), found.get(i));
        }
        List<CandidateSet> candidates = new ArrayList<>();
        for (List<Integer> set : sets) {
            double gain = gains.getOrDefault(set, Double.NaN);
            if (!Double.isNaN(gain)) {
                candidates.add(new CandidateSet(set, problem.cost(array(set)), gain));
            }
        }
        candidates.sort(BEST_FIRST);
        return candidates;
    }

    /** {@return how many of the candidates are settled; not all where it was told to end before} */
    private int check(
            Level level, List<CandidateSet> candidates, int faults, ExecutorService threads, BooleanSupplier ended) {
        int at = 0;
        while (at < candidates.size()) {
            if (at > 0 && ended.getAsBoolean()) {
                return at;
            }
            List<CandidateSet> next = new ArrayList<>();
            double foreseen = level.best;
            int to = at;
            for (; to < candidates.size() && next.size() < TOGETHER; to++) {
                CandidateSet candidate = candidates.get(to);
                if (candidate.gain() > foreseen) {
                    next.add(candidate);
                }
            }
            List<List<Integer>> unknown = next.stream()
                    .map(CandidateSet::set)
                    .filter(set -> !checks.containsKey(set))
                    .toList();
            List<Double> found = all(unknown, set -> problem.check(array(set)), threads);
            for (int i = 0; i < unknown.size(); i++) {
                int verdict = (int) (double) found.get(i);
                checks.put(unknown.get(i), verdict);
                if (verdict == SelectionProblem.FORBIDDEN) {
                    forbidden++;
                    refused = unknown.get(i);
                }
            }
            for (CandidateSet candidate : next) {
                int verdict = checks.getOrDefault(candidate.set(), SelectionProblem.FORBIDDEN);
                if (candidate.gain() > level.best && verdict != SelectionProblem.FORBIDDEN && verdict <= faults) {
                    keep(level, candidate, verdict);
                }
            }
            at = to;
        }
        return at;
    }

    private static void keep(Level level, CandidateSet candidate, int faults) {
        int last = level.kept.size() - 1;
        if (last >= 0 && level.kept.get(last).cost() == candidate.cost()) {
            level.kept.remove(last);
        }
        level.kept.add(new FrontPoint(candidate.set(), candidate.cost(), candidate.gain(), faults));
        level.best = candidate.gain();
    }

    /** Asks the same of each set, in pieces dealt out to the threads. */
    private static List<Double> all(
            List<List<Integer>> sets, ToDoubleFunction<List<Integer>> question, ExecutorService threads) {
        int piece = Math.max(1, Math.min(16, sets.size() / 8));
        List<Callable<List<Double>>> work = new ArrayList<>();
        for (int from = 0; from < sets.size(); from += piece) {
            List<List<Integer>> some = sets.subList(from, Math.min(sets.size(), from + piece));
            work.add(() -> some.stream().map(question::applyAsDouble).toList());
        }
        List<Double> answers = new ArrayList<>(sets.size());
        try {
            for (Future<List<Double>> done : threads.invokeAll(work)) {
                answers.addAll(done.get());
            }
            return answers;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the search was interrupted", e);
        } catch (ExecutionException e) {
            throw rethrown(e.getCause());
        }
    }

    private static RuntimeException rethrown(@Nullable Throwable cause) {
        if (cause instanceof Error error) {
            throw error;
        }
        return cause instanceof RuntimeException own ? own : new IllegalStateException(cause);
    }

    private static int[] array(List<Integer> set) {
        return set.stream().mapToInt(i -> i).toArray();
    }
}
