package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.PipeCatalogue;
import org.leat.catalogue.PipeMaterial;
import org.leat.catalogue.PipeStandard;
import org.leat.catalogue.PlasticPipe;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Outcome;
import org.leat.check.WayOut;
import org.leat.design.Pipe;
import org.leat.design.PolyethyleneGrade;
import org.leat.design.Section;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;

/**
 * Ways out of a pressure that a section's pipe does not hold: the thinnest of its own series that does, the same in the
 * stronger grade, or, where no table helps, the rating that is needed. The rule says {@code thicker},
 * {@code stronger-grade} and {@code needed}.
 */
final class StrongerPipe {

    private StrongerPipe() {}

    /**
     * {@return the ways, each tried}
     *
     * @param failure at a section's pipe
     * @param needed the rating that would do at the hottest wall, Pa
     */
    static List<WayOut> ways(LegacyRule rule, Judgement j, Outcome failure, double needed) {
        List<WayOut> ways = new ArrayList<>();
        Section section = section(j, failure.path());
        if (section != null && section.pipe() instanceof Pipe.Polyethylene pipe) {
            double least = Double.isFinite(needed) ? leastRating(j, section, failure) : 0;
            Search.first(rule, j, failure, polyethylene(failure.path(), pipe, pipe.material(), least, "thicker"))
                    .ifPresent(ways::add);
            if (pipe.material() == PolyethyleneGrade.PE80) {
                Search.first(
                                rule,
                                j,
                                failure,
                                polyethylene(failure.path(), pipe, PolyethyleneGrade.PE100, least, "stronger-grade"))
                        .ifPresent(ways::add);
            }
        }
        if (ways.isEmpty() && Double.isFinite(needed)) {
            ways.add(j.advice("needed", Arg.of("rating", needed, QuantityKind.PRESSURE)));
        }
        return ways;
    }

    /** The rating at 20 °C below which none needs trying: a thicker wall lowers no pressure. In Pa. */
    private static double leastRating(Judgement j, Section section, Outcome failure) {
        Comparison comparison = failure.comparison();
        for (SectionNumbers numbers : j.plant().numbers().penstock().sections()) {
            if (comparison != null
                    && comparison.sense() == Comparison.Sense.AT_MOST
                    && comparison.kind() == QuantityKind.PRESSURE
                    && numbers.name().equals(section.name())
                    && numbers.rating() instanceof Amount.Known rating) {
                return 0.95 * rating.value() * comparison.value() / comparison.high();
            }
        }
        return 0;
    }

    private static Stream<Candidate> polyethylene(
            String path, Pipe.Polyethylene pipe, PolyethyleneGrade grade, double least, String message) {
        double outside = org.leat.quantity.Si.of(pipe.outsideDiameter());
        double thinner = pipe.material() == grade && pipe.sdr() != null ? pipe.sdr() : Double.POSITIVE_INFINITY;
        return PipeCatalogue.series(PipeStandard.ISO_4427, PipeMaterial.of(grade), outside).stream()
                .filter(candidate -> candidate.sdr() < thinner && candidate.nominalPressure() >= least)
                .map(candidate -> new Candidate(message, edits(path, pipe, grade, candidate), args(candidate)));
    }

    private static List<Edit> edits(
            String path, Pipe.Polyethylene pipe, PolyethyleneGrade grade, PlasticPipe candidate) {
        List<Edit> edits = new ArrayList<>();
        if (pipe.material() != grade) {
            edits.add(new Edit(path + "/material", grade));
        }
        edits.add(new Edit(path + "/sdr", candidate.sdr()));
        if (pipe.wall() != null) {
            edits.add(new Edit(path + "/wall", null));
        }
        if (pipe.pressureRating() != null) {
            edits.add(new Edit(path + "/pressure-rating", null));
        }
        return edits;
    }

    private static List<Arg> args(PlasticPipe pipe) {
        return List.of(
                Arg.of("sdr", pipe.sdr(), QuantityKind.RATIO),
                Arg.of("rating", pipe.nominalPressure(), QuantityKind.PRESSURE));
    }

    private static @Nullable Section section(Judgement j, String path) {
        for (Section section : j.design().penstock().sections()) {
            if (path.startsWith("/penstock/sections[" + section.name() + "]")) {
                return section;
            }
        }
        return null;
    }
}
