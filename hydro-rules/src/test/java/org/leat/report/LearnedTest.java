package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.leat.file.DesignReader;
import org.leat.file.Filled;
import org.leat.file.Reading;
import org.leat.file.RecordReader;
import org.leat.plant.Plant;
import org.leat.readings.Channel;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.Expectations;
import org.leat.readings.PlantReadings;
import org.leat.readings.TakenReadings;

/** What a plant built otherwise than its design lets one read, and what the design learns of it. */
class LearnedTest {

    private static final double RPM = Math.PI / 30;

    private static String hut() throws IOException {
        return Files.readString(Path.of("..", "hydro-examples", "designs", "rowan-ghyll.yaml"));
    }

    private static Expectations expected(String design) {
        return Expectations.of(Plant.of(
                Objects.requireNonNull(DesignReader.read(design, "hut.yaml").design())));
    }

    /** What good instruments would show on a plant. */
    private static String readings(Expectations of) {
        double open = of.value(new Channel("11 mm", LoadState.OPEN, ReadingKind.SPEED));
        double hertz = of.value(new Channel("11 mm", LoadState.OPEN, ReadingKind.FREQUENCY));
        double volts = of.value(new Channel("11 mm", LoadState.OPEN, ReadingKind.LEAD_VOLTS));
        double pressure = of.value(new Channel("11 mm", LoadState.OPEN, ReadingKind.RUNNING_PRESSURE));
        double loaded = of.value(new Channel("11 mm", LoadState.BUS, ReadingKind.RUNNING_PRESSURE));
        double flow = of.value(new Channel("11 mm", LoadState.BUS, ReadingKind.FLOW));
        double amps = of.value(new Channel("11 mm", LoadState.BUS, ReadingKind.BATTERY_AMPS));
        return String.format(
                Locale.ROOT,
                """
                format: 1
                day: 2031-06-01
                standing-pressure: %.5f bar ± 0.003 bar
                sets:
                  - nozzles: 11 mm
                    leads: open
                    speed: %.3f rpm ± 5 rpm
                    frequency: %.3f Hz
                    running-pressure: %.5f bar ± 0.003 bar
                    volts-between-leads: [ %.3f V ± 0.2 V ]
                  - nozzles: 11 mm
                    running-pressure: %.5f bar ± 0.003 bar
                    flow: %.6f L/s ± 0.01 L/s
                    battery-amps: %.4f A ± 0.05 A
                """,
                of.value(Channel.standing()) / 1e5,
                open / RPM,
                hertz,
                pressure / 1e5,
                volts,
                loaded / 1e5,
                flow * 1e3,
                amps);
    }

    private static Learned.Lesson learned(String design, String readings) {
        Reading reading = DesignReader.read(design, "hut.yaml");
        Expectations expected = expected(design);
        Filled<PlantReadings> read = RecordReader.read(PlantReadings.class, readings, "water.yaml");
        PlantReadings file =
                Objects.requireNonNull(read.record(), () -> read.problems().toString());
        return Learned.of(reading, expected, file, TakenReadings.of(file, expected));
    }

    private static double number(String text, String field) {
        Matcher m = Pattern.compile(field + ": ([-\\d.]+)").matcher(text);
        assertThat(m.find()).as(field + " in " + text).isTrue();
        return Double.parseDouble(m.group(1));
    }

    @Test
    void a_plant_that_is_as_drawn_teaches_its_volts_and_nothing_else() throws IOException {
        Learned.Lesson lesson = learned(hut(), readings(expected(hut())));
        assertThat(lesson.values())
                .extracting(Learned.Value::path)
                .containsExactlyInAnyOrder("/site/gross-head", "/alternator/open-circuit/voltage");
    }

    @Test
    void nozzle_roughness_runaway_and_efficiency_of_a_plant_built_otherwise_come_back() throws IOException {
        String built = hut().replace("velocity-coefficient: 0.97", "velocity-coefficient: 0.93")
                .replace("roughness: 0.02 mm", "roughness: 0.5 mm")
                .replace("runaway-factor: 1.85", "runaway-factor: 1.75")
                .replace("measured-efficiency: 78 %", "measured-efficiency: 71 %");
        Learned.Lesson lesson = learned(hut(), readings(expected(built)));
        assertThat(number(lesson.text(), "velocity-coefficient")).isCloseTo(0.93, within(0.006));
        assertThat(number(lesson.text(), "roughness")).isCloseTo(0.5, within(0.15));
        assertThat(number(lesson.text(), "runaway-factor")).isCloseTo(1.75, within(0.02));
        assertThat(number(lesson.text(), "measured-efficiency")).isCloseTo(71, within(1.5));
        assertThat(lesson.text())
                .contains("# measured by flow and running pressure, 2031-06-01")
                .contains("# A sound plant: a hut on 24 V");
        assertThat(DesignReader.read(lesson.text(), "hut.yaml").problems()).isEmpty();
    }

    @Test
    void what_a_design_has_not_is_added_below_its_neighbours_with_day_and_source() throws IOException {
        String design = hut().replace("  pole-pairs: 8\n", "").replace("  runaway-factor: 1.85\n", "");
        String built = hut().replace("runaway-factor: 1.85", "runaway-factor: 1.7");
        Learned.Lesson lesson = learned(design, readings(expected(built)));
        assertThat(lesson.text())
                .containsPattern("\n  runaway-factor: 1\\.[67]\\d*  # measured by speed with open leads, 2031-06-01\n")
                .contains("\n  pole-pairs: 8  # measured by frequency and speed, 2031-06-01\n");
        assertThat(DesignReader.read(lesson.text(), "hut.yaml").problems()).isEmpty();
        assertThat(lesson.values()).filteredOn(v -> v.before().isEmpty()).hasSize(2);
    }

