package org.leat.report;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.leat.check.Checker;
import org.leat.check.Examined;
import org.leat.check.Rule;
import org.leat.check.RulePack;
import org.leat.choice.Overview;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.pack.BuiltInPack;
import org.leat.report.TextWriter.Colours;
import org.leat.sure.Sureness;

/** How sure verdicts are, in text and JSON, by a few rules over a demo. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
class SureTextTest {

    private static final class Few implements RulePack {
        @Override
        public String name() {
            return "few";
        }

        @Override
        public List<Rule> rules() {
            Set<String> few = Set.of("runner/speed-ratio", "intake/submergence", "penstock/static-pressure");
            return new BuiltInPack()
                    .rules().stream()
                            .filter(rule -> few.contains(rule.card().id()))
                            .toList();
        }
    }

    private final Checker checker = Checker.of(List.of(new Few()));
    private final Reading reading = DesignReader.read(Path.of("../hydro-examples/designs/orchard-sluice.yaml"));
    private final Examined examined = checker.examined(reading);
    private final Overview overview = Overview.of(examined, checker.rulebook());
    private Sureness sureness = new Sureness(List.of(), List.of(), 0, OptionalDouble.empty(), 0);

    @BeforeAll
    void study() {
        sureness = Sureness.of(examined);
    }

    private String text() throws IOException {
        StringBuilder out = new StringBuilder();
        TextWriter writer = new TextWriter(checker.rulebook(), out, Colours.NONE, 100, false);
        writer.add(examined.report(), reading, overview, sureness);
        return out.toString();
    }

    @Test
    void an_open_question_is_told_as_open_with_its_probability_and_the_input_that_matters_most() throws IOException {
        assertThat(text().replaceAll("\\s+", " "))
                .contains(
                        "How sure Likely fine (under 0.3 % to fail) in 1024 plants, errors alone counted, as far as it was judged.")
                .contains(
                        "runner/speed-ratio at runner.pitch-diameter, running/14 mm (warning, open): likely fine (3.2 % to"
                                + " fail); 0.491, 0.4 to 0.5, u 0.011; most by runner.measured-efficiency (56 %)")
                .contains("running/16 mm (warning, fails): likely fails (96 % to fail)");
    }

    @Test
    void a_program_gets_the_same_and_the_schema_holds() throws IOException {
        StringBuilder out = new StringBuilder();
        JsonWriter writer = new JsonWriter(checker.rulebook(), out);
        writer.add(examined.report(), reading, overview, sureness);
        writer.end();
        ObjectMapper mapper = new ObjectMapper();
        assertThat(SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                        .getSchema(mapper.readTree(ReportSchema.json()))
                        .validate(out.toString(), InputFormat.JSON))
                .isEmpty();
        JsonNode told = mapper.readTree(out.toString()).get("designs").get(0).get("howSure");
        assertThat(told.get("plantsSampled").asInt()).isEqualTo(1024);
        assertThat(told.get("verdicts")).hasSameSizeAs(sureness.verdicts());
        assertThat(told.get("inputs").get(0).get("path").asText()).isEqualTo("/site/gross-head");
    }
}
