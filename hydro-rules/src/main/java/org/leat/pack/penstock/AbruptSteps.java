package org.leat.pack.penstock;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.design.Section;
import org.leat.pack.kit.PipeSection;

/** A bore that narrows and widens again along the run. */
final class AbruptSteps {

    static final Rule RULE = Rule.of("penstock/abrupt-steps", NOTE, "bore that narrows and widens again")
            .why(
                    "A narrow piece between wide ones costs the speed that the water gains and loses again, catches leaves"
                            + " and is the place where air hangs. Odds and ends of pipe belong at the lower end, narrowest last.")
            .formula("bore of a section / the lesser of the widest bore above and the widest below it")
            .judged("the sections in their order")
            .source(COMMON_PRACTICE)
            .limit("share", RATIO, 95, "%", COMMON_PRACTICE)
            .passes("steady", "Section {section}, {bore:mm} wide, is no narrower than the pipe around it.")
            .passes("no-steps", "No section lies between two others.")
            .fails(
                    "narrow",
                    "Section {section}, {bore:mm} wide, is {value:%} of the pipe above and below it; good is"
                            + " {limit}.")
            .judgeAll(AbruptSteps::judge)
            .wayOut("same-pipe", "Section {section} of the same pipe as section {as}.", AbruptSteps::asNext)
            .build();

    private AbruptSteps() {}

    private static List<Outcome> judge(Judgement j) {
        List<PipeSection> all = PipeSection.all(j);
        if (all.size() < 3) {
            return List.of(j.at("/penstock").says("no-steps"));
        }
        return j.each(all.subList(1, all.size() - 1), section -> {
            double above = widest(all.subList(0, section.index()));
            double below = widest(all.subList(section.index() + 1, all.size()));
            double bore = section.numbers().bore();
            return section.spot(j)
                    .with("bore", bore, LENGTH)
                    .atLeast(Math.min(1, bore / Math.min(above, below)), j.limit("share"));
        });
    }

    private static double widest(List<PipeSection> sections) {
        return sections.stream()
                .mapToDouble(section -> section.numbers().bore())
                .max()
                .orElse(0);
    }

    private static Stream<Change> asNext(Judgement j, Outcome.Fail failure) {
        List<Section> sections = j.design().penstock().sections();
        int narrow = PipeSection.of(j, failure).index();
        return Stream.of(sections.get(narrow - 1), sections.get(narrow + 1))
                .map(as -> Change.of(failure.path(), as.pipe())
                        .with("section", sections.get(narrow).name())
                        .with("as", as.name()));
    }
}