    @Test
    void a_design_in_json_stays_json_and_gets_no_comment() throws IOException {
        String json = org.leat.file.DesignWriter.json(
                Objects.requireNonNull(DesignReader.read(hut(), "hut.yaml").design()));
        String built = hut().replace("velocity-coefficient: 0.97", "velocity-coefficient: 0.93");
        Learned.Lesson lesson = learned(json, readings(expected(built)));
        assertThat(lesson.text()).doesNotContain("#").contains("\"velocity-coefficient\"");
        new com.fasterxml.jackson.databind.ObjectMapper().readTree(lesson.text());
        assertThat(DesignReader.read(lesson.text(), "hut.json").problems()).isEmpty();
    }

    @Test
    void what_no_wheel_pipe_or_nozzle_does_stays_and_is_told_with_its_place() throws IOException {
        String read = readings(expected(hut()));
        String more = read.replaceFirst("flow: [\\d.]+ L/s", "flow: 2.45 L/s");
        assertThat(learned(hut(), more).stays())
                .filteredOn(s -> s.path().equals("/nozzles/velocity-coefficient"))
                .singleElement()
                .satisfies(s -> {
                    assertThat(s.why()).contains("more than one");
                    assertThat(s.at().line()).isGreaterThan(40);
                });
        String hz = read.replaceFirst("frequency: [\\d.]+ Hz", "frequency: 300 Hz");
        assertThat(learned(hut(), hz).stays())
                .anySatisfy(s -> assertThat(s.why()).contains("no whole number"));
        double standing = number(read, "standing-pressure");
        String none =
                read.replaceAll("running-pressure: [\\d.]+ bar", "running-pressure: " + (standing + 0.005) + " bar");
        assertThat(learned(hut(), none).stays())
                .anySatisfy(s -> assertThat(s.why()).contains("nothing is lost"));
    }

    /** Volts and amps at the battery on the smallest and on the largest set. */
    private static String battery(Expectations of, double meter, double more) {
        double small = of.value(new Channel("9 mm", LoadState.BUS, ReadingKind.BATTERY_AMPS));
        double large = of.value(new Channel("11.5 mm", LoadState.BUS, ReadingKind.BATTERY_AMPS));
        return String.format(
                Locale.ROOT,
                """
                format: 1
                day: 2031-06-01
                sets:
                  - nozzles: 9 mm
                    battery-volts: %.5f V ± %.4f V
                    battery-amps: %.4f A ± 0.05 A
                  - nozzles: 11.5 mm
                    battery-volts: %.5f V ± %.4f V
                    battery-amps: %.4f A ± 0.05 A
                """,
                of.value(new Channel("9 mm", LoadState.BUS, ReadingKind.BATTERY_VOLTS)),
                meter,
                small,
                of.value(new Channel("11.5 mm", LoadState.BUS, ReadingKind.BATTERY_VOLTS)) + more,
                meter,
                large);
    }

    @Test
    void a_batterys_resistance_comes_back_from_two_nozzle_sets() throws IOException {
        String built = hut().replace("internal-resistance: 12 mΩ", "internal-resistance: 21 mΩ");
        String read = battery(expected(built), 0.005, 0);
        Learned.Lesson stated = learned(hut(), read);
        assertThat(number(stated.text(), "internal-resistance")).isCloseTo(21, within(0.5));
        Learned.Lesson assumed = learned(hut().replace("  internal-resistance: 12 mΩ\n", ""), read);
        assertThat(number(assumed.text(), "internal-resistance")).isCloseTo(21, within(0.5));
        assertThat(assumed.text()).contains("volts and amps at the battery on two nozzle sets, 2031-06-01");
    }

    @Test
    void a_batterys_resistance_that_agrees_with_what_is_stated_stays_untold() throws IOException {
        Learned.Lesson lesson = learned(hut(), battery(expected(hut()), 0.005, 0));
        assertThat(lesson.values()).isEmpty();
        assertThat(lesson.stays()).isEmpty();
    }

    @Test
    void a_meter_too_coarse_for_a_batterys_resistance_is_told_and_nothing_is_written() throws IOException {
        String built = hut().replace("internal-resistance: 12 mΩ", "internal-resistance: 21 mΩ");
        Learned.Lesson lesson =
                learned(hut().replace("  internal-resistance: 12 mΩ\n", ""), battery(expected(built), 0.1, 0));
        assertThat(lesson.values()).isEmpty();
        assertThat(lesson.stays()).singleElement().satisfies(stays -> {
            assertThat(stays.path()).isEqualTo("/battery/internal-resistance");
            assertThat(stays.why()).contains("to no better than ± ").contains("read the volts finer");
        });
    }

    @Test
    void a_battery_that_moved_between_two_readings_teaches_nothing() throws IOException {
        assertThat(learned(hut(), battery(expected(hut()), 0.005, -0.2)).stays())
                .singleElement()
                .satisfies(s -> assertThat(s.why()).contains("no more volts at the poles"));
        assertThat(learned(hut(), battery(expected(hut()), 0.005, 0.9)).stays())
                .singleElement()
                .satisfies(s -> assertThat(s.why()).contains("times what is stated"));
    }
}
