package org.leat.check;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** Whatever the plant assumes or cannot know is said in words. */
class PlantTextsTest {

    private static final Path PLANT = Path.of("../hydro-model/src/main/java/org/leat");
    private static final Pattern REASON = Pattern.compile("\"((?:assumed|unknown)/[a-z0-9-]+)\"");

    @Test
    void every_reason_of_the_plant_has_a_text_and_no_text_is_left_over() throws IOException {
        Set<String> reasons = new TreeSet<>();
        try (Stream<Path> files = Files.walk(PLANT)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".java")).toList()) {
                Matcher m = REASON.matcher(Files.readString(file));
                while (m.find()) {
                    reasons.add(m.group(1));
                }
            }
        }
        assertThat(reasons).hasSizeGreaterThan(30);
        Set<String> texts = CommonTexts.read().keySet().stream()
                .filter(key -> key.startsWith("assumed/") || key.startsWith("unknown/"))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(texts).isEqualTo(reasons);
    }
}
