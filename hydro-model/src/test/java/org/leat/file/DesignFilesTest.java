package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

class DesignFilesTest {

    @Test
    @Timeout(10)
    void the_outermost_fields_of_the_largest_file_are_found_in_bounded_time() {
        String field = "\"ab\" :1,";
        String text = "{" + field.repeat((SourceText.LIMIT - 20) / field.length()) + "\"site\" : {}}";
        assertThat(OutermostFields.names(text)).containsExactly("ab", "site");
        assertThat(OutermostFields.holdPlant(text)).isTrue();
    }

    @TempDir
    Path folder;

    private void file(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void designs_of_a_folder_and_below_come_by_name_and_what_holds_no_plant_is_left_aside() throws IOException {
        String design = SampleFiles.alderBeck();
        file("b.yaml", design);
        file("B.yml", design);
        file("a/z.json", DesignWriter.json(DesignReader.read(design, "x").design()));
        file("broken.yaml", "format: 1\nname: x\npenstock: [\n");
        file("quoted.yaml", "\"site\": {}\n");
        file("flow.json", "{\"format\":1,\"runner\":{}}");
        file("motors.yaml", "slow-one:\n  runner:\n    kind: pelton\n");
        file("leat-settings.yaml", "format: 1\nfail-on: warning\nrules:\n  penstock/velocity:\n    level: note\n");
        file("report.json", "{\"format\": \"leat-report\", \"designs\": [{\"runner\": 1}]}");
        file("empty.yaml", "");
        file("notes.md", "site: by the weir\n");
        file(".hidden.yaml", design);
        file(".git/config.yaml", design);
        DesignFiles.Found found = DesignFiles.in(folder);
        assertThat(found.designs())
                .extracting(p -> folder.relativize(p).toString().replace('\\', '/'))
                .containsExactly("B.yml", "a/z.json", "b.yaml", "broken.yaml", "flow.json", "quoted.yaml");
        assertThat(found.leftAside())
                .extracting(p -> folder.relativize(p).toString())
                .containsExactly("empty.yaml", "leat-settings.yaml", "motors.yaml", "report.json");
    }

    @Test
    void names_in_texts_and_below_the_outermost_fields_do_not_count() {
        assertThat(OutermostFields.names("{\"a\": \"site\", \"b\": {\"runner\": 1}, \"c\\\"\" : [\"x\"]}"))
                .containsExactly("a", "b", "c\\\"");
        assertThat(OutermostFields.names("{\"unended")).isEmpty();
        assertThat(OutermostFields.names("a:\n  site: 1\n# runner: 2\nb : 3\n")).containsExactly("a", "b");
    }

    @Test
    void a_folder_that_is_not_there_is_an_error() {
        assertThatThrownBy(() -> DesignFiles.in(folder.resolve("none"))).isInstanceOf(IOException.class);
    }

    @Test
    void links_are_followed_to_files_and_not_into_folders() throws IOException {
        file("plants/a.yaml", SampleFiles.alderBeck());
        Files.createSymbolicLink(folder.resolve("plants/round"), folder.resolve("plants"));
        Files.createSymbolicLink(folder.resolve("plants/b.yaml"), folder.resolve("plants/a.yaml"));
        assertThat(DesignFiles.in(folder).designs()).hasSize(2);
    }
}
