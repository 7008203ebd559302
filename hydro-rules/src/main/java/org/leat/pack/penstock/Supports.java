package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.Quantities.m;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.TEMPERATURE;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Penstock;
import org.leat.design.Pipe;
import org.leat.design.Sunlight;
import org.leat.pack.kit.PipeSection;
import org.leat.plant.duties.SupportedSpan;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;

/** Distance between the supports of a pipe above ground. */
final class Supports {

    private static final String PATH = "/penstock/support-spacing";

    static final Rule RULE = Rule.of("penstock/supports", WARNING, "distance between supports of pipe above ground")
            .why(
                    "A plastic pipe full of water sags between its supports, in the sun more every summer. It pulls at its joints, and air"
                            + " gathers where it rises.")
            .formula("spacing ≤ tabled span · (modulus at the hottest wall / modulus at 20 °C)^(1/3)")
            .judged("the pipe full, as hot as it gets")
            .source(
                    "spans: two makers of PE100 pipe, a table of PVC schedule 40 (read), the shorter where they differ; a softer or thinner"
                            + " wall: sag of a beam over its span")
            .passes("held", "Section {section} may span {limit}; its supports stand {value} apart.")
            .fails(
                    "sags",
                    "Section {section} may span {limit} with a wall at {wall:°C}; its supports stand {value} apart.")
            .passes("on-the-ground", "The pipe lies on the ground all along.")
            .review("no-table", "No table of spans for the pipe of section {section} is at hand; its maker tells.")
            .notApplicable("hose", "Hose is laid, not hung.")
            .notApplicable("buried", "The pipe is buried.")
            .judgeAll(Supports::judge)
            .wayOut("closer", "Supports every {spacing:m}.", Supports::closer)
            .build();

    private Supports() {}

    private static List<Outcome> judge(Judgement j) {
        List<PipeSection> rigid = PipeSection.of(j, pipe -> !(pipe instanceof Pipe.Hose));
        Penstock penstock = j.design().penstock();
        if (penstock.sunlight() == Sunlight.BURIED || Boolean.FALSE.equals(penstock.exposed())) {
            return List.of(j.at(PATH).says("buried"));
        }
        if (rigid.isEmpty()) {
            return List.of(j.at(PATH).says("hose"));
        }
        double spacing = j.at("/penstock").si(PATH, penstock.supportSpacing());
        if (spacing == 0) {
            return List.of(j.at(PATH).says("on-the-ground"));
        }
        return j.each(rigid, section -> judge(j, section.numbers(), spacing));
    }

    private static Outcome judge(Judgement j, SectionNumbers section, double spacing) {
        Spot spot =
                j.at(PATH).with("section", section.name()).with("wall", section.highestWallTemperature(), TEMPERATURE);
        Amount span = SupportedSpan.greatest(section);
        return span == null ? spot.says("no-table") : spot.atMost(spacing, span, LENGTH);
    }

    private static Stream<Change> closer(Judgement j, Outcome.Fail failure) {
        double spacing = Math.floor(failure.limit() * 10 + 1e-9) / 10;
        return spacing > 0 ? Stream.of(Change.of(PATH, m(spacing)).with("spacing", spacing, LENGTH)) : Stream.empty();
    }
}
