package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.leat.check.Comparison;
import org.leat.check.Finding;
import org.leat.check.Identity;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.design.ElementPath;
import org.leat.file.Position;
import org.leat.file.Problem;
import org.leat.file.ProblemText;

/** Writes a SARIF 2.1.0 log of one run. Alternatives of a design are not in it: their files say nothing is so. */
public final class SarifWriter implements ReportWriter {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private final JsonGenerator json;
    private final Wording wording;
    private final SarifRules rules;
    private final boolean problemsOnly;
    private final Map<String, Integer> artifacts = new LinkedHashMap<>();
    private final List<SarifModel.Notification> notifications = new ArrayList<>();
    private boolean broke;

    /**
     * Begins a log.
     *
     * @param version of the program that checks
     * @param problemsOnly whether only failures, open questions and reviews are written
     */
    public SarifWriter(Rulebook rulebook, Appendable out, String version, boolean problemsOnly) throws IOException {
        this.json = JsonLines.to(out);
        this.wording = new Wording(rulebook);
        this.rules = new SarifRules(rulebook, wording);
        this.problemsOnly = problemsOnly;
        json.writeStartObject();
        json.writeStringField("$schema", SCHEMA);
        json.writeStringField("version", "2.1.0");
        json.writeArrayFieldStart("runs");
        json.writeStartObject();
        json.writePOJOField("tool", new SarifModel.Tool(new SarifModel.Driver("leat", version, rules.descriptors())));
        json.writeStringField("columnKind", "unicodeCodePoints");
        json.writeArrayFieldStart("results");
    }

    @Override
    public void add(Report report) throws IOException {
        broke |= report.broke();
        artifact(report.file());
        for (Problem problem : report.problems()) {
            json.writePOJO(unreadable(problem));
        }
        for (Finding finding : report.findings()) {
            if (!problemsOnly || finding.outcome().kind().needsAttention()) {
                json.writePOJO(result(finding));
            }
        }
        json.flush();
    }

    @Override
    public void broken(String file, String cause) {
        broke = true;
        artifact(file);
        notifications.add(new SarifModel.Notification(
                "error", new SarifModel.Text("this program broke over " + SarifUri.of(file) + ": " + cause)));
    }

    @Override
    public void end() throws IOException {
        json.writeEndArray();
        json.writeArrayFieldStart("artifacts");
        for (String uri : artifacts.keySet()) {
            json.writePOJO(new SarifModel.Artifact(new SarifModel.Uri(uri), List.of("analysisTarget"), "UTF-8"));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("invocations");
        json.writePOJO(new SarifModel.Invocation(
                !broke,
                rules.overrides().isEmpty() ? null : rules.overrides(),
                notifications.isEmpty() ? null : notifications));
        json.writeEndArray();
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        json.writeRaw('\n');
        json.close();
    }

    private SarifModel.Result unreadable(Problem problem) {
        Map<String, String> fingerprints = Map.of(
                "ruleAndPath/v1",
                fingerprint(SarifRules.READABLE, problem.path(), problem.kind().id()));
        return new SarifModel.Result(
                SarifRules.READABLE,
                rules.index(SarifRules.READABLE),
                "fail",
                "error",
                new SarifModel.Message(ProblemText.of(problem), null, null),
                List.of(location(problem.position(), problem.path())),
                fingerprints,
                Map.of("problem", problem.kind().id()));
    }

    private SarifModel.Result result(Finding finding) {
        Outcome outcome = finding.outcome();
        Identity identity = outcome.identity();
        return new SarifModel.Result(
                outcome.rule(),
                rules.index(outcome.rule()),
                outcome.kind().word(),
                outcome.kind() == Kind.FAIL ? outcome.level().word() : "none",
                new SarifModel.Message(text(finding), outcome.message().id(), wording.arguments(outcome)),
                List.of(location(finding.position(), outcome.path())),
                Map.of("ruleAndPath/v1", fingerprint(identity.rule(), identity.path(), identity.during())),
                properties(finding));
    }

    private static String fingerprint(String rule, String path, String during) {
        return rule + " " + path + (during.isEmpty() ? "" : " " + during);
    }

    private String text(Finding finding) {
        String ways = finding.waysOut().stream()
                .map(way -> " Way out: " + wording.of(way, finding.outcome())
                        + (way.gain() == null ? "" : " (" + TextWriter.watts(way.gain()) + ")"))
                .collect(Collectors.joining());
        return wording.of(finding) + ways;
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

    private SarifModel.Location location(Position p, String path) {
        String uri = SarifUri.of(p.file());
        List<SarifModel.LogicalLocation> logical =
                path.equals(ElementPath.ROOT) ? null : List.of(new SarifModel.LogicalLocation(path.substring(1)));
        return new SarifModel.Location(
                new SarifModel.PhysicalLocation(
                        new SarifModel.ArtifactLocation(uri, artifact(p.file())),
                        new SarifModel.Region(p.line(), p.column(), p.endLine(), p.endColumn())),
                logical);
    }

    private int artifact(String file) {
        return artifacts.computeIfAbsent(SarifUri.of(file), uri -> artifacts.size());
    }
}
