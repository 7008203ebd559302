package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.file.DesignReader;

/** The design files printed in the guide are files that the program reads. */
class GuideTest {

    private static final Pattern YAML = Pattern.compile("```yaml\\n(.*?)```", Pattern.DOTALL);

    private static List<String> blocks() throws IOException {
        return YAML.matcher(Files.readString(Sources.ROOT.resolve("docs/guide.md")))
                .results()
                .map(m -> m.group(1))
                .toList();
    }

    @Test
    void the_first_design_is_the_demo_file() throws IOException {
        String demo = Files.readAllLines(Sources.ROOT.resolve("hydro-examples/designs/first-try.yaml")).stream()
                .filter(line -> !line.startsWith("#"))
                .map(line -> line + "\n")
                .collect(Collectors.joining());
        assertThat(blocks()).contains(demo);
    }

    @Test
    void every_demo_leads_an_editor_to_the_schema() throws IOException {
        Path designs = Sources.ROOT.resolve("hydro-examples/designs");
        try (Stream<Path> files = Files.list(designs)) {
            List<Path> demos = files.filter(f -> f.toString().endsWith(".yaml")).toList();
            assertThat(demos).hasSizeGreaterThan(4).allSatisfy(demo -> {
                Matcher line = Pattern.compile("(?m)^# yaml-language-server: \\$schema=(\\S+)$")
                        .matcher(Files.readString(demo));
                assertThat(line.find()).as(demo.toString()).isTrue();
                assertThat(designs.resolve(line.group(1))).isRegularFile();
            });
        }
    }

    @Test
    void readings_may_stand_in_place_of_numbers(@TempDir Path folder) throws IOException {
        String readings = blocks().get(0);
        String whole = blocks().get(1);
        assertThat(readings).startsWith("site:\n");
        Path file = folder.resolve("measured.yaml");
        Files.writeString(file, whole.replaceFirst("site:\\n {2}gross-head: .*\\n", readings));
        assertThat(Files.readString(file)).contains("kind: tube", "kind: bucket", "battery:");
        assertThat(DesignReader.read(file).problems()).isEmpty();
    }
}
