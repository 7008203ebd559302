package org.leat.report;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.check.Finding;

/**
 * Findings of many designs, those that repeat as one: the same rule at the same field, whatever list items are called. Several
 * at one field of a design stay apart. Holds no more than a few places of each.
 */
final class Repeats {

    private static final int PLACES = 10;
    private static final int MOST_APART = 50;

    private record Key(String rule, String field, int which) {}

    /**
     * A finding and others like it.
     *
     * @param worst of them
     * @param count how many there are
     * @param designs in how many designs
     * @param also where the others are, the first few
     */
    record Repeat(Finding worst, int count, int designs, List<String> also) {

        Repeat {
            also = List.copyOf(also);
        }

        private Repeat with(Finding other) {
            boolean worse = Finding.WORST_FIRST.compare(other, worst) < 0;
            List<String> places = new ArrayList<>(also);
            if (places.size() < PLACES) {
                places.add((worse ? worst : other).position().toString());
            }
            return new Repeat(worse ? other : worst, count + 1, designs + 1, places);
        }
    }

    private final Map<Key, Repeat> repeats = new LinkedHashMap<>();
    private int seen;

    /** Adds the findings of one design, worst first. */
    void add(List<Finding> findings) {
        Map<String, Integer> which = new HashMap<>();
        for (Finding finding : findings) {
            seen++;
            String field = finding.outcome().path().replaceAll("\\[[^\\]]*\\]", "");
            String at = finding.outcome().rule() + " " + field;
            int number = Math.min(MOST_APART, which.merge(at, 1, Integer::sum));
            Key key = new Key(finding.outcome().rule(), field, number);
            Repeat known = repeats.get(key);
            repeats.put(key, known == null ? new Repeat(finding, 1, 1, List.of()) : known.with(finding));
        }
    }

    /** {@return how many findings were added} */
    int seen() {
        return seen;
    }

    /** {@return each finding with what repeats it, the worst first, no more than so many} */
    WorstFirst<Repeat> worstFirst(int most) {
        WorstFirst<Repeat> sorted =
                new WorstFirst<>(most, (one, other) -> Finding.WORST_FIRST.compare(one.worst(), other.worst()));
        repeats.values().forEach(sorted::add);
        return sorted;
    }
}
