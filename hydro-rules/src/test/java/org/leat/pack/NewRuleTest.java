package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import javax.tools.JavaCompiler;
import javax.tools.ToolProvider;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The script that begins a new rule, on a copy of the few files that it looks at. */
class NewRuleTest {

    private static final String CABLE = "src/main/java/org/leat/pack/cable/";
    private static final String EXAMPLES = "src/main/resources/org/leat/pack/cable/";

    @TempDir
    Path root;

    @BeforeEach
    void copied() throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/usr/bin/env")), "no shell");
        Files.createDirectories(inRules(EXAMPLES));
        for (String file : List.of("new-rule", CABLE + "CableRules.java")) {
            Files.createDirectories(Objects.requireNonNull(inRules(file).getParent()));
            Files.copy(Path.of(file), inRules(file));
        }
        Path law = root.resolve("hydro-model/src/main/java/org/leat/electrics/VoltageDrop.java");
        Files.createDirectories(Objects.requireNonNull(law.getParent()));
        Files.createFile(law);
    }

    @Test
    void a_new_rule_compiles_and_is_listed_and_has_its_examples() throws Exception {
        assertThat(newRule("cable/loose-lug", "warning", "lugs that \"nobody\" tightened"))
                .isZero();
        assertThat(inRules(EXAMPLES + "loose-lug.yaml")).content().contains("rule: cable/loose-lug", "fails:");
        assertThat(inRules(CABLE + "CableRules.java")).content().contains("LooseLug.RULE, ");
        assertThat(inRules(CABLE + "LooseLug.java"))
                .content()
                .contains("\"cable/loose-lug\", WARNING, \"lugs that \\\"nobody\\\" tightened\"");
        assertThat(compiled("LooseLug", "CableRules")).isEmpty();
    }

    @Test
    void a_name_that_another_class_has_gets_its_component_before_it() throws Exception {
        assertThat(newRule("cable/voltage-drop", "note", "x")).isZero();
        assertThat(inRules(CABLE + "CableVoltageDrop.java")).exists();
        assertThat(compiled("CableVoltageDrop", "CableRules")).isEmpty();
    }

    @Test
    void what_is_there_is_never_written_over_and_a_wrong_call_writes_nothing() throws Exception {
        assertThat(newRule("cable/loose-lug", "note", "x")).isZero();
        String written = Files.readString(inRules(CABLE + "CableRules.java"));
        assertThat(newRule("cable/loose-lug", "note", "y")).isEqualTo(2);
        assertThat(newRule("cables/loose-lug", "note", "y")).isEqualTo(2);
        assertThat(newRule("cable/Loose", "note", "y")).isEqualTo(2);
        assertThat(newRule("cable/other", "fatal", "y")).isEqualTo(2);
        assertThat(inRules(CABLE + "CableRules.java")).hasContent(written);
        assertThat(inRules(EXAMPLES + "other.yaml")).doesNotExist();
    }

    private Path inRules(String file) {
        return root.resolve("hydro-rules").resolve(file);
    }

    private int newRule(String... arguments) throws Exception {
        List<String> call = new ArrayList<>(List.of("bash", inRules("new-rule").toString()));
        call.addAll(List.of(arguments));
        Process process = new ProcessBuilder(call)
                .redirectErrorStream(true)
                .redirectOutput(root.resolve("said.txt").toFile())
                .start();
        return process.waitFor();
    }

    /** {@return what the compiler has against classes, the others of their package being there} */
    private String compiled(String... classes) {
        JavaCompiler compiler = ToolProvider.getSystemJavaCompiler();
        List<String> call = new ArrayList<>(
                List.of("-proc:none", "-d", root.toString(), "-cp", System.getProperty("java.class.path")));
        for (String each : classes) {
            call.add(inRules(CABLE + each + ".java").toString());
        }
        ByteArrayOutputStream said = new ByteArrayOutputStream();
        int code = compiler.run(null, said, said, call.toArray(String[]::new));
        return code == 0 ? "" : said.toString(StandardCharsets.UTF_8);
    }
}
