package org.example.register;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.report.JsonWriter;
import org.leat.report.Wording;
import org.leat.rulefile.RuleFile;
import org.leat.rulefile.RuleFile.RuleFileReading;

/** Says whether a plant can be entered in the valley's register, by the built-in rules and the valley's own. */
public final class Register {

    private final Checker checker;
    private final Wording wording;

    /**
     * What the register answers.
     *
     * @param entered whether the plant is entered
     * @param reasons why not; each thing in a line
     * @param open how many things could not be judged from what was handed in
     */
    public record Answer(boolean entered, List<String> reasons, long open) {}

    /** The register with the valley's rules. */
    public Register() {
        RuleFileReading valley = RuleFile.read(valleyRules(), "valley.yaml");
        if (valley.pack() == null) {
            throw new IllegalStateException(valley.problems().toString());
        }
        checker = Checker.of(List.of(new BuiltInPack(), valley.pack()));
        wording = new Wording(checker.rulebook());
    }

    /** Answers for a design that was handed in as text. */
    public Answer enter(String design) {
        Reading reading = DesignReader.read(design, "handed-in.yaml");
        if (reading.design() == null) {
            return new Answer(
                    false, reading.problems().stream().map(ProblemText::line).toList(), 0);
        }
        Report report = checker.check(reading);
        List<String> reasons = report.worstFirst(Kind.FAIL).stream()
                .filter(finding -> finding.outcome().level() == Level.ERROR)
                .map(finding -> finding.outcome().rule() + ": " + wording.of(finding))
                .toList();
        return new Answer(reasons.isEmpty(), reasons, report.count(Kind.OPEN));
    }

    /** The whole report of a design, for the valley's own programs. */
    public String file(String design) {
        StringBuilder out = new StringBuilder();
        try {
            JsonWriter writer = new JsonWriter(checker.rulebook(), out);
            Reading reading = DesignReader.read(design, "handed-in.yaml");
            writer.add(checker.check(reading), reading);
            writer.end();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static String valleyRules() {
        try (InputStream in = Register.class.getResourceAsStream("valley.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
