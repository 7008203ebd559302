package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Ways out written into files, with the real jar. */
class MendIT {

    private static final Path DEMO = Path.of("..", "..", "hydro-examples", "designs", "tannery-yard.yaml");

    @TempDir
    Path folder;

    private RealJar leat;
    private Path plant;
    private String text;

    @BeforeEach
    void plant() throws IOException {
        leat = new RealJar(folder);
        text = Files.readString(DEMO);
        plant = Files.writeString(folder.resolve("plant.yaml"), text);
    }

    @Test
    void changes_are_shown_first_and_written_on_demand_and_what_remains_is_what_check_finds() throws Exception {
        RealJar.Ran shown = leat.run("mend", "plant.yaml");
        assertThat(shown.out())
                .contains(
                        "  - stop-water: quick-valve\n  + stop-water: deflector\n",
                        "Nothing is written yet",
                        "Left as it is")
                .contains("must be built so");
        assertThat(Files.readString(plant)).isEqualTo(text);

        RealJar.Ran written = leat.run("mend", "--write", "plant.yaml");
        assertThat(written.out().replaceAll("(?s)\n\\d+ values changed.*", ""))
                .isEqualTo(shown.out().replaceAll("(?s)\nNothing is written yet.*", ""));
        String after = Files.readString(plant);
        assertThat(after).isNotEqualTo(text);
        assertThat(after.lines().count()).isEqualTo(text.lines().count());
        RealJar.Ran checked = leat.run("check", "plant.yaml");
        assertThat(written.code()).isEqualTo(checked.code());
        String counts = written.out()
                .replaceAll("\\s+", " ")
                .replaceAll("(?s).*; after (\\d+ errors?, \\d+ warnings?, \\d+ notes?).*", "$1");
        assertThat(checked.out()).contains("1 file checked, " + counts);
        assertThat(folder).isDirectoryNotContaining("glob:**.part");
    }

    @Test
    void standard_input_unknown_rules_and_files_that_are_no_designs_are_refused() throws Exception {
        assertThat(leat.run(List.of(), text, "mend", "-").code()).isEqualTo(2);
        assertThat(leat.run("mend", "--rule", "no/such", "plant.yaml").code()).isEqualTo(2);
        Files.writeString(folder.resolve("bad.yaml"), "penstock: [\n");
        RealJar.Ran ran = leat.run("mend", "--write", "bad.yaml", "missing.yaml", "plant.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).contains("bad.yaml\n  unreadable", "missing.yaml\n  unreadable", "values changed.");
        assertThat(Files.readString(folder.resolve("bad.yaml"))).isEqualTo("penstock: [\n");
    }

    @Test
    void a_file_without_failures_stays_as_it_is() throws Exception {
        String sound = Files.readString(DEMO.resolveSibling("rowan-ghyll.yaml"));
        Files.writeString(plant, sound);
        RealJar.Ran ran = leat.run("mend", "--write", "plant.yaml");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("Nothing to change.").doesNotContain("changed.");
        assertThat(Files.readString(plant)).isEqualTo(sound);
    }
}
