package org.leat.pack.penstock;

import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.PlasticPipe;
import org.leat.check.Change;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.Pipe;
import org.leat.design.PolyethyleneGrade;
import org.leat.pack.kit.PipeSection;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.Si;

/**
 * Pipe that holds what a section's pipe does not: the thinnest of its own series that does, or of the same in the stronger
 * grade. What the catalogue lists of polyethylene; told with {@code sdr} and {@code rating}.
 */
final class StrongerPipe {

    static final String THICKER = "Pipe of the same material in SDR {sdr} ({rating:bar} at 20 °C).";
    static final String STRONGER_GRADE = "PE100 in SDR {sdr} ({rating:bar} at 20 °C).";

    private StrongerPipe() {}

    /** {@return thicker pipe of the same grade, thinnest first} */
    static Stream<Change> thicker(Judgement j, Outcome.Fail failure) {
        return thicker(j, failure, 0);
    }

    /** {@return as {@link #thicker}, where the pipe's rating failed: none that is rated too low to be tried} */
    static Stream<Change> thickerForRating(Judgement j, Outcome.Fail failure) {
        return thicker(j, failure, leastRating(j, failure));
    }

    /** {@return pipe of the stronger grade, thinnest first; none where it is that already} */
    static Stream<Change> strongerGrade(Judgement j, Outcome.Fail failure) {
        return strongerGrade(j, failure, 0);
    }

    /** {@return as {@link #strongerGrade}, where the pipe's rating failed: none that is rated too low to be tried} */
    static Stream<Change> strongerGradeForRating(Judgement j, Outcome.Fail failure) {
        return strongerGrade(j, failure, leastRating(j, failure));
    }

    private static Stream<Change> thicker(Judgement j, Outcome.Fail failure, double leastRating) {
        return PipeSection.of(j, failure).pipe() instanceof Pipe.Polyethylene pipe
                ? series(j, failure.path(), pipe, pipe.material(), leastRating)
                : Stream.empty();
    }

    private static Stream<Change> strongerGrade(Judgement j, Outcome.Fail failure, double leastRating) {
        return PipeSection.of(j, failure).pipe() instanceof Pipe.Polyethylene pipe
                        && pipe.material() == PolyethyleneGrade.PE80
                ? series(j, failure.path(), pipe, PolyethyleneGrade.PE100, leastRating)
                : Stream.empty();
    }

    /** The rating at 20 °C below which none needs trying: a thicker wall lowers no pressure. In Pa. */
    private static double leastRating(Judgement j, Outcome.Fail failure) {
        Amount rating = PipeSection.of(j, failure).numbers().rating();
        return 0.95 * rating.or(0) * failure.value() / failure.limit();
    }

    private static Stream<Change> series(
            Judgement j, String path, Pipe.Polyethylene pipe, PolyethyleneGrade grade, double leastRating) {
        OptionalDouble now =
                pipe.material() == grade && pipe.sdr() != null ? OptionalDouble.of(pipe.sdr()) : OptionalDouble.empty();
        return j
                .plant()
                .catalogue()
                .pipeSeries(PipeStandard.ISO_4427, PipeMaterial.of(grade), Si.of(pipe.outsideDiameter()))
                .stream()
                .filter(other ->
                        (now.isEmpty() || other.sdr() < now.getAsDouble()) && other.nominalPressure() >= leastRating)
                .map(other -> Change.of(edits(path, pipe, grade, other))
                        .with("sdr", other.sdr(), RATIO)
                        .with("rating", other.nominalPressure(), PRESSURE));
    }

    private static List<Edit> edits(String path, Pipe.Polyethylene pipe, PolyethyleneGrade grade, PlasticPipe other) {
        List<Edit> edits = new ArrayList<>();
        if (pipe.material() != grade) {
            edits.add(new Edit(path + "/material", grade));
        }
        edits.add(new Edit(path + "/sdr", other.sdr()));
        if (pipe.wall() != null) {
            edits.add(new Edit(path + "/wall", null));
        }
        if (pipe.pressureRating() != null) {
            edits.add(new Edit(path + "/pressure-rating", null));
        }
        return edits;
    }
}
