package org.leat.readings;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Random;
import java.util.function.IntToDoubleFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.file.Filled;
import org.leat.file.RecordReader;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;

class LogStudyTest {

    private static final Plant PLANT = DemoPlants.of("rowan-ghyll");
    private static final FaultTable TABLE = FaultTable.of(Expectations.of(PLANT));
    private static final LocalDate FIRST = LocalDate.of(2031, 1, 1);

    /** A table of one reading a day on the set as built, the wheel some per cent off its drawing. */
    static String log(FaultKind kind, IntToDoubleFunction size, int days, int aDay) {
        Random random = new Random(5);
        StringBuilder text =
                new StringBuilder("day,running-pressure [bar],speed [rpm],bridge-volts [V],battery-volts [V],"
                        + "battery-amps [A],flow [L/s]\n");
        Plant built = PLANT.withRunner(PLANT.numbers()
                .runner()
                .withBucketEfficiency(PLANT.numbers().runner().bucketEfficiency() * 0.97));
        FaultyPlants faulty = new FaultyPlants(built);
        NozzleGroup set = PLANT.numbers().nozzles().asBuilt();
        for (int day = 0; day < days; day++) {
            double here = size.applyAsDouble(day);
            double[] v = ReadingModel.of(faulty.of(here > 0 ? kind : FaultKind.NOTHING, here, set), set);
            for (int hour = 0; hour < aDay; hour++) {
                text.append(FIRST.plusDays(day));
                for (ReadingKind what : List.of(
                        ReadingKind.RUNNING_PRESSURE,
                        ReadingKind.SPEED,
                        ReadingKind.BRIDGE_VOLTS,
                        ReadingKind.BATTERY_VOLTS,
                        ReadingKind.BATTERY_AMPS,
                        ReadingKind.FLOW)) {
                    double unit = switch (what) {
                        case RUNNING_PRESSURE -> 1e5;
                        case SPEED -> Math.PI / 30;
                        case FLOW -> 1e-3;
                        default -> 1;
                    };
                    double value = v[Channel.slot(LoadState.BUS, what)];
                    double noise = 0.4 * what.usualUncertainty(value) * random.nextGaussian();
                    text.append(String.format(Locale.ROOT, ",%.4f", (value + noise) / unit));
                }
                text.append('\n');
            }
        }
        return text.toString();
    }

    private static PlantLog read(Path folder, String text) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, text);
        Filled<PlantLog> read = RecordReader.readTable(PlantLog.class, "entries", file, "log.csv");
        return Objects.requireNonNull(read.record(), () -> read.problems().toString());
    }

    private static LogStudy.Told told(Path folder, String text) throws IOException {
        return LogStudy.of(TABLE, read(folder, text)).orElseThrow();
    }

    @Test
    void a_nozzle_that_wears_is_named_with_its_drift_and_the_day_of_its_limit(@TempDir Path folder) throws IOException {
        // 0.02 % of its bore a day: 5 % after 250 days
        LogStudy.Told told = told(folder, log(FaultKind.NOZZLE_WORN, day -> 0.0002 * day, 150, 1));
        Drift drift = Objects.requireNonNull(told.growing());
        assertThat(drift.kind()).isEqualTo(FaultKind.NOZZLE_WORN);
        assertThat(drift.perDay()).isBetween(0.00016, 0.00024);
        assertThat(drift.met()).isBetween(FIRST.plusDays(220), FIRST.plusDays(290));
        assertThat(drift.earliest()).isBefore(drift.met());
    }

    @Test
    void a_plant_that_stays_as_it_is_drifts_nowhere(@TempDir Path folder) throws IOException {
        LogStudy.Told told = told(folder, log(FaultKind.NOTHING, day -> 0, 120, 1));
        assertThat(told.growing()).isNull();
        assertThat(told.nextVisit()).isEqualTo(FIRST.plusDays(119 + 30));
    }

    @Test
    void a_screen_that_is_raked_begins_anew(@TempDir Path folder) throws IOException {
        LogStudy.Told told = told(folder, log(FaultKind.SCREEN_BLOCKED, day -> 0.003 * (day % 30), 85, 1));
        Drift screen = told.drifts().stream()
                .filter(drift -> drift.kind() == FaultKind.SCREEN_BLOCKED)
                .findFirst()
                .orElseThrow();
        assertThat(screen.now()).isBetween(0.055, 0.09);
        assertThat(screen.perDay()).isBetween(0.0024, 0.0036);
        assertThat(told.nextVisit()).isBefore(FIRST.plusDays(84 + 20));
    }

    @Test
    void a_wrong_line_of_a_table_is_told_with_its_place(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, """
                # by the logger
                day;nozzles;speed [rpm];battery-amps
                2031-01-01;11 mm;1165;14.7 A
                2031-01-02;11 mm;fast;14.7 A
                """);
        Filled<PlantLog> read = RecordReader.readTable(PlantLog.class, "entries", file, "log.csv");
        assertThat(read.record()).isNull();
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.position().line()).isEqualTo(4);
            assertThat(problem.position().column()).isEqualTo(18);
            assertThat(problem.path()).isEqualTo("/entries[1]/speed");
        });
    }

    @Test
    void a_decimal_comma_in_a_table_parted_by_commas_is_named(@TempDir Path folder) throws IOException {
        Path file = folder.resolve("log.csv");
        Files.writeString(file, """
                day,running-pressure [bar],speed [rpm],battery-amps [A]
                2031-01-01,2.43,1671,4.27
                2031-01-02,2,35,1660,4.10
                """);
        Filled<PlantLog> read = RecordReader.readTable(PlantLog.class, "entries", file, "log.csv");
        assertThat(read.problems()).singleElement().satisfies(problem -> {
            assertThat(problem.position().line()).isEqualTo(3);
            assertThat(problem.expected()).contains("with a point, 2.35 and not 2,35");
        });
    }

    /** Prints how long a year of hourly readings takes: no test, a measurement. */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createTempDirectory("log");
        String text = log(FaultKind.NOZZLE_WORN, day -> 0.0002 * day, 417, 24);
        for (int i = 0; i < 4; i++) {
            long start = System.nanoTime();
            PlantLog log = read(folder, text);
            long middle = System.nanoTime();
            LogStudy.Told told = LogStudy.of(TABLE, log).orElseThrow();
            System.out.printf(
                    Locale.ROOT,
                    "%d rows, read %.0f ms, told %.0f ms, %s%n",
                    log.entries().size(),
                    (middle - start) / 1e6,
                    (System.nanoTime() - middle) / 1e6,
                    Objects.requireNonNull(told.growing()).kind());
        }
    }
}
