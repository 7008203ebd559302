package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class InPlaceTest {

    @TempDir
    Path folder;

    private static byte[] bytes(String text) {
        return text.getBytes(StandardCharsets.UTF_8);
    }

    @Test
    void a_file_that_has_changed_meanwhile_stays_as_it_is() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "someone else was here");
        assertThatThrownBy(() -> InPlace.write(file, bytes("old"), "new"))
                .isInstanceOf(IOException.class)
                .hasMessage("it has changed meanwhile");
        assertThat(file).hasContent("someone else was here");
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void permissions_byte_order_mark_and_links_stay() throws IOException {
        Path file = Files.writeString(folder.resolve("a.yaml"), "\uFEFFold");
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("rwxr-x---"));
        Path link = Files.createSymbolicLink(folder.resolve("link.yaml"), file);
        InPlace.write(link, Files.readAllBytes(file), "n\u00e9w");
        assertThat(Files.readString(file)).isEqualTo("\uFEFFn\u00e9w");
        assertThat(Files.isSymbolicLink(link)).isTrue();
        assertThat(Files.getPosixFilePermissions(file)).isEqualTo(PosixFilePermissions.fromString("rwxr-x---"));
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void a_file_that_is_gone_is_not_made_anew() {
        assertThatThrownBy(() -> InPlace.write(folder.resolve("gone.yaml"), bytes("old"), "new"))
                .isInstanceOf(IOException.class);
        assertThat(folder).isEmptyDirectory();
    }
}
