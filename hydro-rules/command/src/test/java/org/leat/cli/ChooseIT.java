package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code leat choose} as it is met: the real jar, real files, real exit codes. */
class ChooseIT {

    private static final Path EXAMPLES =
            Path.of("..", "..", "hydro-examples").toAbsolutePath().normalize();

    /** Few sets, so that each run is short. */
    private static final String LIST = """
            format: 1
            currency: CHF
            choices:
              - name: pipe
                at: /penstock/sections[run]/pipe
                fields: [ outside-diameter, sdr ]
                parts:
                  - { name: thin, price: 190.55, sets: { outside-diameter: 50 mm, sdr: 17 } }
                  - { name: as before, price: 285, sets: { outside-diameter: 63 mm, sdr: 17 } }
                  - { name: wide, price: 400, sets: { outside-diameter: 75 mm, sdr: 17 } }
              - name: nozzles
                at: /nozzles
                fields: [ open, available ]
                parts:
                  - { name: one, price: 14, sets: { open: 11 mm, available: 11 mm } }
                  - { name: three, price: 36, sets: { open: [ 11 mm ], available: [ 9 mm, 11 mm, 12 mm ] } }
            """;

    @TempDir
    private Path folder;

    private RealJar.Ran choose(String... more) throws Exception {
        Files.writeString(folder.resolve("list.yaml"), LIST);
        Files.copy(
                EXAMPLES.resolve("designs/rowan-ghyll.yaml"),
                folder.resolve("hut.yaml"),
                StandardCopyOption.REPLACE_EXISTING);
        String[] arguments = new String[4 + more.length];
        arguments[0] = "choose";
        arguments[1] = "hut.yaml";
        arguments[2] = "--prices";
        arguments[3] = "list.yaml";
        System.arraycopy(more, 0, arguments, 4, more.length);
        return new RealJar(folder).run(arguments);
    }

    @Test
    void the_sets_worth_choosing_from_fit_on_one_screen() throws Exception {
        RealJar.Ran ran = choose();
        assertThat(ran.code()).isZero();
        assertThat(ran.err()).isEmpty();
        assertThat(ran.out())
                .startsWith("hut.yaml: parts from list.yaml\n")
                .contains("6 sets.", "204.55", "CHF", "can maim");
        assertThat(ran.out().lines().count()).isLessThan(45);
        assertThat(ran.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void for_a_program_every_set_has_its_parts_what_they_set_and_its_warnings() throws Exception {
        JsonNode front = new ObjectMapper()
                .readTree(choose("--format", "json", "--threads", "1").out());
        assertThat(front.get("sets").asInt()).isEqualTo(6);
        assertThat(front.get("end").asText()).isEqualTo("whole");
        double price = 0;
        double energy = 0;
        for (JsonNode point : front.get("points")) {
            assertThat(point.get("price").asDouble()).isGreaterThan(price);
            assertThat(point.get("parts")).hasSize(2);
            assertThat(point.get("sets")).hasSize(4);
            price = point.get("price").asDouble();
            energy = Math.max(energy, point.get("energy").asDouble());
        }
        assertThat(front.at("/points/0/warnings/0/rule").asText()).isEqualTo("penstock/friction-share");
        assertThat(front.at("/points/0/sets/0/path").asText())
                .isEqualTo("/penstock/sections[run]/pipe/outside-diameter");
        assertThat(front.at("/points/0/sets/0/value").asText()).isEqualTo("50 mm");
        assertThat(energy).isBetween(1e10, 3e10);
    }

    @Test
    void the_set_asked_for_is_written_as_a_new_design_and_nothing_but_its_values_changes() throws Exception {
        RealJar.Ran ran = choose("--set", "1", "--write", "new.yaml");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("pipe: thin", "190.55", "penstock/friction-share");
        List<String> before = Files.readAllLines(folder.resolve("hut.yaml"));
        List<String> after = Files.readAllLines(folder.resolve("new.yaml"));
        assertThat(after).hasSameSizeAs(before);
        int changed = 0;
        for (int i = 0; i < before.size(); i++) {
            changed += before.get(i).equals(after.get(i)) ? 0 : 1;
        }
        assertThat(changed).isEqualTo(2); // the pipe, and the nozzles at hand
        assertThat(String.join("\n", after)).contains("outside-diameter: 50 mm, sdr: 17", "# A sound plant");
        RealJar.Ran again = choose("--set", "1", "--write", "new.yaml");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("new.yaml is there already");
    }

    @Test
    void what_is_wrong_with_a_call_or_a_price_list_is_told_and_nothing_is_searched() throws Exception {
        assertThat(choose("--write", "x.yaml").code()).isEqualTo(2);
        assertThat(choose("--threads", "0").code()).isEqualTo(2);
        Files.writeString(
                folder.resolve("bad.yaml"), LIST.replace("price: 14, ", "").replace("sections[run]", "sections[rum]"));
        RealJar.Ran ran = new RealJar(folder).run("choose", "hut.yaml", "--prices", "bad.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("bad.yaml:15:9: /choices[nozzles]/parts[one]/price: missing");
        RealJar.Ran none = new RealJar(folder).run("choose", "hut.yaml", "--prices", "none.yaml");
        assertThat(none.code()).isEqualTo(3);
        assertThat(none.err()).contains("a file that exists");
    }

    @Test
    void what_mends_a_design_for_least_money_is_told_and_written() throws Exception {
        RealJar.Ran ran = new RealJar(folder)
                .run(
                        "choose",
                        EXAMPLES.resolve("designs/orchard-sluice.yaml").toString(),
                        "--prices",
                        EXAMPLES.resolve("prices/orchard-sluice.yaml").toString(),
                        "--mend",
                        "--write",
                        "mended.yaml");
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("pipe: 63 mm SDR 17", "together                    105", "no cheaper set");
        assertThat(ran.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        assertThat(Files.readString(folder.resolve("mended.yaml")))
                .contains("outside-diameter: 63 mm, sdr: 17", "# A wasteful plant", "float-voltage: 13.4 V");
    }
}
