package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.file.DesignReader;

/** One thing of a sound plant made more dangerous, or left out: what judges it must not pass any more. */
class DangerousChangeTest {

    private static final Path SOUND = Path.of("../hydro-examples/designs/rowan-ghyll.yaml");

    private final Checker checker = Checker.of(List.of(new BuiltInPack()));

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            regulator/kind-for-hydro | /regulator/kind | FAIL | kind: shunt > kind: series; side: bridge > side: battery
            regulator/kind-for-hydro | /regulator/kind | OPEN | kind: shunt > kind: none; trigger-voltage: 28 V >
            cable/ampacity | /cables[2]/conductor/area | OPEN | efficiency: 90 % >
            penstock/surge-pressure | /penstock/sections[run]/pipe | FAIL | sdr: 17, > sdr: 41, pressure-rating: 16 bar,
            penstock/static-pressure | /penstock/sections[run]/pipe | OPEN | highest-wall-temperature: 20 °C >; sunlight: buried >
            protection/short-circuit-brake | /safeguards/short-circuit-brake | FAIL | 0.4 mH > 0.001 mH; 0.125 Ω > 3 Ω; brake: false > brake: true
            """)
    void what_judges_it_passes_no_more(String rule, String path, Kind expected, String changes) throws IOException {
        String text = sound();
        assertThat(outcome(text, rule, path).kind()).isIn(Kind.PASS, Kind.NOT_APPLICABLE);
        for (String change : changes.split(";", -1)) {
            String[] fromTo = change.split(">", -1);
            assertThat(text).contains(fromTo[0].strip());
            text = text.replace(fromTo[0].strip(), fromTo[1].strip());
        }
        assertThat(outcome(text, rule, path).kind()).isEqualTo(expected);
    }

    @Test
    void a_drier_stream_lowers_no_voltage_of_a_runaway() throws IOException {
        String dry = sound().replace("kept-in-stream: 1.2 L/s", "kept-in-stream: 40 L/s");
        assertThat(value(dry)).isEqualTo(value(sound()));
    }

    @Test
    void a_lower_end_stated_above_the_nozzles_lowers_no_standing_pressure() throws IOException {
        String raised = sound().replace("to-elevation: 0 m", "to-elevation: 20 m");
        assertThat(outcome(raised, "penstock/static-pressure", "/penstock/sections[run]/pipe")
                        .comparison()
                        .value())
                .isEqualTo(outcome(sound(), "penstock/static-pressure", "/penstock/sections[run]/pipe")
                        .comparison()
                        .value());
    }

    private double value(String text) {
        return outcome(text, "bus/overvoltage", "/inverter/input-voltage-limit")
                .comparison()
                .value();
    }

    private Outcome outcome(String text, String rule, String path) {
        Report report = checker.check(DesignReader.read(text, "changed"));
        assertThat(report.problems()).isEmpty();
        return report.findings().stream()
                .map(finding -> finding.outcome())
                .filter(outcome -> outcome.rule().equals(rule) && outcome.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static String sound() throws IOException {
        return Files.readString(SOUND, StandardCharsets.UTF_8);
    }
}
