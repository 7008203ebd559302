package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.function.IntSupplier;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Baseline.AbsentFinding;
import org.leat.check.Finding;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.file.Problem;
import org.leat.file.Reading;

/**
 * Writes a SARIF 2.1.0 log of one run, result by result. Alternatives of a design are not in it: their files say nothing
 * is so.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class SarifWriter implements ReportWriter {

    private static final String SCHEMA =
            "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private final JsonGenerator json;
    private final SarifRules rules;
    private final SarifArtifacts artifacts = new SarifArtifacts();
    private final SarifResults results;
    private final SarifNotices notices;
    private final List<String> loosened;
    private final boolean problemsOnly;
    private final @Nullable SarifCall call;

    /**
     * Begins a log that tells of no command line.
     *
     * @param version of the program that checks
     * @param problemsOnly whether only failures, open questions and reviews are written
     */
    public SarifWriter(Rulebook rulebook, Appendable out, String version, boolean problemsOnly) throws IOException {
        this(rulebook, out, version, problemsOnly, null, null);
    }

    /**
     * Begins a log.
     *
     * @param version of the program that checks
     * @param problemsOnly whether only failures, open questions and reviews are written
     * @param call the command line; null for none
     */
    public SarifWriter(
            Rulebook rulebook, Appendable out, String version, boolean problemsOnly, @Nullable SarifCall call)
            throws IOException {
        this(rulebook, out, version, problemsOnly, call, null);
    }

    /**
     * Begins a log whose rules say where their pages are.
     *
     * @param version of the program that checks
     * @param problemsOnly whether only failures, open questions and reviews are written
     * @param call the command line; null for none
     * @param pages the address of the documentation's site, ending with a slash; null for none
     */
    public SarifWriter(
            Rulebook rulebook,
            Appendable out,
            String version,
            boolean problemsOnly,
            @Nullable SarifCall call,
            @Nullable String pages)
            throws IOException {
        Wording wording = new Wording(rulebook);
        this.json = JsonLines.to(out);
        this.rules = new SarifRules(rulebook, wording, pages);
        this.results = new SarifResults(wording, rules, artifacts);
        this.notices = new SarifNotices(wording, artifacts, rules);
        this.problemsOnly = problemsOnly;
        this.call = call;
        json.writeStartObject();
        json.writeStringField("$schema", SCHEMA);
        json.writeStringField("version", "2.1.0");
        json.writeArrayFieldStart("runs");
        json.writeStartObject();
        List<String> loosened = SettingsText.playedDown(rulebook);
        if (!loosened.isEmpty()) {
            json.writePOJOField("properties", Map.of("loosenedBySettings", loosened));
        }
        this.loosened = loosened;
        json.writePOJOField(
                "tool",
                new SarifModel.Tool(new SarifModel.Driver("leat", version, rules.descriptors(), SarifNotices.KINDS)));
        json.writeStringField("language", "en");
        json.writePOJOField("newlineSequences", List.of("\r\n", "\n", "\r"));
        json.writeStringField("columnKind", "unicodeCodePoints");
        json.writeArrayFieldStart("results");
    }

    @Override
    public void add(Report report) throws IOException {
        write(report, null);
    }

    @Override
    public void add(Report report, Reading reading) throws IOException {
        write(report, reading);
    }

    private void write(Report report, @Nullable Reading reading) throws IOException {
        artifacts.of(report.file());
        notices.add(report);
        for (Problem problem : report.problems()) {
            json.writePOJO(results.unreadable(problem));
        }
        for (Finding finding : report.findings()) {
            if (!problemsOnly || finding.outcome().kind().needsAttention()) {
                json.writePOJO(results.result(report.design(), finding, reading));
            }
        }
        for (AbsentFinding gone : report.absent()) {
            json.writePOJO(results.absent(report, gone));
        }
        json.flush();
    }

    @Override
    public void broken(String file, String cause) {
        notices.broken(file, cause);
    }

    @Override
    public void end() throws IOException {
        json.writeEndArray();
        json.writePOJOField("artifacts", artifacts.all());
        List<String> arguments = call == null ? null : call.told();
        json.writePOJOField(
                "invocations",
                List.of(new SarifModel.Invocation(
                        arguments,
                        call == null ? null : call.exitCode().getAsInt(),
                        !notices.broke(),
                        rules.overrides().isEmpty() ? null : rules.overrides(),
                        SarifNotices.loosened(loosened),
                        notices.told())));
        if (arguments != null && arguments.stream().anyMatch(a -> a.contains(SarifCall.REDACTED))) {
            json.writePOJOField("redactionTokens", List.of(SarifCall.REDACTED));
        }
        json.writeEndObject();
        json.writeEndArray();
        json.writeEndObject();
        json.writeRaw('\n');
        json.close();
    }

    /**
     * The call that a SARIF log tells of.
     *
     * @param arguments of the command line, without the program
     * @param exitCode what the call will exit with, asked when everything is judged
     */
    public record SarifCall(List<String> arguments, IntSupplier exitCode) {

        /** Stands in a log for a folder of the machine, see SARIF 2.1.0 §3.14.28. */
        static final String REDACTED = "[REDACTED]";

        public SarifCall {
            arguments = List.copyOf(arguments);
        }

        /** {@return the arguments; of a folder outside the one that is worked in only the file's name is told} */
        List<String> told() {
            return arguments.stream().map(SarifCall::told).toList();
        }

        private static String told(String argument) {
            int value = argument.lastIndexOf('=') + 1;
            return PlainText.of(
                    argument.substring(0, value) + SarifUri.withoutFolder(argument.substring(value), REDACTED));
        }
    }
}
