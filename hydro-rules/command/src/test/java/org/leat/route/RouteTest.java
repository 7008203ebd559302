package org.leat.route;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.design.Design;
import org.leat.design.Section;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.quantity.Si;

/** A section of a design laid along a track. */
class RouteTest {

    private static final Path EXAMPLES = Path.of("..", "..", "hydro-examples");

    private static String text(String file) {
        try {
            return Files.readString(EXAMPLES.resolve(file));
        } catch (IOException e) {
            throw new IllegalStateException(e);
        }
    }

    private static final String DESIGN = text("designs/rowan-ghyll.yaml");
    private static final String TRACK = text("tracks/rowan-ghyll.gpx");

    private static TrackReader.Read read(String gpx) {
        return TrackReader.read(gpx.getBytes(StandardCharsets.UTF_8), "way.gpx");
    }

    private static Track track(String gpx) {
        TrackReader.Read read = read(gpx);
        assertThat(read.fault()).isNull();
        return Objects.requireNonNull(read.track());
    }

    private static Reading design(String text) {
        Reading reading = DesignReader.read(text, "plant.yaml");
        assertThat(reading.problems()).isEmpty();
        return reading;
    }

    private static Route route(String design, Track track, double noise) {
        Route.Laid laid = Route.of(design(design), track, null, noise);
        assertThat(laid).isInstanceOf(Route.Done.class);
        return ((Route.Done) laid).route();
    }

    @Test
    void the_three_true_slopes_come_out_of_noisy_heights() {
        List<Route.Stretch> slopes = route(DESIGN, track(TRACK), 1.5).stretches();
        // the track was made of 30 m with 15 m of fall, 45 m with 4 m, 26 m with 12.2 m, and noise
        assertThat(slopes).hasSize(3);
        assertThat(slopes.get(0).length()).isCloseTo(Math.hypot(30, 15), within(2.5));
        assertThat(slopes.get(1).length()).isCloseTo(Math.hypot(45, 4), within(2.5));
        assertThat(slopes.get(2).length()).isCloseTo(Math.hypot(26, 12.2), within(2.5));
        assertThat(slopes.get(0).to()).isCloseTo(31.2 - 15, within(1.0));
        assertThat(slopes.get(1).to()).isCloseTo(31.2 - 19, within(1.0));
        assertThat(route(DESIGN, track(TRACK), 0.5).stretches()).hasSizeGreaterThan(8);
    }

    @Test
    void a_track_sets_neither_the_head_nor_the_ends() {
        String higher = DESIGN.replace("gross-head: 32 m ± 0.3 m", "gross-head: 62 m ± 0.3 m")
                .replace("from-elevation: 31.5 m", "from-elevation: 61.5 m")
                .replace("31.2 m", "61.2 m");
        Route route = route(higher, track(TRACK), 1.5);
        String written = Objects.requireNonNull(route.written());
        Design before = Objects.requireNonNull(design(higher).design());
        Design after = Objects.requireNonNull(design(written).design());
        assertThat(after.site()).isEqualTo(before.site());
        assertThat(Plant.of(after).numbers().site().grossHead()).isEqualTo(62);
        List<Section> sections = after.penstock().sections();
        assertThat(sections).hasSize(4);
        assertThat(sections.get(0)).isEqualTo(before.penstock().sections().get(0));
        assertThat(Si.of(Objects.requireNonNull(sections.get(1).fromElevation())))
                .isEqualTo(61.2);
        assertThat(Si.of(Objects.requireNonNull(sections.get(3).toElevation()))).isZero();
        // twice the fall on the same way on the map is a longer pipe
        assertThat(route.length())
                .isGreaterThan(route(DESIGN, track(TRACK), 1.5).length() + 5);
    }

    @Test
    void sections_are_written_with_their_pipe_and_everything_else_stays() {
        String commented = DESIGN.replace("      length: 108 m\n", "      length: 108 m # paced, twice\n");
        String written =
                Objects.requireNonNull(route(commented, track(TRACK), 1.5).written());
        List<String> added = written.lines().toList();
        List<String> kept = commented
                .lines()
                .filter(line -> !line.contains("length: 108 m"))
                .filter(line -> !line.contains("from-elevation: 31.2 m"))
                .toList();
        assertThat(added).containsSubsequence(kept);
        assertThat(written).contains("29.02 m # paced, twice");
        List<Section> sections =
                Objects.requireNonNull(design(written).design()).penstock().sections();
        assertThat(sections.stream().map(Section::name)).containsExactly("inlet", "run 1", "run 2", "run");
        assertThat(sections.subList(1, 4).stream().map(Section::pipe).distinct())
                .hasSize(1);
        assertThat(sections.get(3).fittings()).hasSize(2);
        String windows = DESIGN.replace("\n", "\r\n");
        assertThat(Objects.requireNonNull(route(windows, track(TRACK), 1.5).written())
                        .replace("\r\n", ""))
                .doesNotContain("\n");
    }

    @Test
    void a_section_without_elevations_gets_them_and_one_in_braces_is_left_to_its_writer() {
        String bare = text("designs/first-try.yaml");
        String written = Objects.requireNonNull(route(bare, track(TRACK), 1.5).written());
        List<Section> sections =
                Objects.requireNonNull(design(written).design()).penstock().sections();
        assertThat(sections).hasSize(3);
        assertThat(Si.of(Objects.requireNonNull(sections.get(0).fromElevation())))
                .isEqualTo(24);
        assertThat(sections.get(2).fromElevation()).isEqualTo(sections.get(1).toElevation());
        String braces = bare.replaceAll(
                "(?s)    - name: run\n.*?length: 90 m\n",
                "    - { name: run, pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 17 }, length: 90 m }\n");
        assertThat(route(braces, track(TRACK), 1.5).written()).isNull();
        assertThat(route(braces, track(TRACK), 1.5).sections()).contains("- name: run 2");
    }

