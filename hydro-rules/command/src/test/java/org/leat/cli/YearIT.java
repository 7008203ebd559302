package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.withinPercentage;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code leat year} as it is met: the real jar, real files, real exit codes. */
class YearIT {

    private static final Path DESIGNS =
            Path.of("..", "..", "hydro-examples", "designs").toAbsolutePath().normalize();
    private static final Path STREAM = Path.of("..", "..", "hydro-examples", "streams", "rowan-ghyll.csv")
            .toAbsolutePath()
            .normalize();

    @TempDir
    private Path folder;

    private RealJar.Ran leat(String... arguments) throws Exception {
        return new RealJar(folder).run(arguments);
    }

    private static String design(String name) {
        return DESIGNS.resolve(name + ".yaml").toString();
    }

    @Test
    void months_add_up_to_the_year_and_visits_save_what_is_missing() throws Exception {
        RealJar.Ran weekly = leat("year", design("rowan-ghyll"), "--flow", STREAM.toString(), "--format", "json");
        RealJar.Ran seldom =
                leat("year", design("rowan-ghyll"), "--flow", STREAM.toString(), "--format", "json", "--visit", "45");
        assertThat(weekly.code()).isZero();
        JsonNode year = new ObjectMapper().readTree(weekly.out());
        for (String what : List.of("made", "used", "dumped", "missing")) {
            double sum = 0;
            for (JsonNode month : year.get("months")) {
                sum += month.get(what).asDouble();
            }
            assertThat(sum).isCloseTo(year.get(what).asDouble(), withinPercentage(1e-6));
        }
        assertThat(year.get("months")).hasSize(12);
        assertThat(year.get("filled").toString()).isEqualTo("[{\"first\":\"2023-11-04\",\"days\":2}]");
        assertThat(year.get("missing").asDouble()).isPositive();
        JsonNode visited = new ObjectMapper().readTree(seldom.out());
        assertThat(visited.get("missing").asDouble())
                .isGreaterThan(year.get("missing").asDouble());
        assertThat(visited.get("changes").asInt())
                .isLessThan(year.get("changes").asInt());
    }

    @Test
    void a_design_without_a_series_is_run_through_its_own_stream_and_says_what_that_is_worth() throws Exception {
        RealJar.Ran ran = leat("year", design("rowan-ghyll"));
        assertThat(ran.code()).isZero();
        assertThat(ran.out()).contains("the order of its days is not known").contains("can maim");
        assertThat(ran.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void what_is_missing_in_the_design_is_named_and_nothing_is_run() throws Exception {
        RealJar.Ran ran = leat("year", design("tannery-yard"));
        assertThat(ran.code()).isEqualTo(4);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).isEqualTo("leat: no year without inverter.efficiency: what the loads take in a day\n");
    }

    @Test
    void a_bad_series_is_told_with_its_lines() throws Exception {
        Path bad = Files.writeString(
                folder.resolve("bad.csv"),
                "date,flow_l_s\n2024-01-01,1\n2024-01-01,2\n2024-01-02,\"0,5\"\n2024-01-03,-1\n");
        RealJar.Ran ran = leat("year", design("rowan-ghyll"), "--flow", "bad.csv");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.err())
                .isEqualTo("bad.csv:3: the day 2024-01-01 again\n"
                        + "bad.csv:4: \"0,5\": write a decimal point, 0.5\n"
                        + "bad.csv:5: a flow of -1: below nothing\n");
        assertThat(bad).exists();
        assertThat(leat("year", design("rowan-ghyll"), "--flow", "none.csv").code())
                .isEqualTo(3);
        assertThat(leat("year", "none.yaml").code()).isEqualTo(3);
        assertThat(leat("year", design("rowan-ghyll"), "--visit", "0").code()).isEqualTo(2);
        assertThat(leat("year", design("rowan-ghyll"), "--format", "sarif").code())
                .isEqualTo(2);
    }
}
