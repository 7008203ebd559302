package org.leat.check;

import java.time.LocalDate;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.ExcusedFinding;
import org.leat.file.Position;

/**
 * Someone's word that one finding at one place does not count. It is told all the same.
 *
 * @param rule whose finding
 * @param at the element, as in {@link Outcome#path()} or as reports show it: {@code penstock.sections[run]}
 * @param during the case; "" for every case of that element
 * @param design what the design is called; "" for any, as in the design's own file
 * @param reason why
 * @param until the last day on which it holds; null for no end
 * @param by who answers for it; null where nobody is named
 * @param danger whether that person says in so many words that the danger is known
 * @param position where it stands
 * @param inDesign whether it stands in the design's own file
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Suppression(
        String rule,
        String at,
        String during,
        String design,
        String reason,
        @Nullable LocalDate until,
        @Nullable String by,
        boolean danger,
        Position position,
        boolean inDesign) {

    public Suppression {
        if (rule.isBlank() || at.isBlank() || reason.isBlank()) {
            throw new IllegalArgumentException("a suppression names a rule and a place, and gives a reason");
        }
    }

    /**
     * {@return what a file says of one finding}
     *
     * @param design what its design is called; "" in the design's own file
     * @param position where it stands
     */
    public static Suppression of(ExcusedFinding excused, String design, Position position, boolean inDesign) {
        String during = excused.during();
        return new Suppression(
                excused.rule(),
                excused.at(),
                during == null ? "" : during,
                design,
                excused.reason(),
                excused.until(),
                excused.by(),
                excused.danger() != null,
                position,
                inDesign);
    }

    /** {@return whether it speaks of that finding of that design} */
    public boolean meets(Identity finding, String designName) {
        return rule.equals(finding.rule())
                && (at.equals(finding.path()) || at.equals(Paths.shown(finding.path())))
                && (during.isEmpty() || during.equals(finding.during()))
                && (design.isEmpty() || design.equals(designName));
    }

    /** {@return whether a named person answers for the danger} */
    public boolean answersForDanger() {
        return by != null && danger;
    }

    /**
     * A suppression that suppresses nothing.
     *
     * @param suppression which
     * @param why what keeps it from it
     * @param nearest the rule or place that was probably meant; "" if none is near or it does not apply
     */
    public record IdleSuppression(Suppression suppression, Why why, String nearest) {

        /** What keeps a suppression from suppressing. */
        public enum Why {
            /** The rule finds nothing there any more, or never did. */
            NOTHING_THERE,
            /** The place is the number of an item in a list, which is another item once the list is reordered. */
            NUMBER_IN_A_LIST,
            /** No pack has that rule. */
            NO_SUCH_RULE,
            /** Its last day is over. */
            ENDED,
            /** It has a last day, and nobody said which day it is. */
            DAY_NOT_KNOWN,
            /** The finding can hurt someone, and no named person says that the danger is known. */
            NOBODY_ANSWERS
        }
    }
}
