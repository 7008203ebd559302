package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Samples;

/** Pages, one in a file and several in a folder, with the real jar. */
class PagesIT {

    @TempDir
    Path folder;

    private RealJar leat;

    @BeforeEach
    void jar() {
        leat = new RealJar(folder);
    }

    private void design(String name, String text) throws IOException {
        Path file = folder.resolve(name);
        Files.createDirectories(file.getParent());
        Files.writeString(file, text);
    }

    @Test
    void a_page_is_the_same_on_standard_output_and_in_a_file_and_begins_with_the_verdict() throws Exception {
        design("a.yaml", Samples.SHORT);
        RealJar.Ran out = leat.run("check", "a.yaml", "--format", "html");
        assertThat(out.err()).isEmpty();
        assertThat(out.out())
                .startsWith("<!DOCTYPE html>\n")
                .endsWith("</html>\n")
                .contains("Safe to open?");
        RealJar.Ran text = leat.run("check", "a.yaml", "--also", "html=a.html");
        assertThat(Files.readString(folder.resolve("a.html"))).isEqualTo(out.out());
        assertThat(out.code()).isEqualTo(text.code());
        assertThat(text.out()).isEqualTo(leat.run("check", "a.yaml").out());
    }

    @Test
    void several_designs_get_a_page_each_named_after_their_files_and_an_index() throws Exception {
        design("plants/a.yaml", Samples.SHORT);
        design("plants/A.yml", Samples.SHORT);
        design("plants/more/b \u00e9.yaml", Samples.SHORT.replace("name: sample", "name: other"));
        design("plants/bad.yaml", "penstock: [\n");
        RealJar.Ran ran = leat.run("check", "plants", "--also", "html=out/pages/");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isEqualTo(3);
        List<String> pages;
        try (Stream<Path> files = Files.list(folder.resolve("out/pages"))) {
            pages = files.map(f -> f.getFileName().toString()).sorted().toList();
        }
        assertThat(pages).hasSize(5).contains("index.html", "bad.html", "more-b-.html");
        String index = Files.readString(folder.resolve("out/pages/index.html"));
        for (String page : pages) {
            assertThat(page.equals("index.html") || index.contains("href=\"" + page + "\""))
                    .as(page)
                    .isTrue();
            assertThat(Files.readString(folder.resolve("out/pages").resolve(page)))
                    .startsWith("<!DOCTYPE html>");
        }
        assertThat(Files.readString(folder.resolve("out/pages/bad.html"))).contains("cannot be read as a design");
    }

    @Test
    void several_designs_do_not_go_into_one_page() throws Exception {
        design("a.yaml", Samples.SHORT);
        design("b.yaml", Samples.SHORT);
        for (List<String> asked : List.of(List.of("--format", "html"), List.of("--also", "html=both.html"))) {
            RealJar.Ran ran = leat.run(Stream.concat(Stream.of("check", "a.yaml", "b.yaml"), asked.stream())
                    .toArray(String[]::new));
            assertThat(ran.code()).isEqualTo(2);
            assertThat(ran.err()).contains("a page holds one design, and these are 2: write --also html=FOLDER/");
            assertThat(ran.out()).isEmpty();
        }
        assertThat(folder.resolve("both.html")).doesNotExist();
    }

    @Test
    void a_folder_that_cannot_be_made_is_an_error_of_the_call() throws Exception {
        design("a.yaml", Samples.SHORT);
        Files.writeString(folder.resolve("file"), "");
        RealJar.Ran ran = leat.run("check", "a.yaml", "--also", "html=file/pages/");
        assertThat(ran.code()).isEqualTo(2);
        assertThat(ran.err()).contains("cannot be written");
    }
}
