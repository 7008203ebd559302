package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
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
    void every_example_leads_an_editor_to_a_schema_that_takes_it() throws IOException {
        SchemaRegistry schemas = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
        Set<String> led = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Sources.ROOT.resolve("hydro-examples"))) {
            for (Path example : files.filter(GuideTest::isForAnEditor).sorted().toList()) {
                String text = Files.readString(example);
                Matcher line = Pattern.compile("(?m)^# yaml-language-server: \\$schema=(\\S+)$")
                        .matcher(text);
                assertThat(line.find()).as(example.toString()).isTrue();
                Path file = example.resolveSibling(line.group(1)).normalize();
                assertThat(file).as(example.toString()).isRegularFile();
                led.add(file.getFileName().toString());
                assertThat(schemas.getSchema(Files.readString(file)).validate(text, InputFormat.YAML))
                        .as(example.toString())
                        .isEmpty();
            }
        }
        assertThat(led)
                .containsExactly(
                        "bench.schema.json",
                        "design-file.schema.json",
                        "gauging.schema.json",
                        "price-list.schema.json",
                        "readings.schema.json",
                        "rule-file.schema.json",
                        "settings-file.schema.json",
                        "survey.schema.json");
    }

    /** Not what services read, what the build leaves and what a test is made of. */
    private static boolean isForAnEditor(Path file) {
        String path = Sources.ROOT.relativize(file).toString().replace('\\', '/');
        return path.endsWith(".yaml") && !path.contains("/.") && !path.contains("/src/") && !path.contains("/target/");
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
