package org.leat.choice;

import org.apiguardian.api.API;
import org.leat.check.Report;
import org.leat.check.Rulebook;

/**
 * Whether the design is safe to open, as far as it was judged. What was not judged is never taken as safe.
 *
 * @param answer in one word
 * @param errors failures of that level that count
 * @param warnings failures of that level that count
 * @param warningsEndangering of those warnings the ones of what can hurt someone
 * @param notes failures of that level that count
 * @param openEndangering questions that count, could not be judged and are of what can hurt someone
 * @param open all questions that count and could not be judged
 * @param review what a person must look at
 * @param setAside findings and questions of what can hurt someone that do not count by someone's word or by a baseline
 * @param doubted numbers or words of the design that are odd or cannot be meant, and count: what rests on them is not judged
 * @param playedDown rules about what can hurt someone that settings switch off, play down or loosen
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record SafetyVerdict(
        Answer answer,
        long errors,
        long warnings,
        long warningsEndangering,
        long notes,
        long openEndangering,
        long open,
        long review,
        long setAside,
        long doubted,
        long playedDown) {

    /**
     * {@return whether a design is safe to open, as far as it was judged}
     *
     * @param rulebook of the checker that examined it
     */
    public static SafetyVerdict of(Report report, Rulebook rulebook) {
        return Overviews.verdict(report, rulebook);
    }

    /** The verdict in one word; the order is worst to best. */
    public enum Answer {
        /** The file could not be read as a design, so that nothing was judged. */
        UNREADABLE,
        /** At least one error stands. */
        UNSAFE,
        /** No error was found, but the plant could not be solved or a rule broke. */
        UNSOLVED,
        /** No error was found, but warnings of what can hurt someone stand. */
        WARNED,
        /**
         * No error was found, but what can hurt someone could not all be judged, rests on a number that is odd, or does not
         * count by someone's word.
         */
        UNJUDGED,
        /** No error was found and all that can hurt someone was judged; a person must still look at something. */
        LOOK,
        /** No error was found and all that can hurt someone was judged. */
        JUDGED
    }
}
