package org.leat.docs;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.leat.check.Checker;
import org.leat.check.RuleInForce;
import org.leat.file.ProblemText;
import org.leat.pack.BuiltInPack;
import org.leat.settings.SettingsFiles;

class SettingsPageTest {

    private static final Path PAGE = Path.of("..", "docs", "settings.md");
    private static final Path SCHEMA = Path.of("..", "docs", "settings-file.schema.json");

    @TempDir
    Path folder;

    @Test
    void the_schema_in_the_docs_is_the_one_the_program_prints() throws IOException {
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(SCHEMA, SettingsFiles.schema());
        }
        assertThat(Files.readString(SCHEMA)).isEqualTo(SettingsFiles.schema());
    }

    @Test
    void the_page_tells_every_field_of_the_schema() throws IOException {
        JsonNode schema = new ObjectMapper().readTree(SettingsFiles.schema());
        String page = Files.readString(PAGE);
        schema.findValues("properties")
                .forEach(fields -> fields.fieldNames()
                        .forEachRemaining(f -> assertThat(page).contains("`" + f + "`")));
    }

    @Test
    void every_example_of_the_page_is_valid_by_the_schema_and_by_the_reader() throws IOException {
        Schema schema = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
                .getSchema(SettingsFiles.schema());
        var cards = Checker.of(List.of(new BuiltInPack())).rulebook().rules().stream()
                .map(RuleInForce::card)
                .toList();
        Files.writeString(folder.resolve("firm.yaml"), "format: 1\n");
        Matcher blocks =
                Pattern.compile("```yaml\n(format: .*?)```", Pattern.DOTALL).matcher(Files.readString(PAGE));
        int count = 0;
        while (blocks.find()) {
            count++;
            assertThat(schema.validate(blocks.group(1), InputFormat.YAML)).isEmpty();
            Path file = Files.writeString(folder.resolve("example.yaml"), blocks.group(1));
            assertThat(SettingsFiles.read(file).settings(cards).problems())
                    .extracting(ProblemText::line)
                    .isEmpty();
        }
        assertThat(count).isPositive();
    }
}
