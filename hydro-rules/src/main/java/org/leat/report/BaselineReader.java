package org.leat.report;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.leat.check.Baseline;
import org.leat.file.Position;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;

/**
 * Reads the findings of an earlier run from its SARIF log. Bad content never throws; what is wrong is told with its
 * place, and time and memory are bounded whatever the file holds.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class BaselineReader {

    /** The largest log read, bytes. */
    public static final long LARGEST = 256L << 20;

    private static final int MOST_PROBLEMS = 20;
    private static final ObjectMapper MAPPER = new ObjectMapper();

    private final String file;
    private final List<Baseline.Accepted> accepted = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    private BaselineReader(String file) {
        this.file = file;
    }

    /**
     * What came of reading.
     *
     * @param baseline of no use if there are problems
     * @param problems why the log cannot be used; empty if it can
     */
    public record Read(Baseline baseline, List<Problem> problems) {}

    /** {@return what a log says} */
    public static Read read(Path log) {
        BaselineReader reader = new BaselineReader(log.toString());
        try {
            if (!Files.isRegularFile(log)) {
                reader.problem(ProblemKind.UNREADABLE, 1, 1, "/", "", "a SARIF log written by this program");
            } else if (Files.size(log) > LARGEST) {
                reader.problem(ProblemKind.TOO_LARGE, 1, 1, "/", Files.size(log) + " bytes", "at most " + LARGEST);
            } else {
                try (InputStream in = Files.newInputStream(log);
                        JsonParser json = new JsonFactory().createParser(in)) {
                    json.setCodec(MAPPER);
                    reader.log(json);
                }
            }
        } catch (JsonProcessingException e) {
            JsonLocation at = e.getLocation();
            reader.problem(
                    ProblemKind.SYNTAX,
                    at == null ? 1 : Math.max(1, at.getLineNr()),
                    at == null ? 1 : Math.max(1, at.getColumnNr()),
                    "/",
                    "",
                    "JSON of a SARIF log");
        } catch (IOException | SecurityException e) {
            reader.problem(ProblemKind.UNREADABLE, 1, 1, "/", "", "a file that may be read");
        }
        return new Read(Baseline.of(reader.accepted), List.copyOf(reader.problems));
    }

    private void log(JsonParser json) throws IOException {
        boolean version = false;
        boolean runs = false;
        if (json.nextToken() != JsonToken.START_OBJECT) {
            here(json, "/", String.valueOf(json.currentToken()), "the object of a SARIF log");
            return;
        }
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String field = json.currentName();
            JsonToken value = json.nextToken();
            if (field.equals("version")) {
                version = true;
                if (!"2.1.0".equals(json.getValueAsString())) {
                    here(json, "/version", String.valueOf(json.getValueAsString()), "SARIF version 2.1.0");
                }
            } else if (field.equals("runs") && value == JsonToken.START_ARRAY) {
                runs = true;
                for (int i = 0; json.nextToken() == JsonToken.START_OBJECT; i++) {
                    run(json, "/runs[" + i + "]");
                }
            } else {
                json.skipChildren();
            }
        }
        if (!version || !runs) {
            here(json, "/", "an object without version and runs", "a SARIF log written by this program");
        }
    }

    private void run(JsonParser json, String path) throws IOException {
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String field = json.currentName();
            JsonToken value = json.nextToken();
            if (field.equals("tool")) {
                JsonLocation at = json.currentTokenLocation();
                JsonNode tool = json.readValueAsTree();
                String name = tool.path("driver").path("name").asText();
                if (!name.equals("leat")) {
                    problem(at, path + "/tool", "a log of \"" + shortened(name) + "\"", "one that leat wrote");
                }
            } else if (field.equals("results") && value == JsonToken.START_ARRAY) {
                for (int i = 0; json.nextToken() == JsonToken.START_OBJECT; i++) {
                    JsonLocation at = json.currentTokenLocation();
                    result(json.readValueAsTree(), at, path + "/results[" + i + "]");
                }
            } else {
                json.skipChildren();
            }
        }
    }

    private void result(JsonNode result, JsonLocation at, String path) {
        String state = result.path("baselineState").asText();
        if (state.equals("absent") || result.path("ruleId").asText().equals(SarifRules.READABLE)) {
            return;
        }
        SarifFingerprint.Read finding = SarifFingerprint.read(
                result.path("fingerprints").path(SarifFingerprint.KEY).asText());
        AcceptedWords words = AcceptedWords.of(result);
        if (finding == null || words == null) {
            problem(
                    at,
                    path,
                    "a result of " + shortened(result.path("ruleId").asText("no rule")) + " not told as here",
                    "kind, level and the fingerprint " + SarifFingerprint.KEY);
            return;
        }
        JsonNode margin = result.path("properties").path("margin");
        accepted.add(new Baseline.Accepted(
                finding.design(),
                finding.identity(),
                words.kind(),
                words.level(),
                margin.isNumber() ? OptionalDouble.of(margin.doubleValue()) : OptionalDouble.empty(),
                result.path("message").path("text").asText(),
                !result.path("suppressions").isEmpty()));
    }

    private void here(JsonParser json, String path, String found, String expected) {
        problem(json.currentTokenLocation(), path, found, expected);
    }

    private void problem(JsonLocation at, String path, String found, String expected) {
        problem(
                ProblemKind.NOT_OUR_LOG,
                Math.max(1, at.getLineNr()),
                Math.max(1, at.getColumnNr()),
                path,
                shortened(found),
                expected);
    }

    private void problem(ProblemKind kind, int line, int column, String path, String found, String expected) {
        if (problems.size() < MOST_PROBLEMS) {
            Position position = new Position(file, line, column, line, column);
            problems.add(new Problem(kind, position, path, found, expected, "", List.of()));
        }
    }

    private static String shortened(String text) {
        return text.length() <= 60 ? text : text.substring(0, text.offsetByCodePoints(0, 30)) + "\u2026";
    }
}
