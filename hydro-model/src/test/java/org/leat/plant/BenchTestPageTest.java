package org.leat.plant;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Assumption;

/** The numbers of docs/bench-test.md are what the program makes of its readings. */
class BenchTestPageTest {

    private static final Path PAGE = Path.of("../docs/bench-test.md");

    private static String readings() throws IOException {
        String page = Files.readString(PAGE);
        return page.substring(page.indexOf("```yaml") + 8, page.indexOf("```\n", page.indexOf("```yaml") + 8));
    }

    private static Map<String, String> told() throws IOException {
        Map<String, String> rows = new LinkedHashMap<>();
        List<String> lines = Files.readAllLines(PAGE);
        for (String line : lines.subList(lines.indexOf("| number | value |") + 2, lines.size())) {
            if (!line.startsWith("|")) {
                break;
            }
            String[] cells = line.split("\\|");
            rows.put(cells[1].strip(), cells[2].strip());
        }
        return rows;
    }

    @Test
    void what_the_page_says_is_what_the_program_computes() throws IOException {
        String least = Plants.LEAST;
        String design = least.substring(0, least.indexOf("alternator:"))
                + readings()
                + least.substring(least.indexOf("battery:"));
        Plant plant = Plant.of(Plants.read(design));
        AlternatorNumbers a = plant.numbers().alternator();
        assertThat(told())
                .containsExactly(
                        Map.entry("flux linkage", show("%.5f V·s", a.fluxLinkage())),
                        Map.entry("phase resistance at 20 °C", show("%.4f Ω", a.phaseResistanceCold())),
                        Map.entry("phase inductance", show("%.3f mH", a.phaseInductance() * 1e3)),
                        Map.entry("constant torque of iron and friction", show("%.4f N·m", a.noLoadTorque())),
                        Map.entry("torque that grows with speed", show("%.6f N·m·s", a.noLoadTorquePerSpeed())));
        assertThat(plant.assumptions())
                .extracting(Assumption::path)
                .as("nothing that the running hangs on is assumed of the alternator")
                .filteredOn(path -> path.startsWith("/alternator"))
                .containsOnly("/alternator/magnet-grade");
    }

    private static String show(String format, double value) {
        return String.format(Locale.ROOT, format, value);
    }
}