    @Test
    void a_section_that_is_not_there_and_one_whose_top_is_not_known_are_told() {
        assertThat(Route.of(design(DESIGN), track(TRACK), "upper", 1.5))
                .isEqualTo(new Route.Impossible("no section of the penstock is called upper; it has inlet, run"));
        String untold =
                DESIGN.replace("      to-elevation: 31.2 m\n", "").replace("      from-elevation: 31.2 m\n", "");
        assertThat(Route.of(design(untold), track(TRACK), null, 1.5))
                .isInstanceOfSatisfying(
                        Route.Impossible.class,
                        no -> assertThat(no.why()).startsWith("tell from-elevation of section run"));
    }

    @Test
    void a_track_walked_upwards_is_turned() {
        String[] parts = TRACK.split("(?=\\n *<trkpt)|(?=\\n *</trkseg>)");
        List<String> points =
                Stream.of(parts).filter(part -> part.contains("<trkpt")).toList();
        StringBuilder up = new StringBuilder(parts[0]);
        for (int i = points.size() - 1; i >= 0; i--) {
            up.append(points.get(i));
        }
        Track turned = track(up.append(parts[parts.length - 1]).toString());
        assertThat(turned.turned()).isTrue();
        assertThat(turned.fall()).isEqualTo(track(TRACK).fall());
        assertThat(route(DESIGN, turned, 1.5).stretches()).hasSize(3);
    }

    private static String gpx(String points) {
        return "<?xml version='1.0'?>\n<gpx version='1.1' creator='x' xmlns='http://www.topografix.com/GPX/1/1'>\n<trk><trkseg>\n"
                + points + "\n</trkseg></trk></gpx>";
    }

    private static final String TOP = "<trkpt lat='47' lon='8'><ele>500</ele></trkpt>\n";

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            <trkpt lat='abc' lon='8'><ele>480</ele></trkpt>      | way.gpx:5:26: track point: found lat "abc"; expected degrees from -90 to 90
            <trkpt lon='8'><ele>480</ele></trkpt>                | way.gpx:5:16: track point: lat is missing
            <trkpt lat='97' lon='8'><ele>480</ele></trkpt>       | way.gpx:5:25: track point: found lat "97"; expected degrees from -90 to 90
            <trkpt lat='47.001' lon='8'><ele>low</ele></trkpt>   | way.gpx:5:34: track point: found ele "low"; expected a height in metres
            <trkpt lat='47.1' lon='8'><ele>480</ele></trkpt>     | way.gpx:5: track point 11117 m from the one before; expected no hole in the track
            <trkpt lat='47.001' lon='8'/>                        | way.gpx:5: track point without a height (ele); 1 of 2 lack it, and the ends must have one
            <trkpt lat='47.001' lon='8'><ele>500</ele></trkpt>   | way.gpx: the track does not fall
            """)
    void a_bad_point_is_told_with_its_place(String point, String told) {
        TrackReader.Read read = read(gpx(TOP + point));
        assertThat(read.track()).isNull();
        assertThat(read.fault()).isEqualTo(told);
    }

    @Test
    void what_is_no_track_is_told() {
        assertThat(read("hello").fault()).isEqualTo("way.gpx:1:1: not readable as XML, of which GPX is made");
        assertThat(read("").fault()).isEqualTo("way.gpx:1:1: not readable as XML, of which GPX is made");
        assertThat(read(gpx(TOP).replace("</gpx>", "")).fault())
                .startsWith("way.gpx:")
                .contains("not readable as XML");
        assertThat(read("<kml></kml>").fault()).isEqualTo("way.gpx:1:6: found <kml>; expected a track as GPX, <gpx>");
        assertThat(read(gpx(TOP)).fault()).isEqualTo("way.gpx: the track has 1 point; expected many");
        assertThat(read("<gpx version='1.1' creator='x'/>").fault())
                .isEqualTo("way.gpx: holds no track; expected one, walked along the pipe");
        assertThat(read("<!DOCTYPE gpx [<!ENTITY a SYSTEM 'x'>]><gpx version='1.1' creator='x'/>")
                        .fault())
                .contains("way.gpx:1:")
                .contains("a document type is not read");
        String two = gpx(TOP).replace("</trk>", "</trk><trk><trkseg>" + TOP + "</trkseg></trk>");
        assertThat(read(two).fault()).isEqualTo("way.gpx: holds 2 tracks; expected one, walked along the pipe");
        assertThat(TrackReader.read(Path.of("nowhere.gpx"), "nowhere.gpx").fault())
                .isEqualTo("nowhere.gpx: no such file, or no ordinary one");
    }

    @Test
    void a_few_points_without_a_height_lie_straight_between_their_neighbours() {
        Track filled = track(gpx(TOP + """
                <trkpt lat='47.001' lon='8'><ele>480</ele></trkpt>
                <trkpt lat='47.002' lon='8'/>
                <trkpt lat='47.003' lon='8'><ele>440</ele></trkpt>
                <trkpt lat='47.004' lon='8'><ele>420</ele></trkpt>"""));
        assertThat(filled.filled()).isEqualTo(1);
        assertThat(filled.shape(0.01)).hasSize(1);
        assertThat(filled.fall()).isEqualTo(80);
    }
}
