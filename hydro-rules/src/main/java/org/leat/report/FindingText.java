package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.check.Comparison;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Limit;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.Settings.LimitChange;
import org.leat.check.WayOut;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.report.TextWriter.Colours;

/** Findings for a person. */
final class FindingText {

    private static final String INDENT = "    ";

    private final Wording wording;
    private final Colours colours;

    FindingText(Wording wording, Colours colours) {
        this.wording = wording;
        this.colours = colours;
    }

    /** {@return failures of which it is not known what holds for all of them: each on its own} */
    List<GroupedFailure> grouped(List<Finding> failures) {
        return failures.stream()
                .map(f -> new GroupedFailure(f, List.of(), f.waysOut(), false))
                .toList();
    }

    /** {@return everything there is to say about the failures of one rule at one element} */
    List<String> full(GroupedFailure group) {
        Finding finding = group.worst();
        Outcome outcome = finding.outcome();
        List<String> lines = new ArrayList<>();
        String level = outcome.level().word().toUpperCase(Locale.ROOT);
        lines.add(colours.level(outcome.level(), level) + " " + outcome.rule() + "  at "
                + PlainText.of(finding.position().toString()) + "  " + PlainText.of(Wording.place(outcome.path())));
        lines.add(INDENT + PlainText.of(wording.of(finding)));
        ComparisonText compared = wording.comparison(outcome);
        if (compared != null) {
            lines.add(INDENT + "value " + compared.value() + ", limit " + compared.limit() + ", " + compared.margin()
                    + during(outcome));
        } else if (!outcome.during().isEmpty()) {
            lines.add(INDENT + "case " + PlainText.of(outcome.during()));
        }
        group.others().forEach(other -> lines.add(INDENT + "also " + also(other.outcome())));
        lines.add(INDENT + "source " + source(wording.rule(outcome.rule()), outcome.comparison()));
        for (WayOut way : group.waysForAll()) {
            lines.add(INDENT + "way out: " + way(way, outcome));
        }
        if (group.onlyForSome()) {
            lines.addAll(onlyForSome(group));
        }
        lines.addAll(inVain(group));
        List<SensitiveVerdict> restsOn =
                all(group).flatMap(f -> f.restsOn().stream()).toList();
        if (!restsOn.isEmpty()) {
            lines.add(INDENT + "rests on what was assumed of " + fields(restsOn));
        }
        if (all(group).anyMatch(Finding::broke)) {
            lines.add(INDENT + "the rule broke while looking for ways out");
        }
        return lines;
    }

    private static Stream<Finding> all(GroupedFailure group) {
        return Stream.concat(Stream.of(group.worst()), group.others().stream());
    }

    private String also(Outcome outcome) {
        ComparisonText compared = wording.comparison(outcome);
        String told = compared == null ? "" : ": " + compared.value() + ", " + compared.margin();
        return outcome.level().word() + " in " + PlainText.of(outcome.during()) + told;
    }

    private String way(WayOut way, Outcome outcome) {
        OptionalDouble gain = way.gain();
        return PlainText.of(wording.of(way, outcome))
                + (gain.isEmpty() ? "" : " (" + TextWriter.watts(gain.getAsDouble()) + ")");
    }

    private List<String> onlyForSome(GroupedFailure group) {
        List<String> lines = new ArrayList<>();
        lines.add(INDENT + "no way out holds for all of these");
        all(group)
                .forEach(f -> f.waysOut().stream()
                        .filter(way -> !way.edits().isEmpty())
                        .forEach(way -> lines.add(INDENT + "for "
                                + PlainText.of(f.outcome().during()) + " alone: " + way(way, f.outcome()))));
        return lines;
    }

    private List<String> inVain(GroupedFailure group) {
        return all(group)
                .flatMap(f -> f.rejected().stream()
                        .map(tried -> INDENT + "tried in vain: " + PlainText.of(wording.of(tried.way(), f.outcome()))
                                + " Then " + tried.brings() + " fails."))
                .distinct()
                .toList();
    }

    /** {@return one line for each finding} */
    List<String> brief(List<Finding> findings) {
        return findings.stream()
                .map(f -> f.outcome().rule() + "  "
                        + PlainText.of(f.position() + "  "
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
            lines.add(INDENT + PlainText.of(SuppressionText.of(finding)));
        }
        return lines;
    }

    /** {@return the passes with the least margin} */
    List<String> tightest(Report report, int most) {
        return report.findings().stream()
                .filter(f -> f.outcome().kind() == Kind.PASS && f.outcome().comparison() != null)
                .sorted(Finding.TIGHTEST_FIRST)
                .limit(most)
                .map(this::holding)
                .toList();
    }

    private String holding(Finding finding) {
        Outcome outcome = finding.outcome();
        ComparisonText compared = wording.comparison(outcome);
        String told =
                compared == null ? "" : compared.value() + ", limit " + compared.limit() + ", " + compared.margin();
        return outcome.rule() + "  " + PlainText.of(Wording.place(outcome.path())) + "  " + told + during(outcome);
    }

    private static String also(Finding finding) {
        return finding.restsOn().size() < 2 ? "" : " (in all: " + fields(finding.restsOn()) + ")";
    }

    private static String fields(List<SensitiveVerdict> restsOn) {
        return PlainText.of(
                restsOn.stream().map(h -> Wording.place(h.field())).distinct().collect(Collectors.joining(", ")));
    }

    private static String during(Outcome outcome) {
        return outcome.during().isEmpty() ? "" : " (" + PlainText.of(outcome.during()) + ")";
    }

    static String source(RuleInForce rule, @Nullable Comparison comparison) {
        List<String> sources = new ArrayList<>();
        List<String> behind = new ArrayList<>();
        for (Limit limit : rule.limits().values()) {
            boolean compared = comparison != null && comparison.isSetBy(limit.name());
            if (limit.changedBy() != null) {
                (compared ? sources : behind).add(changed(rule, limit));
            } else if (compared) {
                sources.add(limit.named().source());
            }
        }
        if (sources.isEmpty()) {
            sources.addAll(rule.card().sources());
        }
        sources.addAll(behind);
        return PlainText.of(sources.stream().distinct().collect(Collectors.joining("; ")));
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
