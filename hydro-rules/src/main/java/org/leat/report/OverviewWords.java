package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.choice.Cause;
import org.leat.choice.MissingInput;
import org.leat.choice.Overview;
import org.leat.choice.SafetyVerdict;

/** A design at a glance in sentences, for writers that lay them out themselves. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class OverviewWords {

    /**
     * Something to do.
     *
     * @param what it is
     * @param gain watts that it wins or costs, with their sign; "" where none are known
     * @param effect what it clears
     */
    public record ToDo(String what, String gain, String effect) {}

    /**
     * Something to tell or to measure.
     *
     * @param field path of the design's field
     * @param how to come by it
     * @param settles how many questions it settles
     */
    public record ToTell(String field, String how, String settles) {}

    private final Overview overview;
    private final Wording wording;

    /** Words an overview. */
    public OverviewWords(Overview overview, Wording wording) {
        this.overview = overview;
        this.wording = wording;
    }

    /** {@return whether the design is safe to open, as far as it was judged} */
    public String verdict() {
        return OverviewText.verdict(overview.verdict());
    }

    /** {@return a verdict in so few words that they stand in a table} */
    public static String shortly(SafetyVerdict verdict) {
        return switch (verdict.answer()) {
            case UNREADABLE, UNSOLVED -> "not known";
            case UNSAFE -> "no";
            case WARNED -> "not as it stands: " + OverviewText.warnings(verdict);
            case UNJUDGED ->
                "not known: "
                        + (verdict.openEndangering() > 0
                                ? verdict.openEndangering() + " of safety not judged"
                                : verdict.doubted() > 0
                                        ? OverviewText.number(verdict.doubted(), "odd number") + " stated"
                                        : "points of safety do not count");
            case LOOK -> "nothing judged against it; " + verdict.review() + " for a person";
            case JUDGED -> "nothing judged against it";
        };
    }

    /** {@return what it gives} */
    public String gives() {
        return OverviewText.yieldOf(overview.yields());
    }

    /** {@return derived numbers that a builder can recognise or doubt; "" for none} */
    public String understood() {
        return OverviewText.understood(overview.understood());
    }

    /** {@return what to do first, the first few} */
    public List<ToDo> first() {
        List<ToDo> first = new ArrayList<>();
        for (Cause cause : shown()) {
            long watts = OverviewText.watts(cause);
            first.add(new ToDo(
                    OverviewText.what(cause, wording),
                    watts == 0 ? "" : TextWriter.watts((double) watts),
                    OverviewText.effect(cause)));
        }
        return List.copyOf(first);
    }

    /** {@return what comes of the least plan, in the numbers of what to do first; "" where there is nothing to say} */
    public String together() {
        return OverviewText.together(overview.plan(), shown());
    }

    /** {@return what to tell or to measure next, the first few} */
    public List<ToTell> next() {
        List<ToTell> next = new ArrayList<>();
        for (MissingInput input : OverviewText.next(overview, OverviewText.MOST)) {
            next.add(new ToTell(input.field(), input.how().sentence(), OverviewText.settles(input)));
        }
        return List.copyOf(next);
    }

    /** {@return how many inputs there are to tell in all} */
    public int inputs() {
        return overview.inputs().size();
    }

    private List<Cause> shown() {
        return OverviewText.first(overview).stream().limit(OverviewText.MOST).toList();
    }
}
