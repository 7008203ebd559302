package org.leat.pack.runner;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.leat.check.Checker;
import org.leat.check.Kind;
import org.leat.check.Report;
import org.leat.file.DesignReader;
import org.leat.pack.BuiltInPack;
import org.leat.report.Wording;

class BucketMaterialTest {

    private final Checker checker = Checker.of(List.of(new BuiltInPack()));

    private String saidOf(String material) throws IOException {
        String text = Files.readString(Path.of("../hydro-examples/designs/rowan-ghyll.yaml"));
        assertThat(text).contains("material: aluminium-cast");
        Report report = checker.check(DesignReader.read(text.replace("material: aluminium-cast", material), "f"));
        return report.worstFirst(Kind.OPEN).stream()
                .filter(f -> f.outcome().rule().equals("runner/bucket-root"))
                .map(new Wording(checker.rulebook())::of)
                .findFirst()
                .orElse("");
    }

    @Test
    void a_material_that_no_table_knows_is_named_with_those_that_are_known() throws IOException {
        assertThat(saidOf("material: cheese")).contains("cheese", "aluminium-cast, aluminium-wrought", "PETG");
    }

    @Test
    void a_material_that_is_not_named_is_asked_for() throws IOException {
        assertThat(saidOf("# none")).contains("runner.buckets.material is not given");
        assertThat(saidOf("material: bronze-cast")).isEmpty();
    }
}
