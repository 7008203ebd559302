package org.leat.choice;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.function.BiPredicate;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/** Sets of changes that, each judged by what it does alone, would clear every place; none of them is solved here. */
final class SetCovers {

    private static final int MOST_STEPS_OF_SEARCH = 20_000;
    private static final int MOST_SETS = 500;

    private final List<CandidateChange> candidates;
    private final Set<SortedSet<Integer>> found = new LinkedHashSet<>();
    private int searched;

    private final BiPredicate<CandidateChange, CandidateChange> goTogether;

    private SetCovers(List<CandidateChange> candidates, BiPredicate<CandidateChange, CandidateChange> goTogether) {
        this.candidates = candidates;
        this.goTogether = goTogether;
    }

    /**
     * {@return sets of exactly that many changes that go together: first those without a change that brings an error, among
     * these those of most power}
     *
     * @param goTogether whether two changes can both be carried out
     */
    static List<List<CandidateChange>> of(
            List<CandidateChange> candidates,
            BiPredicate<CandidateChange, CandidateChange> goTogether,
            Collection<FindingPlace> places,
            int size,
            int most) {
        SetCovers covers = new SetCovers(candidates, goTogether);
        if (!places.isEmpty()) {
            covers.extend(new TreeSet<>(), new LinkedHashSet<>(places), size);
        }
        return covers.found.stream()
                .map(set -> set.stream().map(candidates::get).toList())
                .sorted(Comparator.comparingLong(SetCovers::bringing)
                        .thenComparing(
                                Comparator.comparingDouble(SetCovers::gain).reversed()))
                .limit(most)
                .collect(Collectors.toList());
    }

    private static long bringing(List<CandidateChange> set) {
        return set.stream().filter(CandidateChange::bringsError).count();
    }

    private static double gain(List<CandidateChange> set) {
        return set.stream().mapToDouble(c -> c.gain().orElse(0)).sum();
    }

    private void extend(Set<Integer> chosen, Set<FindingPlace> uncovered, int size) {
        if (uncovered.isEmpty()) {
            if (chosen.size() == size) {
                found.add(new TreeSet<>(chosen));
            }
            return;
        }
        if (chosen.size() == size || found.size() >= MOST_SETS || ++searched > MOST_STEPS_OF_SEARCH) {
            return;
        }
        List<Integer> next = fewest(chosen, uncovered);
        if (next == null) {
            return;
        }
        for (int i : next) {
            SortedSet<Integer> more = new TreeSet<>(chosen);
            more.add(i);
            Set<FindingPlace> rest = new LinkedHashSet<>(uncovered);
            rest.removeAll(candidates.get(i).calms());
            extend(more, rest, size);
        }
    }

    /** {@return the changes for the place that the fewest can clear; null where one place has none} */
    private @Nullable List<Integer> fewest(Set<Integer> chosen, Set<FindingPlace> uncovered) {
        List<Integer> fewest = null;
        for (FindingPlace place : uncovered) {
            List<Integer> clearing = new ArrayList<>();
            for (int i = 0; i < candidates.size(); i++) {
                CandidateChange candidate = candidates.get(i);
                if (candidate.calms().contains(place)
                        && chosen.stream().allMatch(c -> goTogether.test(candidate, candidates.get(c)))) {
                    clearing.add(i);
                }
            }
            if (fewest == null || clearing.size() < fewest.size()) {
                fewest = clearing;
            }
        }
        return fewest == null || fewest.isEmpty() ? null : fewest;
    }
}
