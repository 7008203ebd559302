package org.leat.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;
import org.leat.check.Baseline.AbsentFinding;
import org.leat.check.Baseline.BaselineState;
import org.leat.check.Comparison;
import org.leat.check.Finding;
import org.leat.check.Identity;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.WayOut;
import org.leat.file.Position;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.file.Reading;

/** Findings and problems as SARIF's results. */
final class SarifResults {

    private final Wording wording;
    private final SarifRules rules;
    private final SarifArtifacts artifacts;
    private final SarifPlaces places;

    SarifResults(Wording wording, SarifRules rules, SarifArtifacts artifacts) {
        this.wording = wording;
        this.rules = rules;
        this.artifacts = artifacts;
        this.places = new SarifPlaces(artifacts);
    }

    SarifModel.Result unreadable(Problem problem) {
        Map<String, String> fingerprints = Map.of(
                "ruleAndPath/v1",
                fingerprint(SarifRules.READABLE, problem.path(), problem.kind().id()));
        return new SarifModel.Result(
                SarifRules.READABLE,
                rules.index(SarifRules.READABLE),
                "fail",
                "error",
                new SarifModel.Message(literal(ProblemText.of(problem)), null, null),
                places.of(problem.position(), problem.path()),
                null,
                fingerprints,
                null,
                List.of(),
                null,
                Map.of("problem", problem.kind().id()));
    }

    /** Braces stand for themselves only when they are doubled: SARIF 2.1.0, 3.11.5. */
    private static String literal(String text) {
        return text.replace("{", "{{").replace("}", "}}");
    }

    SarifModel.Result result(String design, Finding finding, @Nullable Reading reading) {
        Outcome outcome = finding.outcome();
        BaselineState state = finding.baseline();
        return new SarifModel.Result(
                outcome.rule(),
                rules.index(outcome.rule()),
                outcome.kind().word(),
                outcome.kind() == Kind.FAIL ? outcome.level().word() : "none",
                new SarifModel.Message(text(finding), outcome.message().id(), wording.arguments(outcome)),
                places.of(finding.position(), outcome.path()),
                places.related(finding, reading),
                Map.of(SarifFingerprint.KEY, SarifFingerprint.of(design, finding.stable())),
                state == null ? null : state.word(),
                SarifSuppressions.of(finding.suppressed(), places),
                fixes(finding, reading),
                properties(finding));
    }

    /** What the baseline knows of a design and is found no more. */
    SarifModel.Result absent(Report report, AbsentFinding gone) {
        Identity identity = gone.identity();
        return new SarifModel.Result(
                identity.rule(),
                rules.indexOrNone(identity.rule()),
                gone.kind().word(),
                gone.kind() == Kind.FAIL ? gone.level().word() : "none",
                new SarifModel.Message(gone.text(), null, null),
                places.of(Position.startOf(report.file()), identity.path()),
                null,
                Map.of(SarifFingerprint.KEY, SarifFingerprint.of(report.design(), identity)),
                BaselineState.ABSENT.word(),
                List.of(),
                null,
                Map.of("severityIfFailed", gone.level().word()));
    }

    private static String fingerprint(String rule, String path, String during) {
        return rule + " " + path + (during.isEmpty() ? "" : " " + during);
    }

    private String text(Finding finding) {
        String ways = finding.waysOut().stream()
                .map(way -> " Way out: " + wording.of(way, finding.outcome())
                        + (way.gain().isEmpty()
                                ? ""
                                : " (" + TextWriter.watts(way.gain().getAsDouble()) + ")"))
                .collect(Collectors.joining());
        return wording.of(finding) + ways;
    }

    private @Nullable List<SarifModel.Fix> fixes(Finding finding, @Nullable Reading reading) {
        if (reading == null) {
            return null;
        }
        List<SarifModel.Fix> fixes = new ArrayList<>();
        for (WayOut way : finding.waysOut()) {
            FileChange.of(way, reading)
                    .ifPresent(edits -> fixes.add(new SarifModel.Fix(
                            new SarifModel.Text(wording.of(way, finding.outcome())),
                            List.of(new SarifModel.ArtifactChange(
                                    artifacts.of(reading.source()),
                                    edits.stream()
                                            .map(e -> new SarifModel.Replacement(
                                                    SarifArtifacts.region(e.position()), new SarifModel.Text(e.text())))
                                            .toList())))));
        }
        return fixes.isEmpty() ? null : fixes;
    }

    private Map<String, Object> properties(Finding finding) {
        Outcome outcome = finding.outcome();
        Map<String, Object> properties = new LinkedHashMap<>();
        if (!outcome.during().isEmpty()) {
            properties.put("case", outcome.during());
        }
        properties.put("severityIfFailed", outcome.level().word());
        Comparison c = outcome.comparison();
        ComparisonText compared = wording.comparison(outcome);
        if (c != null && compared != null) {
            properties.put("value", compared.value());
            properties.put("limit", compared.limit());
            Object margin = Numbers.of(c.margin());
            if (margin != null) {
                properties.put("margin", margin);
            }
        }
        if (outcome.missing() != null) {
            properties.put("missing", outcome.missing());
        }
        if (!finding.restsOn().isEmpty()) {
            properties.put(
                    "restsOn", finding.restsOn().stream().map(h -> h.field()).toList());
        }
        return properties;
    }
}
