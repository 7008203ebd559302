package org.leat.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Baseline.AbsentFinding;
import org.leat.check.Finding;
import org.leat.check.Paths;
import org.leat.check.Report;
import org.leat.check.Suppression;
import org.leat.check.Suppression.IdleSuppression;

/** What does not count, by whose word, and what of that word no longer holds: for a person. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class SuppressionText {

    private SuppressionText() {}

    /** {@return on one line who says that a finding does not count, why, and until when} */
    public static String of(Suppression s) {
        return "suppressed"
                + (s.by() == null ? "" : " by " + s.by())
                + (s.danger() ? ", who accepts the danger" : "")
                + ": " + s.reason()
                + (s.until() == null ? "" : " (until " + s.until() + ")")
                + ", " + s.position().file() + ":" + s.position().line();
    }

    /** {@return on one line why a finding does not count; "" if it does} */
    public static String of(Finding finding) {
        if (finding.suppressed() != null) {
            return of(finding.suppressed());
        }
        return finding.known() ? "known from the baseline" : "";
    }

    /** {@return on one line which suppression suppresses nothing, and why} */
    public static String of(IdleSuppression idle, @Nullable LocalDate today) {
        Suppression s = idle.suppression();
        return s.position().file() + ":" + s.position().line() + "  " + s.rule() + "  " + Paths.plain(s.at()) + "  "
                + why(idle, today);
    }

    private static String why(IdleSuppression idle, @Nullable LocalDate today) {
        Suppression s = idle.suppression();
        String nearest = idle.nearest().isEmpty() ? "" : "; did you mean " + idle.nearest() + "?";
        return switch (idle.why()) {
            case NOTHING_THERE -> "suppresses nothing any more" + nearest;
            case NUMBER_IN_A_LIST -> "an item's number changes when the list does; write " + idle.nearest();
            case NO_SUCH_RULE -> "no rule is called that" + nearest;
            case ENDED -> "ended on " + s.until() + (today == null ? "" : ", and it is " + today);
            case DAY_NOT_KNOWN -> "holds until " + s.until() + ", and nobody said which day it is";
            case NOBODY_ANSWERS ->
                "does not hold, because this can hurt someone: write by: and a person's name, and danger: accepted";
        };
    }

    /** {@return what the baseline knows and is found no more, a line each} */
    public static List<String> absent(Report report) {
        List<String> lines = new ArrayList<>();
        for (AbsentFinding gone : report.absent()) {
            lines.add(gone.identity().rule() + "  "
                    + PlainText.of(Paths.shown(gone.identity().path()) + "  was "
                            + gone.kind().word() + ": " + gone.text()));
        }
        return lines;
    }
}
