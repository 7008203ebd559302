package org.leat.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leat.check.Comparison;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Limit;
import org.leat.check.LimitChange;
import org.leat.check.Outcome;
import org.leat.check.RejectedChange;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.SensitiveVerdict;
import org.leat.check.WayOut;

/** Findings for a person. */
final class FindingText {

    private static final String INDENT = "    ";

    private final Wording wording;
    private final Colours colours;

    FindingText(Wording wording, Colours colours) {
        this.wording = wording;
        this.colours = colours;
    }

    /** {@return everything there is to say about a failure} */
    List<String> full(Finding finding) {
        Outcome outcome = finding.outcome();
        List<String> lines = new ArrayList<>();
        String level = outcome.level().word().toUpperCase(Locale.ROOT);
        lines.add(colours.level(outcome.level(), level) + " " + outcome.rule() + "  at "
                + Plainly.of(finding.position().toString()) + "  " + Plainly.of(Wording.place(outcome.path())));
        lines.add(INDENT + Plainly.of(wording.of(finding)));
        ComparisonText compared = wording.comparison(outcome);
        if (compared != null) {
            lines.add(INDENT + "value " + compared.value() + ", limit " + compared.limit() + ", " + compared.margin()
                    + during(outcome));
        } else if (!outcome.during().isEmpty()) {
            lines.add(INDENT + "case " + Plainly.of(outcome.during()));
        }
        lines.add(INDENT + "source " + source(wording.rule(outcome.rule()), outcome.comparison()));
        for (WayOut way : finding.waysOut()) {
            OptionalDouble gain = way.gain();
            lines.add(INDENT + "way out: " + Plainly.of(wording.of(way, outcome))
                    + (gain.isEmpty() ? "" : " (" + TextWriter.watts(gain.getAsDouble()) + ")"));
        }
        for (RejectedChange tried : finding.rejected()) {
            lines.add(INDENT + "tried in vain: " + Plainly.of(wording.of(tried.way(), outcome)) + " Then "
                    + tried.brings() + " fails.");
        }
        if (!finding.restsOn().isEmpty()) {
            lines.add(INDENT + "rests on what was assumed of " + fields(finding.restsOn()));
        }
        if (finding.broke()) {
            lines.add(INDENT + "the rule broke while looking for ways out");
        }
        return lines;
    }

    /** {@return one line for each finding} */
    List<String> brief(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.outcome().rule() + "  "
                        + Plainly.of(f.position() + "  "
                                + Wording.place(f.outcome().path()) + "  " + wording.of(f)
                                + during(f.outcome())
                                + also(f)))
                .toList();
    }

    /** {@return a line for each finding that does not count, and one for why it does not} */
    List<String> uncounted(List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : findings) {
            Outcome outcome = finding.outcome();
            String what = outcome.kind() == Kind.FAIL
                    ? colours.level(outcome.level(), outcome.level().word().toUpperCase(Locale.ROOT))
                    : outcome.kind().word();
            lines.add(what + " " + brief(List.of(finding)).get(0));
            lines.add(INDENT + Plainly.of(SuppressionText.of(finding)));
        }
        return lines;
    }

    /** {@return the passes with the least margin} */
    List<String> tightest(Report report, int most) {
        return report.findings().stream()
                .filter(f -> f.outcome().kind() == Kind.PASS && f.outcome().comparison() != null)
                .sorted(Comparator.comparingDouble(Finding::margin).thenComparing(Comparator.naturalOrder()))
                .limit(most)
                .map(this::holding)
                .toList();
    }

    private String holding(Finding finding) {
        Outcome outcome = finding.outcome();
        ComparisonText compared = wording.comparison(outcome);
        String told =
                compared == null ? "" : compared.value() + ", limit " + compared.limit() + ", " + compared.margin();
        return outcome.rule() + "  " + Plainly.of(Wording.place(outcome.path())) + "  " + told + during(outcome);
    }

    private static String also(Finding finding) {
        return finding.restsOn().size() < 2 ? "" : " (in all: " + fields(finding.restsOn()) + ")";
    }

    private static String fields(List<SensitiveVerdict> restsOn) {
        return Plainly.of(restsOn.stream().map(h -> Wording.place(h.field())).collect(Collectors.joining(", ")));
    }

    private static String during(Outcome outcome) {
        return outcome.during().isEmpty() ? "" : " (" + Plainly.of(outcome.during()) + ")";
    }

    static String source(RuleInForce rule, @Nullable Comparison comparison) {
        List<String> sources = new ArrayList<>();
        List<String> behind = new ArrayList<>();
        for (Limit limit : rule.limits().values()) {
            boolean compared = comparison != null && comparison.isSetBy(limit.name());
            if (limit.changedBy() != null) {
                (compared ? sources : behind).add(Plainly.of(changed(rule, limit)));
            } else if (compared) {
                sources.add(limit.named().source());
            }
        }
        if (sources.isEmpty()) {
            sources.addAll(rule.card().sources());
        }
        sources.addAll(behind);
        return sources.stream().distinct().collect(Collectors.joining("; "));
    }

    /** Who changed a limit and why. */
    private static String changed(RuleInForce rule, Limit limit) {
        LimitChange change = rule.changes().limits().get(limit.name());
        String reason = change == null || change.grounds().reason().isBlank()
                ? ""
                : ": " + change.grounds().reason();
        return "limit " + limit.name() + " changed by " + limit.changedBy() + reason;
    }
}
