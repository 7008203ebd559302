package org.leat.pack.plausibility;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.rows.Spread;
import org.leat.catalogue.tables.MaterialData;
import org.leat.catalogue.tables.MaterialProperty;
import org.leat.catalogue.tables.PipeCatalogue;
import org.leat.catalogue.tables.PressureRating;
import org.leat.check.Judgement;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Pipe;
import org.leat.pack.kit.PipeSection;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.Si;

/** The pressure printed on a pipe against what the wall told beside it holds. */
final class MarkOverWall {

    static final Rule RULE = Rule.of(
                    "plausibility/mark-over-wall", WARNING, "pressure marked on a pipe against its wall")
            .judgesInput()
            .why(
                    "A thin wall does not hold what is printed on it. Where mark and wall do not belong together, one was read"
                            + " from another pipe or the wall was measured wrong; whoever believes the mark stands beside a pipe"
                            + " that bursts.")
            .formula(
                    "pressure marked over what the wall holds at 20 °C: plastic by its standard, 2 MRS/(C (SDR − 1)); steel by half"
                            + " its yield strength in the wall that the tolerance leaves, 0.875 R_e e/D")
            .judged(
                    "each section of plastic or steel pipe with both told, as written; open where only one of the standards of PVC-U"
                            + " would have it so and none is named, and where only a stronger steel would and none is told. The lower of the two counts in every other rule")
            .source("ISO 161-1, ISO 4427-1, ISO 1452-2")
            .source(
                    "steel: Barlow; half of yield, less than EN 13480-3 (R_e/1.5) and ASME B31.3 (16 of 30 ksi) allow (from memory);"
                            + " tolerance of 12.5 %, EN 10216, EN 10217, ASTM A53")
            .source(COMMON_PRACTICE)
            .limit(
                    "rounded",
                    RATIO,
                    1.03,
                    "",
                    "names of nominal pressures are rounded: ISO 4065, ISO 1452-2",
                    Safer.LOWER)
            .passes("held", "Section {section}: a wall of {wall:mm} holds the {marked:bar} marked on it.")
            .fails(
                    "too-thin",
                    "Section {section}: {marked:bar} is marked on it, but a wall of {wall:mm} holds {holds:bar} at 20 °C. The"
                            + " wall counts.")
            .notApplicable("one-of-them", "No pipe of plastic or steel has both a mark and a wall told.")
            .judgeAll(MarkOverWall::judge)
            .advice(
                    "look",
                    "Read the print once more, and measure the wall at a cut end with a calliper; if the mark is that of"
                            + " another pipe, leave it out.")
            .build();

    private MarkOverWall() {}

    private static List<Outcome> judge(Judgement j) {
        List<PipeSection> both = PipeSection.of(j, pipe -> pipe.pressureRating() != null && wallTold(pipe));
        return j.eachOr(j.at("/penstock").says("one-of-them"), both, section -> judge(j, section));
    }

    private static Outcome judge(Judgement j, PipeSection placed) {
        Pipe pipe = placed.pipe();
        SectionNumbers section = placed.numbers();
        Spot spot = placed.spot(j);
        double marked = Si.of(pipe.pressureRating(), 0);
        double holds = spot.known(section.rating());
        double rounded = j.limit("rounded").value();
        if (pipe instanceof Pipe.PvcU pvc && holds >= marked && marked > rounded * leastHeld(section)) {
            spot.given(spot.path() + "/standard", pvc.standard());
        }
        if (pipe instanceof Pipe.Steel steel && marked > rounded * holds && marked <= rounded * strongest(holds)) {
            spot.given(spot.path() + "/yield-strength", steel.yieldStrength());
        }
        return spot.with("marked", marked, PRESSURE)
                .with("wall", pipe instanceof Pipe.Steel steel ? Si.of(steel.wall()) : section.leastWall(), LENGTH)
                .with("holds", holds, PRESSURE)
                .atMost(marked / holds, j.limit("rounded"));
    }

    /** By the standard that allows the wall least. */
    private static double leastHeld(SectionNumbers section) {
        return PressureRating.calculated(
                MaterialData.usual(PipeMaterial.PVC_U, MaterialProperty.MINIMUM_REQUIRED_STRENGTH),
                PipeCatalogue.designCoefficient(PipeStandard.DIN_8062, section.outsideDiameter()),
                section.outsideDiameter() / section.leastWall());
    }

    /** What a wall of the strongest steel that tube is usually made of holds, where one of the weakest holds that much. */
    private static double strongest(double holds) {
        Spread yields = MaterialData.find(PipeMaterial.STEEL, MaterialProperty.YIELD_STRENGTH)
                .orElseThrow();
        return holds * yields.high() / yields.low();
    }

    private static boolean wallTold(Pipe pipe) {
        return pipe instanceof Pipe.Polyethylene
                || pipe instanceof Pipe.Steel
                || (pipe instanceof Pipe.PvcU pvc && pvc.wall() != null);
    }
}
