package org.leat.file;

import java.util.List;
import java.util.Map;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;

/** What the parser missed, in the words of whoever wrote the file. */
final class SyntaxWords {

    private static final List<Map.Entry<String, String>> WORDS = List.of(
            Map.entry("TAB", "blanks, not a tab, before a field name"),
            Map.entry(
                    "mapping values are not allowed",
                    "one field on a line, or quotation marks around a text with \": \""),
            Map.entry("could not find expected ':'", "a colon and a blank after the field name"),
            Map.entry("expected <block end>", "the same number of blanks before each field of one mapping"),
            Map.entry("sequence entries are not allowed", "a list to begin on a line of its own"),
            Map.entry("expected ',' or '}'", "a comma or the closing }"),
            Map.entry("expected ',' or ']'", "a comma or the closing ]"),
            Map.entry("unexpected end of stream", "the closing quotation mark"),
            Map.entry("document separator", "the closing quotation mark"),
            Map.entry("unknown escape character", "a known escape after \\, or single quotation marks"),
            Map.entry("cannot start any token", "quotation marks around a text that begins with this character"),
            Map.entry("expected the node content", "a value"));

    private SyntaxWords() {}

    static String of(MarkedYamlEngineException e) {
        return of(e.getProblem() == null ? "" : e.getProblem());
    }

    static String of(YamlEngineException e) {
        return of(e.getMessage() == null ? "" : e.getMessage());
    }

    private static String of(String problem) {
        return WORDS.stream()
                .filter(entry -> problem.contains(entry.getKey()))
                .map(Map.Entry::getValue)
                .findFirst()
                .orElse("YAML or JSON (" + problem.lines().findFirst().orElse("no more is known") + ")");
    }
}
