package org.leat.choice;

import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.choice.Overview.GroupedFailure;

/**
 * The smallest set of changes found after which no error is left: fewest first, among equals that of most power. Carried
 * out together, solved again and judged by every rule.
 *
 * @param result what came of the search
 * @param steps the changes, those that clear most first; empty where nothing is needed or nothing was found
 * @param stays errors that stay after them, worst first, each with why
 * @param openAfter questions of what can hurt someone that could not be judged after the changes
 * @param batteryPower at the battery after the changes, nozzles open as built, W; empty where unknown
 * @param tried how often the plant was solved and judged again
 * @param budget how often it might have been
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Plan(
        Result result,
        List<Step> steps,
        List<Staying> stays,
        long openAfter,
        OptionalDouble batteryPower,
        int tried,
        int budget) {

    public Plan {
        steps = List.copyOf(steps);
        stays = List.copyOf(stays);
    }

    /** What came of the search. */
    public enum Result {
        /** No error stands. */
        NOTHING_NEEDED,
        /** After the changes no error is left. */
        FOUND,
        /** After the changes only errors are left that no change tried takes away. */
        SOME_STAY,
        /** The budget was used up before a set was found. */
        NOT_WITHIN_BUDGET,
        /** Nothing was solved or read. */
        NOTHING_JUDGED
    }

    /**
     * An error that stays.
     *
     * @param failure which
     * @param why no change takes it away
     */
    public record Staying(GroupedFailure failure, Why why) {}

    /** Why an error stays. */
    public enum Why {
        /** No way out is known. */
        NO_WAY_OUT,
        /** Its ways out are advice, no changes of the design that could be tried. */
        ADVICE_ONLY,
        /** Its ways out were tried and bring another error. */
        BRINGS_ANOTHER,
        /** Each of its ways out holds for some nozzle sets, none for all of them. */
        ONLY_FOR_SOME,
        /** Its ways out do not go together with those of other errors. */
        AGAINST_OTHERS,
        /** Its changes lose more than half of the power, and advice is known that does not. */
        LOSES_MOST
    }

    /**
     * One change of the design.
     *
     * @param way what to do; a way without edits is advice, which nobody could try
     * @param of the failure whose rule words it
     */
    public record Step(WayOut way, Outcome of) {

        /** {@return whether it is a change that was tried, not advice} */
        public boolean isTried() {
            return !way.edits().isEmpty();
        }
    }
}
