package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that are not there yet are written whole, or none of them. */
class NewFilesTest {

    @TempDir
    Path folder;

    private Map<Path, String> texts(String... names) {
        Map<Path, String> texts = new LinkedHashMap<>();
        for (String name : names) {
            texts.put(folder.resolve(name), "text of " + name);
        }
        return texts;
    }

    @Test
    void each_has_its_text() throws IOException {
        NewFiles.write(texts("a", "b"));
        assertThat(folder.resolve("a")).hasContent("text of a");
        assertThat(folder.resolve("b")).hasContent("text of b");
    }

    @Test
    void where_one_cannot_be_written_none_is_left_and_it_is_named() {
        assertThatThrownBy(() -> NewFiles.write(texts("a", "missing/b", "c")))
                .isInstanceOf(Outputs.CannotWriteException.class)
                .hasMessageStartingWith(folder.resolve("missing/b") + " cannot be written: ");
        assertThat(folder).isEmptyDirectory();
    }

    @Test
    void a_device_is_left_as_it_is() {
        Path full = Path.of("/dev/full");
        Assumptions.assumeTrue(Files.exists(full), "no such device here");
        assertThatThrownBy(() -> NewFiles.write(Map.of(full, "text"))).isInstanceOf(FileAlreadyExistsException.class);
        assertThat(Files.isRegularFile(full)).isFalse();
        assertThat(Files.exists(full)).isTrue();
    }

    @Test
    void what_stands_there_stays_and_what_was_written_before_it_goes() throws IOException {
        Files.writeString(folder.resolve("b"), "old");
        assertThatThrownBy(() -> NewFiles.write(texts("a", "b")))
                .isInstanceOf(FileAlreadyExistsException.class)
                .hasMessage(folder.resolve("b").toString());
        assertThat(folder.resolve("b")).hasContent("old");
        assertThat(folder.resolve("a")).doesNotExist();
    }

    @Test
    void a_link_that_leads_nowhere_is_not_written_through() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("link"), folder.resolve("nowhere"));
        assertThatThrownBy(() -> NewFiles.write(texts("link"))).isInstanceOf(FileAlreadyExistsException.class);
        assertThat(Files.exists(link, LinkOption.NOFOLLOW_LINKS)).isTrue();
        assertThat(folder.resolve("nowhere")).doesNotExist();
    }
}
