package org.leat.pack.plausibility;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.leat.check.Checker;
import org.leat.check.Finding;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;

/** Numbers of a sound plant with one of them made odd: the odd one is named, and it alone. */
class SizesTest {

    private static final Path SOUND = Path.of("../hydro-examples/designs/rowan-ghyll.yaml");
    private static final Checker CHECKER = Checker.of(List.of(new BuiltInPack()));

    private static List<Finding> odd(String from, String to) throws IOException {
        String text = Files.readString(SOUND);
        assertThat(text).contains(from);
        var reading = DesignReader.read(text.replace(from, to.replace("\\n", "\n")), "odd.yaml");
        assertThat(reading.problems()).isEmpty();
        return CHECKER.check(reading).findings().stream()
                .filter(finding -> finding.outcome().rule().equals("plausibility/sizes"))
                .toList();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "contraction-coefficient: 1.0 | contraction-coefficient: 0.55 | /nozzles/contraction-coefficient",
                "velocity-coefficient: 0.97 | velocity-coefficient: 0.88 | /nozzles/velocity-coefficient",
                "roughness: 0.02 mm }\\n      length: 108 m | roughness: 4 mm }\\n      length: 108 m"
                        + " | /penstock/sections[run]/pipe/roughness",
                "making: cast | making: printed\\n    strength: 200 MPa | /runner/buckets/strength",
                "  heated: true |   heated: true\\n  ventilation: { opening-area: 0.7 m² } | /battery/ventilation/opening-area",
                "  heated: true |   heated: true\\n  ventilation: { spark-distance: 30 m } | /battery/ventilation/spark-distance",
                "runaway-factor: 1.85 | runaway-factor: 1.4 | /runner/runaway-factor",
                "measured-efficiency: 78 % | measured-efficiency: 20 % | /runner/measured-efficiency",
                "power: 18 W, speed | power: 1.8 kW, speed | /alternator/no-load-loss/power",
                "junction-limit: 150 °C | junction-limit: 210 °C | /rectifier/junction-limit",
                "charge-current-limit: 100 A | charge-current-limit: 410 A | /battery/charge-current-limit",
                "charge-voltage-limit: 29.2 V | charge-voltage-limit: 31 V | /battery/charge-voltage-limit",
            })
    void one_odd_number_is_named_and_no_other(String from, String to, String path) throws IOException {
        assertThat(odd(from.replace("\\n", "\n"), to))
                .singleElement()
                .satisfies(finding -> assertThat(finding.outcome().path()).isEqualTo(path));
    }

    @Test
    void metal_may_be_as_strong_as_no_print_is() throws IOException {
        assertThat(odd("making: cast", "making: cast\n    strength: 200 MPa"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.outcome().path()).isEqualTo("/"));
    }

    @Test
    void a_ratio_of_two_fields_says_nothing_of_how_one_of_them_is_meant() throws IOException {
        assertThat(odd("charge-current-limit: 100 A", "charge-current-limit: 1000 A"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.waysOut()).isEmpty());
        assertThat(odd("power: 18 W, speed", "power: 18 kW, speed"))
                .singleElement()
                .satisfies(finding -> assertThat(finding.waysOut()).isNotEmpty());
    }
}
