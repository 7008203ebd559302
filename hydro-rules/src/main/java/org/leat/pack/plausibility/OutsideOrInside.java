package org.leat.pack.plausibility;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.tables.PipeCatalogue;
import org.leat.catalogue.tables.SteelTube;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.pack.kit.PipeSection;
import org.leat.quantity.Si;

/** The outside diameter as written against the sizes that are sold: inside and nominal diameters are taken for it. */
final class OutsideOrInside {

    /** Of a diameter: marks and tables round by less. */
    private static final double SAME = 0.015;

    static final Rule RULE = Rule.of(
                    "plausibility/outside-diameter", WARNING, "outside diameter against the sizes sold")
            .judgesInput()
            .why(
                    "Plastic pipe is named by its outside diameter, steel tube and hose by the inside. Where one is written for the"
                            + " other, bore, losses and strength are those of a pipe that nobody sells.")
            .formula(
                    "outside diameter within 1.5 % of a size of the series; else not within 1.5 % of a size's inside or nominal"
                            + " diameter")
            .judged("each section as written")
            .source("ISO 161-1 and ISO 4065 sizes of plastic pipe; EN 10255 sizes of steel tube (from memory)")
            .source(COMMON_PRACTICE)
            .passes("a-size", "Section {section}: {outside:mm} outside is a size that is sold.")
            .passes(
                    "of-its-own",
                    "Section {section}: {outside:mm} is no size of the metric series, nor the inside of one.")
            .fails(
                    "inside",
                    "Section {section}: {outside:mm} is no outside diameter that is sold, but the inside of the pipe of"
                            + " {size:mm}.")
            .fails(
                    "nominal",
                    "Section {section}: {outside:mm} is no outside diameter that is sold, but the nominal one of the tube that"
                            + " is {size:mm} outside.")
            .notApplicable("by-bore", "Section {section} goes by its inside diameter.")
            .judgeAll(OutsideOrInside::judge)
            .advice("as-sold", "If that pipe is meant, write {size:mm} outside.", OutsideOrInside::asSold)
            .build();

    /** What a diameter may have been written for: the outside diameter of that pipe, m. */
    private record MeantDiameter(String text, double outside) {}

    private OutsideOrInside() {}

    private static List<Outcome> judge(Judgement j) {
        return j.each(PipeSection.all(j), section -> {
            Pipe pipe = section.pipe();
            Spot spot = section.spot(j);
            double outside = outside(pipe);
            if (!(outside > 0)) {
                return spot.says("by-bore");
            }
            Spot told = spot.with("outside", outside, LENGTH);
            if (sizes(pipe).stream().anyMatch(size -> alike(size, outside))) {
                return told.says("a-size");
            }
            if (pipe instanceof Pipe.PvcU pvc) {
                told.given(told.path() + "/wall", pvc.wall());
            }
            return meant(pipe, outside)
                    .map(m -> told.with("size", m.outside(), LENGTH).says(m.text()))
                    .orElseGet(() -> told.says("of-its-own"));
        });
    }

    private static double outside(Pipe pipe) {
        if (pipe instanceof Pipe.Polyethylene polyethylene) {
            return Si.of(polyethylene.outsideDiameter());
        } else if (pipe instanceof Pipe.PvcU pvc) {
            return Si.of(pvc.outsideDiameter());
        }
        return pipe instanceof Pipe.Steel steel ? Si.of(steel.outsideDiameter()) : 0;
    }

    private static List<Double> sizes(Pipe pipe) {
        if (pipe instanceof Pipe.Steel) {
            return SteelTube.all().stream().map(SteelTube::outsideDiameter).toList();
        }
        return PipeCatalogue.sizes(pipe instanceof Pipe.PvcU ? PipeStandard.ISO_1452 : PipeStandard.ISO_4427);
    }

    private static Optional<MeantDiameter> meant(Pipe pipe, double written) {
        if (pipe instanceof Pipe.Steel) {
            return SteelTube.all().stream()
                    .filter(tube -> alike(tube.nominalDiameter() / 1000.0, written))
                    .map(tube -> new MeantDiameter("nominal", tube.outsideDiameter()))
                    .findFirst();
        }
        double walls = walls(pipe, written);
        return walls <= 0
                ? Optional.empty()
                : sizes(pipe).stream()
                        .filter(size -> alike(size * (1 - 2 / walls), written))
                        .map(size -> new MeantDiameter("inside", size))
                        .findFirst(); // sizes of a series are farther apart than what is taken for the same
    }

    /** {@return outside diameter over wall, as marked or by the wall; none for a pipe that goes by its rating} */
    private static double walls(Pipe pipe, double written) {
        if (pipe instanceof Pipe.Polyethylene polyethylene) {
            return polyethylene.sdr() != null ? polyethylene.sdr() : ofWall(written, Si.of(polyethylene.wall(), 0));
        }
        return pipe instanceof Pipe.PvcU pvc && pvc.wall() != null ? ofWall(written, Si.of(pvc.wall(), 0)) : 0;
    }

    /** The inside plus two walls is the outside. */
    private static double ofWall(double inside, double wall) {
        return wall > 0 ? (inside + 2 * wall) / wall : 0;
    }

    private static boolean alike(double one, double other) {
        return Math.abs(one / other - 1) <= SAME;
    }

    private static Stream<Change> asSold(Judgement j, Outcome.Fail failure) {
        Pipe pipe = PipeSection.of(j, failure).pipe();
        return meant(pipe, outside(pipe)).stream().map(m -> Change.advice().with("size", m.outside(), LENGTH));
    }
}
