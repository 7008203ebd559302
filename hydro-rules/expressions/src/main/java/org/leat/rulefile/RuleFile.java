package org.leat.rulefile;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.expression.Expressions;
import org.leat.file.Filled;
import org.leat.file.Positions;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.file.RecordReader;

/**
 * Reads rule files: YAML 1.2 or JSON, format 1. Bad content never throws: everything that is wrong with the form of a file
 * is told in one pass with its place, then everything that is wrong with what its rules say; a file with problems gives no
 * pack. Nothing of a rule file reaches files, the network or classes, and its work is bounded.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class RuleFile {

    /** The version of the file format that is read. */
    public static final int FORMAT = 1;

    static {
        // the expression engine's jars share packages: they are never modules, and this one reads the class path for
        // them
        Module own = RuleFile.class.getModule();
        own.addReads(RuleFile.class.getClassLoader().getUnnamedModule());
    }

    private RuleFile() {}

    /** {@return what a file says} */
    public static RuleFileReading read(Path file) {
        return read(RecordReader.read(FileOfRules.class, file, file.toString()));
    }

    /**
     * {@return what a text says}
     *
     * @param name to be shown as the file's name
     */
    public static RuleFileReading read(String text, String name) {
        return read(RecordReader.read(FileOfRules.class, text, name));
    }

    /** {@return the JSON Schema (2020-12) of rule files, as JSON text} What expressions may say only the reader knows. */
    public static String schema() {
        return RecordReader.schema("Rule file, format " + FORMAT, FileOfRules.class);
    }

    private static RuleFileReading read(Filled<FileOfRules> filled) {
        FileOfRules file = filled.record();
        if (file == null) {
            return new RuleFileReading(null, filled.problems());
        }
        List<Problem> problems = new ArrayList<>();
        RulePack pack = pack(file, filled.positions(), problems);
        return problems.isEmpty()
                ? new RuleFileReading(pack, List.of())
                : new RuleFileReading(
                        null, problems.stream().distinct().sorted().toList());
    }

    private static RulePack pack(FileOfRules file, Positions positions, List<Problem> problems) {
        Wrong wrong = new Wrong(positions, problems);
        if (file.name().isBlank()) {
            wrong.add(ProblemKind.NO_VALUE, "/name", "", "what the pack is called");
        }
        if (file.rules().size() > FileOfRules.MOST) {
            String path = "/rules[" + FileOfRules.MOST + "]";
            wrong.add(ProblemKind.TOO_MANY_VALUES, path, "", "at most " + FileOfRules.MOST + " rules");
            return new Written(file.name(), List.of());
        }
        List<Rule> rules = new ArrayList<>();
        Map<String, Integer> lines = new LinkedHashMap<>();
        Expressions expressions = new Expressions();
        for (int i = 0; i < file.rules().size(); i++) {
            RuleText text = file.rules().get(i);
            String path = "/rules[" + i + "]";
            Rule rule = new RuleReader(text, path, expressions, wrong).rule();
            Integer first =
                    lines.putIfAbsent(text.id(), positions.of(path + "/id").line());
            if (first != null) {
                wrong.add(ProblemKind.DUPLICATE_FIELD, path + "/id", text.id(), "each rule once", "" + first);
            } else if (rule != null) {
                rules.add(rule);
            }
        }
        return new Written(file.name(), List.copyOf(rules));
    }

    /** A pack of a file. */
    private record Written(String name, List<Rule> rules) implements RulePack {}

    /**
     * What came of reading a rule file.
     *
     * @param pack its rules; null if anything is wrong with it
     * @param problems everything that is wrong, by place; empty if nothing is
     */
    public record RuleFileReading(@Nullable RulePack pack, List<Problem> problems) {

        public RuleFileReading {
            problems = List.copyOf(problems);
        }
    }
}
