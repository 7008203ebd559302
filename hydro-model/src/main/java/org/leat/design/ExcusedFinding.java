package org.leat.design;

import java.time.LocalDate;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/** One finding at one place that does not count by someone's word. It is told all the same. */
@API(status = API.Status.STABLE, since = "0.1")
@About("One finding at one place that does not count by someone's word; it is told all the same")
public record ExcusedFinding(
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

    public ExcusedFinding {
        Demand.limits(ExcusedFinding.class, rule, at, during, reason, until, by, danger)
                .that(rule == null || !rule.isBlank(), "rule", rule, "a rule's id")
                .that(at == null || !at.isBlank(), "at", at, "an element")
                .that(reason == null || !reason.isBlank(), "reason", reason, "a reason")
                .that(
                        by == null
                                || by.codePoints().filter(Character::isLetter).count() > 1,
                        "by",
                        by,
                        "a person's name")
                .that(danger == null || by != null, "by", by, "the name of the person who accepts the danger")
                .hold();
    }
}
