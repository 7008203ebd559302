package org.leat.check;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.apiguardian.api.API;

/**
 * What can hurt someone in a report, so that two states of a plant can be compared: worse is what begins to fail, what can
 * no longer be judged, what fails in more cases, and what is further beyond its limit than before.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Dangers {

    /** Of the limit: what is less further beyond it is the same. */
    private static final double SAME = 0.01;

    private record Place(String rule, String path) {}

    /** The worst of one rule at one element: 3 fails, 2 open, 1 for a person to look at. */
    private record Worst(int rank, int cases, Tightness margin) {

        Worst and(Worst other) {
            if (rank != other.rank) {
                return rank > other.rank ? this : other;
            }
            return new Worst(rank, cases + other.cases, margin.and(other.margin));
        }

        boolean worseThan(Worst before) {
            return rank != before.rank
                    ? rank > before.rank
                    : cases > before.cases || margin.isBeyond(before.margin, SAME);
        }
    }

    private static final Worst NONE = new Worst(0, 0, Tightness.NOTHING_COMPARED);

    private Dangers() {}

    /** {@return the first finding that can hurt someone and is worse after a change than before it; empty if none is} */
    public static Optional<Finding> worse(Report before, Report after) {
        Map<Place, Worst> then = of(before);
        Map<Place, Worst> now = of(after);
        return after.findings().stream()
                .filter(Finding::endangers)
                .filter(f -> now.getOrDefault(place(f), NONE).worseThan(then.getOrDefault(place(f), NONE)))
                .findFirst();
    }

    private static Map<Place, Worst> of(Report report) {
        Map<Place, Worst> all = new HashMap<>();
        for (Finding finding : report.findings()) {
            if (finding.endangers()) {
                all.merge(place(finding), new Worst(rank(finding), 1, Tightness.of(finding)), Worst::and);
            }
        }
        return all;
    }

    private static int rank(Finding finding) {
        return switch (finding.outcome().kind()) {
            case FAIL -> 3;
            case OPEN -> 2;
            case REVIEW -> 1;
            case PASS, NOT_APPLICABLE, INFORMATIONAL -> 0;
        };
    }

    private static Place place(Finding finding) {
        return new Place(finding.outcome().rule(), finding.stable().path());
    }
}
