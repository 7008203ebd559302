package org.leat.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.season.SeriesReading.SeriesFault;

class SeriesReaderTest {

    private static final String SERVICE =
            "# a comment\nagency_cd\tsite_no\tdatetime\t01_00060_00003\t01_00060_00003_cd\n"
                    + "5s\t15s\t20d\t14n\t10s\n";

    private static FlowSeries series(String text) {
        SeriesReading read = SeriesReader.read(text);
        assertThat(read.faults()).isEmpty();
        return Objects.requireNonNull(read.series());
    }

    private static List<SeriesFault> faults(String text) {
        SeriesReading read = SeriesReader.read(text);
        assertThat(read.series()).isNull();
        return read.faults();
    }

    @ParameterizedTest
    @CsvSource({"flow_l_s,0.002", "flow_m3_s,2", "flow (L/s),0.002", "Flow m³/s,2", "flow_ft3_s,0.056633693184"})
    void the_head_line_names_the_unit(String head, double expected) {
        assertThat(series("date," + head + "\n2024-02-28,2\n").flow(0)).isCloseTo(expected, within(1e-15));
    }

    @Test
    void days_need_no_order_and_a_leap_day_is_a_day() {
        FlowSeries series = series("date,flow_l_s\n2024-03-01,3\n2024-02-28,1\n2024-02-29,2\n");
        assertThat(series.days()).isEqualTo(3);
        assertThat(series.date(1)).isEqualTo(LocalDate.of(2024, 2, 29));
        assertThat(series.flows()).containsExactly(0.001, 0.002, 0.003);
    }

    @Test
    void a_short_gap_is_filled_straight_and_told() {
        FlowSeries series = series("date,flow_l_s\n2024-01-01,1\n2024-01-04,4\n");
        assertThat(series.flows()).containsExactly(0.001, 0.002, 0.003, 0.004);
        assertThat(series.bridged()).containsExactly(new FlowSeries.Gap(LocalDate.of(2024, 1, 2), 2));
    }

    @Test
    void a_gap_as_long_as_is_filled_is_filled_and_a_day_more_is_not() {
        String text = "date,flow_l_s\n2024-01-01,1\n2024-01-05,4\n";
        assertThat(SeriesReader.read(text, 3).series()).isNotNull();
        assertThat(SeriesReader.read(text, 2).faults())
                .extracting(SeriesFault::what)
                .containsExactly("no flow from 2024-01-02 to 2024-01-04: 3 days, more than the 2 that are filled");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2024-01-01,1;2024-01-01,2|3|the day 2024-01-01 again",
                "2024-01-01,-1|2|a flow of -1: below nothing",
                "2024-02-30,1|2|\"2024-02-30\" is no day; write it as 2024-02-29",
                "01.02.2024,1|2|\"01.02.2024\" is no day; write it as 2024-02-29",
                "2024-01-01,\"0,35\"|2|\"0,35\": write a decimal point, 0.35",
                "2024-01-01,much|2|\"much\" is no flow",
                "2024-01-01,1e300|2|\"1e300\" is no flow",
                "2024-01-01,1d|2|\"1d\" is no flow",
                "2024-01-01|2|1 columns, fewer than the head line names",
            })
    void what_is_wrong_is_told_with_its_line(String rows, int line, String what) {
        assertThat(faults("date,flow_l_s\n" + rows.replace(';', '\n') + "\n")).contains(new SeriesFault(line, what));
    }

    @Test
    void a_head_line_without_unit_or_columns_is_refused_with_the_words_to_write() {
        assertThat(faults("date,flow\n2024-01-01,1\n"))
                .containsExactly(new SeriesFault(1, "\"flow\" has no unit; write flow_l_s, flow_m3_s or flow_ft3_s"));
        assertThat(faults("when,flow_l_s\n2024-01-01,1\n"))
                .containsExactly(new SeriesFault(1, "the head line names no date; write date,flow_l_s"));
        assertThat(faults("")).containsExactly(new SeriesFault(1, "no day with a flow"));
        assertThat(faults("date,flow_l_s\n")).containsExactly(new SeriesFault(1, "no day with a flow"));
    }

    @Test
    void spoilt_days_of_a_service_are_gaps_and_estimates_are_counted() {
        FlowSeries series =
                series(SERVICE + "USGS\t1\t2024-01-01\t10\tA\nUSGS\t1\t2024-01-02\tIce\tA\nUSGS\t1\t2024-01-03\t\tP\n"
                        + "USGS\t1\t2024-01-04\t40\tA:e\nUSGS\t1\t2024-01-05\tEqp\tP\nUSGS\t1\t2024-01-06\t60\tP\n");
        assertThat(series.days()).isEqualTo(6);
        assertThat(series.bridged()).hasSize(2);
        assertThat(series.estimated()).isEqualTo(1);
        assertThat(series.flow(1)).isEqualTo(20 * 0.3048 * 0.3048 * 0.3048, within(1e-12));
    }

    @Test
    void a_bad_file_has_a_bounded_number_of_faults_and_never_throws() {
        assertThat(faults("date,flow_l_s\n" + "x,y\n".repeat(5000))).hasSizeLessThanOrEqualTo(40);
        assertThat(faults("date,flow_l_s\n2024-01-01,\"1\n")).isNotEmpty();
        assertThat(faults("\u0000\uFFFE\n,,,\n")).isNotEmpty();
    }
}
