package org.leat.pack;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import javax.measure.Quantity;
import org.junit.jupiter.api.Test;
import org.leat.catalogue.Catalogue;
import org.leat.catalogue.rows.PipeDimensions;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.check.Checker;
import org.leat.check.Edit;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.file.DesignReader;
import org.leat.quantity.Si;

/** A checker given the pipes that a shop has: a size no standard tables among them, and none of those in between. */
class OwnPipesTest {

    private static PlasticPipe sold(double outsideDiameter, double wall) {
        return new PlasticPipe(
                PipeStandard.ISO_4427,
                PipeMaterial.PE100,
                17,
                10e5,
                new PipeDimensions(outsideDiameter, wall, 1.05 * wall));
    }

    private static final Catalogue SHOP =
            Catalogue.shipped().withPipes(List.of(sold(0.050, 0.003), sold(0.062, 0.0037)));

    private static Finding frictionShare(Checker checker) throws IOException {
        try (InputStream base = OwnPipesTest.class.getResourceAsStream("/org/leat/pack/bases/brook.yaml")) {
            String narrow = new String(base.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("outside-diameter: 63 mm, sdr: 17", "outside-diameter: 50 mm, sdr: 17");
            return checker.check(DesignReader.read(narrow, "narrow")).findings().stream()
                    .filter(finding -> finding.outcome().rule().equals("penstock/friction-share"))
                    .findFirst()
                    .orElseThrow();
        }
    }

    private static List<Double> diameters(Finding finding) {
        return finding.waysOut().stream()
                .flatMap(way -> way.edits().stream())
                .filter(edit -> edit.path().endsWith("/outside-diameter"))
                .map(OwnPipesTest::metres)
                .toList();
    }

    private static double metres(Edit edit) {
        return Si.of((Quantity<?>) Objects.requireNonNull(edit.value()));
    }

    private static double share(Finding finding) {
        return ((Outcome.Fail) finding.outcome()).value();
    }

    @Test
    void a_larger_pipe_is_one_that_the_shop_has() throws IOException {
        Checker checker = Checker.of(List.of(new BuiltInPack()));
        Finding shipped = frictionShare(checker);
        Finding own = frictionShare(checker.with(SHOP));
        assertThat(shipped.outcome().kind()).isEqualTo(Kind.FAIL);
        assertThat(diameters(shipped)).containsExactly(0.063);
        assertThat(own.outcome().kind()).isEqualTo(Kind.FAIL);
        assertThat(diameters(own)).containsExactly(0.062);
    }

    @Test
    void the_loss_is_reckoned_with_the_bore_of_the_pipe_sold() throws IOException {
        Checker checker = Checker.of(List.of(new BuiltInPack()));
        Catalogue thick = Catalogue.shipped().withPipes(List.of(sold(0.050, 0.004)));
        assertThat(share(frictionShare(checker.with(thick))))
                .isGreaterThan(
                        frictionShare(checker.with(SHOP)).outcome().comparison().value());
    }
}
