package org.leat.settings;

import java.time.LocalDate;
import org.jspecify.annotations.Nullable;
import org.leat.design.About;
import org.leat.design.CanBeAbsent;
import org.leat.design.DangerWord;
import org.leat.design.ExcusedFinding;

/**
 * One finding of one design that does not count by someone's word, told outside the design's file.
 *
 * @param design what the design is called
 * @param rule whose finding
 * @param at element
 * @param during case
 * @param reason why
 * @param until last day
 * @param by name of the person who answers for it
 * @param danger beside the name
 */
@About("One finding of one design that does not count by someone's word; it is told all the same")
record FindingOfDesign(
        @About("what the design is called") String design,
        @About("whose finding") String rule,
        @About("element, as the report shows it") String at,

        @About("case, as the report shows it; every case of the element if left out") @CanBeAbsent @Nullable
        String during,

        @About("why") String reason,

        @About("last day on which this holds; no end if left out") @CanBeAbsent @Nullable
        LocalDate until,

        @About("name of the person who answers for it; needed where the finding can hurt someone")
        @CanBeAbsent
        @Nullable
        String by,

        @About("needed beside the name where the finding can hurt someone") @CanBeAbsent @Nullable
        DangerWord danger) {

    /** Refuses what an {@link ExcusedFinding} refuses. */
    public FindingOfDesign {
        new ExcusedFinding(rule, at, during, reason, until, by, danger);
    }

    /** {@return the same without its design} */
    ExcusedFinding excused() {
        return new ExcusedFinding(rule, at, during, reason, until, by, danger);
    }
}
