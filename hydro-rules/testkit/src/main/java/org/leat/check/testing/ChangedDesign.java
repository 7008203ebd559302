package org.leat.check.testing;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.leat.file.DesignReader;
import org.leat.file.PartsFinder;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.snakeyaml.engine.v2.nodes.Node;

/**
 * The design of an example: the base's file with the values replaced as a user would type them, read like any file.
 *
 * @param reading what came of reading it
 * @param problems why it is no design, each with the place in the example where it was changed
 */
record ChangedDesign(Reading reading, List<String> problems) {

    /**
     * {@return the design of an example}
     *
     * @throws IllegalArgumentException if a change leads nowhere or changes nothing
     */
    static ChangedDesign of(Example example) throws IOException {
        String name = String.valueOf(example.base().getFileName());
        String text = Files.readString(example.base());
        String source = name;
        if (!example.changes().isEmpty()) {
            text = changed(text, name, example.changes());
            source = example.id();
        }
        Path folder = example.base().toAbsolutePath().getParent();
        PartsFinder parts = folder == null ? PartsFinder.none() : PartsFinder.within(folder);
        Reading reading = DesignReader.read(text, source, parts);
        return new ChangedDesign(reading, problems(reading, example));
    }

    private static String changed(String text, String file, List<Example.Change> changes) {
        Node root = Yaml.read(text, file);
        for (Example.Change change : changes) {
            try {
                PlacePath.of(change.path()).put(root, change.value());
            } catch (IllegalArgumentException e) {
                throw new IllegalArgumentException(change.at() + ": " + e.getMessage(), e);
            }
        }
        return Yaml.write(root);
    }

    private static List<String> problems(Reading reading, Example example) {
        List<String> told = new ArrayList<>();
        for (Problem problem : reading.problems()) {
            String at = example.changes().stream()
                    .filter(change -> isIn(problem.path(), change.path()))
                    .map(Example.Change::at)
                    .findFirst()
                    .orElse(problem.position().toString());
            told.add(at + ": no design: " + ProblemText.of(problem));
        }
        return told;
    }

    private static boolean isIn(String path, String changed) {
        return path.equals(changed) || path.startsWith(changed + "/") || path.startsWith(changed + "[");
    }
}
