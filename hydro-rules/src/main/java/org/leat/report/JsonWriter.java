package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.choice.Overview;
import org.leat.file.Reading;
import org.leat.sure.Sureness;

/** Writes the JSON report, see {@link JsonModel}. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class JsonWriter implements ReportWriter {

    private final JsonGenerator json;
    private final JsonShapes shapes;
    private final boolean whole;
    private final Tally tally = new Tally();
    private final List<JsonModel.BrokenEntry> broken = new ArrayList<>();

    /** Writes to {@code out} in the words of a rulebook. */
    public JsonWriter(Rulebook rulebook, Appendable out) throws IOException {
        this(rulebook, out, false);
    }

    /**
     * Writes to {@code out} in the words of a rulebook.
     *
     * @param whole whether to write overviews too
     */
    public JsonWriter(Rulebook rulebook, Appendable out, boolean whole) throws IOException {
        this.whole = whole;
        this.json = JsonLines.to(out);
        this.shapes = new JsonShapes(new Wording(rulebook));
        json.writeStartObject();
        json.writeStringField("format", JsonModel.FORMAT);
        json.writeNumberField("version", JsonModel.VERSION);
        json.writePOJOField("loosened", SettingsText.playedDown(rulebook));
        json.writeArrayFieldStart("rules");
        for (RuleInForce rule : rulebook.rules()) {
            json.writePOJO(shapes.rule(rule));
        }
        json.writeEndArray();
        json.writeArrayFieldStart("designs");
    }

    /** {@return the JSON Schema (2020-12) of what is written} */
    public static String schema() {
        return ReportSchema.json();
    }

    @Override
    public void add(Report report) throws IOException {
        write(report, null, null);
    }

    @Override
    public void add(Report report, Reading reading, Overview overview) throws IOException {
        write(report, whole ? overview : null, null);
    }

    @Override
    public void add(Report report, Reading reading, Overview overview, Sureness sureness) throws IOException {
        write(report, whole ? overview : null, sureness);
    }

    private void write(Report report, @Nullable Overview overview, @Nullable Sureness sureness) throws IOException {
        tally.add(report);
        json.writePOJO(shapes.design(report, overview, sureness));
        json.flush();
    }

    @Override
    public void broken(String file, String cause) {
        tally.addBroken();
        broken.add(new JsonModel.BrokenEntry(file, cause));
    }

    @Override
    public void end() throws IOException {
        json.writeEndArray();
        json.writePOJOField("notChecked", broken);
        json.writePOJOField(
                "summary",
                new JsonModel.Summary(
                        tally.files(),
                        tally.unreadable(),
                        tally.failures(Level.ERROR),
                        tally.failures(Level.WARNING),
                        tally.failures(Level.NOTE),
                        tally.count(Kind.PASS),
                        tally.count(Kind.OPEN),
                        tally.count(Kind.REVIEW),
                        tally.count(Kind.INFORMATIONAL),
                        tally.count(Kind.NOT_APPLICABLE),
                        tally.suppressed(),
                        tally.idle(),
                        tally.known(),
                        tally.absent(),
                        tally.broke()));
        json.writeEndObject();
        json.writeRaw('\n');
        json.close();
    }
}
