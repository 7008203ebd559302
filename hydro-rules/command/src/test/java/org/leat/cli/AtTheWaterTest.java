package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.leat.cli.Said.leat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AtTheWaterTest {

    private static final String EXAMPLES = "../../hydro-examples/";
    private static final String HUT = EXAMPLES + "designs/rowan-ghyll.yaml";

    @Test
    void the_sheet_fits_on_two_pages_and_tells_where_to_stop() {
        Said said = leat("start", HUT);
        assertThat(said.code()).isZero();
        // A4 with margins of 2 cm holds 60 lines of 11 points
        assertThat(said.out().lines().count()).isLessThanOrEqualTo(120);
        assertThat(said.out()).contains("29.2 V").contains("3500 rpm").contains("_________");
    }

    @Test
    void what_could_not_be_judged_is_a_stop_and_a_design_that_fails_is_not_to_be_started() {
        Said said = leat("start", EXAMPLES + "designs/first-try.yaml");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .contains("DO NOT START")
                .contains("protection/touch-voltage")
                .contains("STOP until somebody has settled")
                .contains("cable/ampacity");
    }

    private static Said readings(Path folder, String text) throws IOException {
        Path file = folder.resolve("water.yaml");
        Files.writeString(file, "format: 1\n" + text);
        Said said = leat("readings", HUT, file.toString());
        // lines are wrapped where the folder's name has them
        return new Said(said.code(), said.out().replaceAll("\\s+", " "), said.err());
    }

    @Test
    void a_sheet_with_nothing_filled_in_or_left_is_no_all_clear(@TempDir Path folder) throws IOException {
        Said empty = leat("start", "--empty-readings", HUT);
        Path file = folder.resolve("readings.yaml");
        Files.writeString(file, empty.out());
        Said said = leat("readings", HUT, file.toString());
        assertThat(said.code()).isEqualTo(4);
        assertThat(said.out()).contains("Not known: no reading is here").doesNotContain("nothing wrong");
        JsonNode json = new ObjectMapper()
                .readTree(leat("readings", "--format", "json", HUT, file.toString())
                        .out());
        assertThat(json.at("/judged").asBoolean(true)).isFalse();
        assertThat(json.at("/faults").isEmpty()).isTrue();
        Said left = readings(folder, "sets: [ { nozzles: 11 mm, speed: 11650 rpm } ]\n");
        assertThat(left.code()).isEqualTo(1);
        assertThat(left.out()).contains("It is what was expected times ten").contains("Not known: no reading");
    }

    @Test
    void columns_that_changed_places_are_told_and_nobody_is_sent_to_the_bridge(@TempDir Path folder)
            throws IOException {
        Said far = readings(
                folder,
                "sets: [ { nozzles: 11 mm, running-pressure: 2.93 bar, speed: 14.4 rpm, battery-amps: 1158 A } ]\n");
        assertThat(far.code()).isEqualTo(1);
        assertThat(far.out()).contains("water.yaml:2:").contains("did they change places? It is left out.");
        assertThat(far.out()).doesNotContain("diode shorted?");
        Said near = readings(
                folder, "sets: [ { nozzles: 11 mm, speed: 1158 rpm, battery-amps: 26.3 A, battery-volts: 14.4 V } ]\n");
        assertThat(near.out()).containsOnlyOnce("each what was expected of the other: did they change places?");
    }

    /** Values of the plant as solved with the battery away, and with leads open. */
    @Test
    void a_blown_fuse_and_a_lead_that_is_off_are_told_as_what_they_are(@TempDir Path folder) throws IOException {
        Said sheet = leat("start", HUT);
        assertThat(sheet.out()).contains("1166 rpm").contains("28.4 V");
        Said fuse = readings(
                folder, "sets: [ { nozzles: 9 mm, speed: 1170 rpm, bridge-volts: 28.4 V, battery-amps: 0 A } ]\n");
        assertThat(fuse.out()).contains("is the battery's fuse blown, its breaker or switch open?");
        Said open = readings(folder, "sets: [ { nozzles: 9 mm, speed: 2160 rpm, battery-amps: 0 A } ]\n");
        assertThat(open.out()).contains("the rest as with leads open: shut the water");
        Said clamp = readings(
                folder, "sets: [ { nozzles: 9 mm, speed: 1109 rpm, bridge-volts: 26.7 V, battery-amps: 0 A } ]\n");
        assertThat(clamp.out()).doesNotContain("fuse blown");
        Said stands = readings(folder, "sets: [ { nozzles: 9 mm, speed: 0 rpm, battery-amps: 0 A } ]\n");
        assertThat(stands.out()).contains("The wheel stands");
    }

    @Test
    void the_empty_file_of_readings_can_be_read_once_something_is_filled_in(@TempDir Path folder) throws IOException {
        Said said = leat("start", "--empty-readings", HUT);
        assertThat(said.code()).isZero();
        Path file = folder.resolve("readings.yaml");
        Files.writeString(file, said.out().replaceAll("# (speed|flow): 0 (\\S+)  # ([\\d.]+)", "$1: $3 $2 #"));
        Said read = leat("readings", HUT, file.toString());
        assertThat(read.err()).isEmpty();
        assertThat(read.out()).contains("as expected").contains("nothing wrong that these readings show");
    }

    @Test
    void three_faults_are_found_and_a_peak_taken_for_rms_cannot_be() {
        assertThat(leat("readings", HUT, EXAMPLES + "readings/rowan-ghyll-april.yaml")
                        .out())
                .contains("screen or inlet blocked");
        assertThat(leat("readings", HUT, EXAMPLES + "readings/rowan-ghyll-november.yaml")
                        .out())
                .startsWith("FIRST, because it can hurt: a bad joint");
        assertThat(leat("readings", HUT, EXAMPLES + "readings/rowan-ghyll-storm.yaml")
                        .out())
                .startsWith("FIRST, because it can hurt: a diode shorted");
        assertThat(leat("readings", HUT, EXAMPLES + "readings/rowan-ghyll-first-day.yaml")
                        .out())
                .contains("This reading cannot be")
                .contains("does the meter show the peak?");
    }

    @Test
    void json_tells_the_same_in_si() throws IOException {
        Said said = leat("readings", "--format", "json", HUT, EXAMPLES + "readings/rowan-ghyll-november.yaml");
        JsonNode root = new ObjectMapper().readTree(said.out());
        assertThat(root.at("/faults/0/fault").asText()).isEqualTo("joint-bad");
        assertThat(root.at("/faults/0/probability").asDouble()).isBetween(0.5, 1.0);
        JsonNode sheet = new ObjectMapper()
                .readTree(leat("start", "--format", "json", HUT).out());
        assertThat(sheet.at("/steps/0/step").asText()).isEqualTo("fill");
    }

    @Test
    void a_nozzle_that_the_design_has_not_is_told_with_its_place(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("readings.yaml");
        Files.writeString(file, "format: 1\nsets:\n  - nozzles: 14 mm\n    speed: 1100 rpm\n");
        Said said = leat("readings", HUT, file.toString());
        assertThat(said.code()).isEqualTo(3);
        assertThat(said.err()).contains("readings.yaml:3:14").contains("11 mm, 9 mm, 11.5 mm");
    }

    @Test
    void a_log_tells_what_wears_and_by_when() throws IOException {
        Said said = leat("log", HUT, EXAMPLES + "readings/rowan-ghyll-log.csv");
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out()).contains("nozzle worn: now 3.").contains("Next visit: by 2031-");
        JsonNode root = new ObjectMapper()
                .readTree(leat("log", "--format", "json", HUT, EXAMPLES + "readings/rowan-ghyll-log.csv")
                        .out());
        assertThat(root.at("/growing").asText()).isEqualTo("nozzle-worn");
        assertThat(root.at("/faults/0/days").size()).isEqualTo(27);
    }

    @Test
    void a_log_is_a_page_with_a_picture_of_each_fault_when_asked() {
        String log = EXAMPLES + "readings/rowan-ghyll-log.csv";
        Said page = leat("log", "--format", "html", HUT, log);
        assertThat(page.code()).isEqualTo(1);
        assertThat(page.out())
                .startsWith("<!DOCTYPE html>")
                .contains("Nozzle worn: now 3.")
                .contains("<svg")
                .contains("<caption>Nozzle worn, size by day</caption>");
        Said wrong = leat("log", "--format", "sarif", HUT, log);
        assertThat(wrong.err()).contains("log writes text, json or html");
        assertThat(wrong.out()).isEmpty();
    }

    @Test
    void a_repaired_plant_is_called_sound_and_two_faults_are_not_called_one() {
        Said repaired = leat("readings", HUT, EXAMPLES + "readings/rowan-ghyll-repaired.yaml");
        assertThat(repaired.code()).isZero();
        assertThat(repaired.out())
                .contains("nothing wrong that these readings show")
                .doesNotContain("dump load dead");
        Said two = leat("readings", HUT, EXAMPLES + "readings/rowan-ghyll-two-faults.yaml");
        assertThat(two.code()).isEqualTo(1);
        assertThat(two.out())
                .contains("No single fault explains")
                .contains("screen or inlet blocked and a bad joint between bridge and battery");
    }

    @Test
    void a_design_learns_what_was_measured_and_keeps_its_comments(@TempDir Path folder) throws IOException {
        Path design = folder.resolve("hut.yaml");
        String before = Files.readString(Path.of(HUT));
        Files.writeString(design, before);
        String readings = EXAMPLES + "readings/rowan-ghyll-second-day.yaml";
        Said shown = leat("learn", design.toString(), readings);
        assertThat(shown.out()).contains("voltage: 21.36 V ± 0.24 V").contains("Nothing is written yet");
        assertThat(Files.readString(design)).isEqualTo(before);
        assertThat(leat("learn", "--write", design.toString(), readings).code()).isZero();
        String after = Files.readString(design);
        assertThat(after)
                .contains("voltage: 21.36 V ± 0.24 V, speed: 1000 rpm")
                .contains("# measured by open leads at the water, 2030-09-22")
                .startsWith(before.substring(0, before.indexOf("name:")))
                // known better than the gauge tells
                .contains("gross-head: 32 m ± 0.3 m\n");
        assertThat(leat("check", design.toString()).code()).isZero();
    }

    /** No one of the faults is sure, but that something is wrong is. */
    @Test
    void a_design_learns_nothing_of_readings_that_any_of_several_faults_explains(@TempDir Path folder)
            throws IOException {
        Path design = folder.resolve("hut.yaml");
        String before = Files.readString(Path.of(HUT)).replace("gross-head: 32 m ± 0.3 m", "gross-head: 32 m");
        Files.writeString(design, before);
        Path file = folder.resolve("readings.yaml");
        Files.writeString(file, """
                format: 1
                day: 2031-05-30
                standing-pressure: 3.14 bar
                sets:
                  - { nozzles: 11 mm, running-pressure: 1.9 bar, speed: 1040 rpm, battery-amps: 6 A }
                """);
        Said read = leat("readings", "--format", "json", design.toString(), file.toString());
        JsonNode faults = new ObjectMapper().readTree(read.out()).at("/faults");
        assertThat(faults.get(0).get("fault").asText()).isNotEqualTo("nothing");
        assertThat(faults.get(0).get("probability").asDouble()).isLessThan(0.9);
        Said said = leat("learn", "--write", design.toString(), file.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.err())
                .contains("these readings say: ")
                .contains(", or ")
                .contains("nothing is written");
        assertThat(Files.readString(design)).isEqualTo(before);
        assertThat(leat("learn", "--write", "--even-so", design.toString(), file.toString())
                        .code())
                .isEqualTo(1);
        assertThat(Files.readString(design)).contains("# measured by standing pressure, 2031-05-30");
    }

    @Test
    void a_limit_that_is_passed_has_no_day_on_which_it_will_be_met(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, """
                day,running-pressure [bar],speed [rpm],battery-amps [A]
                2031-06-01,2.92,1159,14.3
                2031-06-15,2.92,1159,14.3
                2031-07-01,2.91,1158,14.2
                2031-07-15,2.82,1145,13.6
                2031-08-01,2.70,1130,12.9
                2031-08-15,2.52,1108,11.8
                2031-09-01,2.34,1085,10.6
                """);
        Said said = leat("log", HUT, file.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out())
                .contains("Its limit of 10 % is passed already.")
                .contains("> 10 years")
                .doesNotContain("is met on");
    }

    @Test
    void no_line_for_a_person_is_wider_than_a_screen_and_each_ends_with_the_caution() {
        String[][] calls = {
            {"start", HUT},
            {"readings", HUT, EXAMPLES + "readings/rowan-ghyll-april.yaml"},
            {"readings", HUT, EXAMPLES + "readings/rowan-ghyll-november.yaml"},
            {"log", HUT, EXAMPLES + "readings/rowan-ghyll-log.csv"},
            {"bench", EXAMPLES + "readings/rowan-ghyll-bench.yaml"}
        };
        for (String[] call : calls) {
            String out = leat(call).out();
            assertThat(out.lines())
                    .as(call[0])
                    .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
            assertThat(out.replace('\n', ' ')).contains("can maim and kill").endsWith("printed here. ");
        }
    }

    @Test
    void the_list_of_commands_says_of_each_in_a_whole_sentence_what_it_does() {
        String help = leat("--help").out();
        String commands = help.substring(help.indexOf("Commands:\n") + 10, help.indexOf("\nExit codes"));
        assertThat(commands.replaceAll("\n {10,}", " ").lines())
                .hasSizeGreaterThan(12)
                .allMatch(l -> l.endsWith("."));
    }

    @Test
    void readings_may_come_as_a_table(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("readings.csv");
        Files.writeString(
                file,
                "nozzles,running-pressure [bar],speed [rpm],battery-amps [A]\n11 mm,2.92,1165,14.7\n9 mm,3.03,1109,10.5\n");
        Said said = leat("readings", HUT, file.toString());
        assertThat(said.err()).isEmpty();
        assertThat(said.out()).contains("nothing wrong that these readings show");
    }

    @Test
    void amps_with_the_sign_turned_are_told_with_their_place_and_accuse_nobody(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("readings.csv");
        Files.writeString(file, "nozzles,speed,battery-amps\n11 mm,1165 rpm,-14.7 A\n");
        Said said = leat("readings", HUT, file.toString());
        assertThat(said.code()).isEqualTo(1);
        assertThat(said.out().replaceAll("\\s+", " "))
                .contains("readings.csv:2:16: This reading cannot be: amps into the battery, 11 mm of -14.7 A")
                .contains("turned round")
                .doesNotContain("-0.0 u")
                .contains("nothing wrong that these readings show");
        JsonNode cannot = new ObjectMapper()
                .readTree(leat("readings", "--format", "json", HUT, file.toString())
                        .out())
                .at("/impossible/0");
        assertThat(cannot.at("/path").asText()).isEqualTo("/sets[0]/battery-amps");
        assertThat(cannot.at("/line").asInt()).isEqualTo(2);
        assertThat(cannot.at("/why").asText()).isEqualTo("turned-round");
    }

    @Test
    void readings_of_no_named_nozzles_are_taken_as_of_those_built_and_that_is_said(@TempDir Path folder)
            throws IOException {
        Path file = folder.resolve("readings.csv");
        Files.writeString(file, "speed,battery-amps\n1165 rpm,14.7 A\n");
        Said said = leat("readings", HUT, file.toString());
        assertThat(said.code()).isZero();
        assertThat(said.err()).endsWith("readings.csv:2:1: no nozzles are named; taken as of 11 mm, as built\n");
    }

    @Test
    void a_table_of_nothing_is_one_problem(@TempDir Path folder) throws IOException {
        for (String nothing : List.of("", "nozzles;speed\n", "# what was read\n")) {
            Path file = folder.resolve("readings.csv");
            Files.writeString(file, nothing);
            Said said = leat("readings", HUT, file.toString());
            assertThat(said.code()).isEqualTo(3);
            assertThat(said.err().lines()).singleElement().asString().contains("rows below the names of the fields");
        }
    }

    @Test
    void the_page_of_a_plant_shows_its_log_over_time(@TempDir Path folder) throws IOException {
        String log = EXAMPLES + "readings/rowan-ghyll-log.csv";
        String plain = leat("check", HUT, "--format", "html").out();
        String with = leat("check", HUT, "--format", "html", "--log", log).out();
        assertThat(plain).doesNotContain("over-time");
        assertThat(with)
                .contains("<a href=\"#over-time\">Over time</a>")
                .contains("Nozzle worn: now 3.5 %")
                .contains("id=\"drift-0-station\"");
        Path nothing = folder.resolve("log.csv");
        Files.writeString(nothing, "day,nozzles\n2031-01-04,11 mm\n");
        assertThat(leat("check", HUT, "--format", "html", "--log", nothing.toString())
                        .out())
                .contains("the log holds no reading of this plant");
        assertThat(leat("check", HUT, "--log", log).code()).isEqualTo(2);
        assertThat(leat("check", HUT, EXAMPLES + "designs/ash-gill.yaml", "--format", "html", "--log", log)
                        .code())
                .isEqualTo(2);
        Said unreadable = leat(
                "check",
                HUT,
                "--format",
                "html",
                "--log",
                folder.resolve("none.csv").toString());
        assertThat(unreadable.code()).isEqualTo(3);
        assertThat(unreadable.out()).isEmpty();
    }

    /** The hut's elements of 1.1 Ω are made for 1500 W: √(1500 W · 1.1 Ω) = 40.6 V, far below what may be touched. */
    @Test
    void the_dump_load_is_tried_up_to_what_its_elements_are_made_for() throws IOException {
        JsonNode steps = new ObjectMapper()
                .readTree(leat("start", "--format", "json", HUT).out())
                .at("/steps");
        int seen = 0;
        for (JsonNode step : steps) {
            for (JsonNode line : lines(step)) {
                if (line.at("/what").asText().equals("bridge-volts")) {
                    assertThat(line.at("/stopAbove").asDouble()).isCloseTo(40.62, within(0.01));
                    assertThat(line.at("/stopRule").asText()).isEqualTo("dump/own-rating");
                    seen++;
                }
            }
        }
        assertThat(seen).isGreaterThanOrEqualTo(2);
    }

    private static List<JsonNode> lines(JsonNode step) {
        List<JsonNode> lines = new ArrayList<>();
        step.forEach(part -> part.forEach(lines::add));
        return lines;
    }

    /** Behind a tracking regulator the bridge's volts say nothing of elements at the battery. */
    @Test
    void elements_at_the_battery_set_no_stop_for_the_volts_behind_the_bridge(@TempDir Path folder) throws IOException {
        String sound = Files.readString(Path.of("../src/main/resources/org/leat/pack/bases/sound-tracking.yaml"));
        assertThat(sound).contains("side: bridge");
        Path bridge = folder.resolve("bridge.yaml");
        Path battery = folder.resolve("battery.yaml");
        Files.writeString(bridge, sound);
        Files.writeString(battery, sound.replace("side: bridge", "side: battery"));
        assertThat(stopRules(bridge, "bridge-volts")).contains("dump/own-rating");
        assertThat(stopRules(battery, "bridge-volts")).isNotEmpty().doesNotContain("dump/own-rating");
        // with no converter between them both are one node
        String hut = Files.readString(Path.of(HUT));
        assertThat(hut).contains("side: bridge");
        Path one = folder.resolve("one-node.yaml");
        Files.writeString(one, hut.replace("side: bridge", "side: battery"));
        assertThat(stopRules(one, "bridge-volts")).contains("dump/own-rating");
    }

    private static List<String> stopRules(Path design, String what) throws IOException {
        List<String> rules = new ArrayList<>();
        for (JsonNode step : new ObjectMapper()
                .readTree(leat("start", "--format", "json", design.toString()).out())
                .at("/steps")) {
            lines(step).stream()
                    .filter(line -> line.at("/what").asText().equals(what))
                    .forEach(line -> rules.add(line.at("/stopRule").asText()));
        }
        return rules;
    }

    @Test
    void a_plant_of_one_nozzle_set_needs_no_name_for_it(@TempDir Path folder) throws IOException {
        Path plant = folder.resolve("one.yaml");
        String hut = Files.readString(Path.of(HUT));
        assertThat(hut).contains("available: [ 9 mm, 11 mm, 11.5 mm ]");
        Files.writeString(plant, hut.replace("available: [ 9 mm, 11 mm, 11.5 mm ]", "available: [ 11 mm ]"));
        Path read = folder.resolve("readings.csv");
        Files.writeString(read, "speed,battery-amps\n1165 rpm,14.7 A\n");
        assertThat(leat("readings", plant.toString(), read.toString()).err()).isEmpty();
    }

    @Test
    void a_loggers_moments_are_days_of_a_log(@TempDir Path folder) throws IOException {
        String[] lines = Files.readString(Path.of(EXAMPLES + "readings/rowan-ghyll-log.csv"))
                .split("\n", -1);
        StringBuilder hours = new StringBuilder(lines[1] + "\n");
        for (int i = 2; i < lines.length; i++) {
            if (!lines[i].isEmpty()) {
                String day = lines[i].substring(0, 10);
                String rest = lines[i].substring(10);
                hours.append(day).append("T09:00:00Z").append(rest).append('\n');
                hours.append(day).append(" 10:00").append(rest).append('\n');
            }
        }
        Path file = folder.resolve("logger.csv");
        Files.writeString(file, hours);
        Said twice = leat("log", HUT, file.toString());
        Said once = leat("log", HUT, EXAMPLES + "readings/rowan-ghyll-log.csv");
        assertThat(twice.err()).isEqualTo(once.err());
        assertThat(twice.out().lines().findFirst()).isEqualTo(once.out().lines().findFirst());
        assertThat(twice.out()).contains("nozzle worn: now ");
    }

    @ParameterizedTest
    @CsvSource({
        "'day,speed [rpm]', 2031-01-04T25:00, /entries[0]/day",
        "'day,speed [rpm]', 2031-02-30 10:00, /entries[0]/day",
        "'timestamp,speed [rpm]', 2031-01-04T09:00, did you mean \"day\"?",
    })
    void a_moment_that_is_none_and_a_column_of_another_name_are_told_once(
            String head, String moment, String told, @TempDir Path folder) throws IOException {
        Path file = folder.resolve("logger.csv");
        Files.writeString(file, head + "\n" + (moment + ",1160\n").repeat(3));
        Said said = leat("log", HUT, file.toString());
        assertThat(said.code()).isEqualTo(3);
        assertThat(said.err()).contains(told);
        if (head.startsWith("timestamp")) {
            assertThat(said.err().lines().filter(line -> line.contains("timestamp")))
                    .hasSize(1);
        }
    }

    @Test
    void a_log_tells_where_what_it_leaves_out_stands_and_one_day_is_no_all_clear(@TempDir Path folder)
            throws IOException {
        String head = "day,nozzles,running-pressure [bar],speed [rpm],battery-amps [A]\n";
        String day = "2031-01-04,11 mm,2.92,1160,14.6\n";
        Path file = folder.resolve("log.csv");
        Files.writeString(file, head + day);
        Said one = leat("log", HUT, file.toString());
        assertThat(one.code()).isEqualTo(4);
        assertThat(one.out()).contains("one day alone tells no change").doesNotContain("Nothing changes");
        Files.writeString(
                file,
                head + day + "2031-01-11,10 mm,2.92,1160,14.6\n2031-01-18,11 mm,2.91,14.5,1159\n"
                        + "2031-01-25,11 mm,2.91,1160,14.5\n2031-01-26,10 mm,2.91,1160,14.5\n");
        Said more = leat("log", HUT, file.toString());
        assertThat(more.code()).isZero();
        assertThat(more.err().lines())
                .hasSize(3)
                .anyMatch(line -> line.contains("log.csv:3:12: the design has no such nozzle set"))
                .anyMatch(line -> line.contains("log.csv:4:23: This reading cannot be: speed"))
                .anyMatch(line -> line.contains("log.csv:4:28: This reading cannot be: amps"));
        Files.writeString(file, head + day.replace("11 mm", "10 mm"));
        Said none = leat("log", HUT, file.toString());
        assertThat(none.code()).isEqualTo(4);
        assertThat(none.err()).contains("log.csv:2:12: the design has no such nozzle set; it has 11 mm");
    }

    @Test
    void nothing_is_learned_of_a_sheet_with_nothing_in_it(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("readings.yaml");
        Files.writeString(file, leat("start", "--empty-readings", HUT).out());
        Said said = leat("learn", HUT, file.toString());
        assertThat(said.code()).isEqualTo(4);
        assertThat(said.err()).contains("no reading is here, or left").doesNotContain("wrong");
    }

    private static Said european(String rows, Path folder) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, "day;running-pressure [bar];speed [rpm]\n" + rows);
        return leat("log", HUT, file.toString());
    }

    @Test
    void a_table_between_semicolons_may_have_decimal_commas_where_they_can_be_nothing_else(@TempDir Path folder)
            throws IOException {
        String points = "2031-01-04;2.92;1160\n2031-01-11;2.915;1161.5\n";
        Said pointed = european(points, folder);
        assertThat(pointed.err()).isEmpty();
        Said commas = european(points.replace('.', ','), folder);
        assertThat(commas).isEqualTo(pointed);
        // thousands, or three decimals: nobody can know
        assertThat(european("2031-01-04;2,923;1,160\n", folder).err())
                .contains("found \"2,923\"")
                .contains("a decimal point belongs there, no comma");
        // both in one table
        assertThat(european("2031-01-04;2,92;1160\n2031-01-11;2.91;1161\n", folder)
                        .err())
                .contains("found \"2,92\"");
    }
}
