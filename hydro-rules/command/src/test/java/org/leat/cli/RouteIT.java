package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code leat route} as it is met: the real jar, real files, real exit codes. */
class RouteIT {

    private static final Path EXAMPLES =
            Path.of("..", "..", "hydro-examples").toAbsolutePath().normalize();
    private static final String TRACK =
            EXAMPLES.resolve("tracks").resolve("rowan-ghyll.gpx").toString();

    @TempDir
    private Path folder;

    private RealJar.Ran leat(String... arguments) throws Exception {
        return new RealJar(folder).run(arguments);
    }

    @Test
    void a_track_is_shown_then_written_and_the_design_stays_sound() throws Exception {
        Path plant = folder.resolve("plant.yaml");
        Files.copy(EXAMPLES.resolve("designs").resolve("rowan-ghyll.yaml"), plant);
        String before = Files.readString(plant);
        RealJar.Ran shown = leat("route", "plant.yaml", TRACK);
        assertThat(shown.code()).isZero();
        assertThat(shown.out()).contains("- name: run 2\n  length: ").contains("Nothing is written yet");
        assertThat(plant).hasContent(before);
        RealJar.Ran written = leat("route", "plant.yaml", TRACK, "--write");
        assertThat(written.code()).isZero();
        assertThat(Files.readString(plant))
                .startsWith("# A sound plant: a hut on 24 V")
                .contains("gross-head: 32 m ± 0.3 m")
                .contains("- name: run 2\n");
        assertThat(leat("check", "plant.yaml").code()).isZero();
    }

    @Test
    void a_bad_track_and_a_bad_section_change_nothing() throws Exception {
        Path plant = folder.resolve("plant.yaml");
        Files.copy(EXAMPLES.resolve("designs").resolve("rowan-ghyll.yaml"), plant);
        String before = Files.readString(plant);
        Files.writeString(
                folder.resolve("bad.gpx"), "<gpx version='1.1' creator='x'>\n<trk><trkseg><trkpt lat='x' lon='8'/>");
        RealJar.Ran bad = leat("route", "plant.yaml", "bad.gpx", "--write");
        assertThat(bad.code()).isEqualTo(3);
        assertThat(bad.err()).startsWith("bad.gpx:2:").contains("found lat \"x\"");
        RealJar.Ran none = leat("route", "plant.yaml", TRACK, "--section", "upper", "--write");
        assertThat(none.code()).isEqualTo(2);
        assertThat(none.err()).isEqualTo("leat: no section of the penstock is called upper; it has inlet, run\n");
        assertThat(plant).hasContent(before);
    }
}
