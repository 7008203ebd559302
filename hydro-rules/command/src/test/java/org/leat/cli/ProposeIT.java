package org.leat.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** {@code leat propose} as it is met: the real jar, real files, real exit codes. */
class ProposeIT {

    private static final Path SURVEYS =
            Path.of("..", "..", "hydro-examples", "surveys").toAbsolutePath().normalize();

    private static final String SMALL = """
            format: 1
            name: "Fox's Leap, upper"
            site:
              gross-head: 60 m
              stream: { flow: 1.2 L/s } # by bucket, a dry week
            pipe-length: 240 m
            loads:
              - { name: lights, power: 9 W, count: 4, hours-per-day: 5 }
            """;

    @TempDir
    private Path folder;

    private RealJar.Ran leat(String... arguments) throws Exception {
        return new RealJar(folder).run(arguments);
    }

    @Test
    void what_is_proposed_is_written_as_files_that_check_accepts_and_nothing_is_replaced() throws Exception {
        Files.writeString(folder.resolve("place.yaml"), SMALL);
        RealJar.Ran ran = leat("propose", "place.yaml", "--write", "plants", "--format", "json");
        assertThat(ran.err()).isEmpty();
        assertThat(ran.code()).isZero();
        JsonNode answer = new ObjectMapper().readTree(ran.out());
        assertThat(answer.get("suits").asBoolean()).isTrue();
        JsonNode proposals = answer.get("proposals");
        assertThat(proposals.size()).isBetween(2, 4);
        double most = proposals.get(0).get("meanPower").asDouble();
        assertThat(proposals.get(0).get("merits").toString()).contains("GIVES_MOST");
        for (JsonNode proposal : proposals) {
            assertThat(proposal.get("errors").asInt()).isZero();
            assertThat(proposal.get("meanPower").asDouble()).isPositive().isLessThanOrEqualTo(most);
            assertThat(folder.resolve(proposal.get("file").asText()))
                    .hasContent(proposal.get("design").asText());
        }
        assertThat(proposals.get(0).get("file").asText()).isEqualTo("plants/fox-s-leap-upper-1.yaml");
        RealJar.Ran checked = leat("check", "plants");
        assertThat(checked.code()).isZero();
        assertThat(checked.out()).contains(proposals.size() + " files checked, 0 errors");
        RealJar.Ran again = leat("propose", "place.yaml", "--write", "plants");
        assertThat(again.code()).isEqualTo(2);
        assertThat(again.err()).contains("fox-s-leap-upper-1.yaml is there already; nothing is replaced");
    }

    @Test
    void a_wrong_place_is_told_with_its_reasons_and_exit_code_one() throws Exception {
        RealJar.Ran ran = leat("propose", SURVEYS.resolve("marsh-sluice.yaml").toString());
        assertThat(ran.code()).isEqualTo(1);
        assertThat(ran.out())
                .startsWith("Marsh sluice: a plant of this kind is the wrong one here\n")
                .contains("Too little fall")
                .contains("Too little power")
                .contains("can maim");
        assertThat(ran.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
    }

    @Test
    void a_survey_that_cannot_be_read_is_told_with_its_places() throws Exception {
        Files.writeString(folder.resolve("place.yaml"), SMALL.replace("pipe-length: 240 m", "pipe-length: 40 m"));
        RealJar.Ran ran = leat("propose", "place.yaml");
        assertThat(ran.code()).isEqualTo(3);
        assertThat(ran.out()).isEmpty();
        assertThat(ran.err()).startsWith("place.yaml:6:14: /pipe-length: ").contains("no less than the fall");
    }
}
