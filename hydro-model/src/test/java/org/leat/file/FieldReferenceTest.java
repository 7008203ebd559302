package org.leat.file;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

class FieldReferenceTest {

    private static final Path FILE = Path.of("..", "docs", "design-file.md");
    private static final String BEGIN = "<!-- made from the records: begin -->\n";
    private static final String END = "<!-- made from the records: end -->\n";

    @Test
    void the_field_reference_in_the_docs_is_the_one_made_from_the_records() throws IOException {
        String page = Files.readString(FILE);
        int from = page.indexOf(BEGIN) + BEGIN.length();
        int to = page.indexOf(END);
        assertThat(from).isGreaterThan(BEGIN.length());
        String fresh = page.substring(0, from) + FieldReference.markdown() + page.substring(to);
        if (Boolean.getBoolean("leat.write-docs")) {
            Files.writeString(FILE, fresh);
        }
        assertThat(Files.readString(FILE)).isEqualTo(fresh);
    }

    @Test
    void every_yaml_example_of_the_page_that_names_a_format_reads_without_problems() throws IOException {
        Matcher blocks =
                Pattern.compile("```yaml\n(format: .*?)```", Pattern.DOTALL).matcher(Files.readString(FILE));
        int count = 0;
        while (blocks.find()) {
            count++;
            assertThat(DesignReader.read(blocks.group(1), "example").problems())
                    .extracting(ProblemText::line)
                    .isEmpty();
        }
        assertThat(count).isPositive();
    }
}
