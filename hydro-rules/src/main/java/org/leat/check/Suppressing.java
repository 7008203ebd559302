package org.leat.check;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Suppression.IdleSuppression;
import org.leat.file.Names;

/** Sets suppressions against the findings of one design. */
final class Suppressing {

    private final List<Finding> findings;
    private final String design;
    private final @Nullable LocalDate today;
    private final List<IdleSuppression> idle = new ArrayList<>();

    private Suppressing(List<Finding> findings, String design, @Nullable LocalDate today) {
        this.findings = new ArrayList<>(findings);
        this.design = design;
        this.today = today;
    }

    /**
     * What came of it.
     *
     * @param findings the same, some suppressed
     * @param idle suppressions that suppress nothing
     */
    record Result(List<Finding> findings, List<IdleSuppression> idle) {}

    static Result of(
            List<Finding> findings,
            String design,
            List<Suppression> suppressions,
            @Nullable LocalDate today,
            List<String> rules) {
        Suppressing suppressing = new Suppressing(findings, design, today);
        for (Suppression suppression : suppressions) {
            if (suppression.design().isEmpty() || suppression.design().equals(design)) {
                suppressing.apply(suppression, rules);
            }
        }
        return new Result(List.copyOf(suppressing.findings), List.copyOf(suppressing.idle));
    }

    private void apply(Suppression s, List<String> rules) {
        if (!rules.contains(s.rule())) {
            idle.add(new IdleSuppression(s, IdleSuppression.Why.NO_SUCH_RULE, Names.nearest(s.rule(), rules)));
            return;
        }
        if (s.until() != null && (today == null || today.isAfter(s.until()))) {
            idle.add(new IdleSuppression(
                    s, today == null ? IdleSuppression.Why.DAY_NOT_KNOWN : IdleSuppression.Why.ENDED, ""));
            return;
        }
        boolean used = false;
        boolean refused = false;
        for (int i = 0; i < findings.size(); i++) {
            Finding finding = findings.get(i);
            if (!finding.outcome().kind().needsAttention() || !s.meets(finding.stable(), design)) {
                continue;
            }
            if (finding.endangers() && !s.answersForDanger()) {
                refused = true;
            } else {
                used = true;
                if (finding.suppressed() == null) {
                    findings.set(i, finding.suppressedBy(s));
                }
            }
        }
        if (refused) {
            idle.add(new IdleSuppression(s, IdleSuppression.Why.NOBODY_ANSWERS, ""));
        } else if (!used) {
            idle.add(nothing(s));
        }
    }

    /** A number in a list is no lasting name: what stands there may be another thing tomorrow. */
    private IdleSuppression nothing(Suppression s) {
        for (Finding finding : findings) {
            if (finding.outcome().kind().needsAttention()
                    && !finding.stable().equals(finding.outcome().identity())
                    && s.meets(finding.outcome().identity(), design)) {
                return new IdleSuppression(
                        s,
                        IdleSuppression.Why.NUMBER_IN_A_LIST,
                        Paths.shown(finding.stable().path()));
            }
        }
        List<String> places = findings.stream()
                .filter(f -> f.outcome().rule().equals(s.rule())
                        && f.outcome().kind().needsAttention())
                .map(f -> Paths.shown(f.stable().path()))
                .distinct()
                .toList();
        return new IdleSuppression(s, IdleSuppression.Why.NOTHING_THERE, Names.nearest(s.at(), places));
    }
}
