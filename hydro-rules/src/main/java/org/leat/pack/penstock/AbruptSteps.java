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
import org.leat.pack.kit.PipeSizes;
import org.leat.plant.numbers.SectionNumbers;

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
        List<SectionNumbers> sections = j.numbers().penstock().sections();
        if (sections.size() < 3) {
            return List.of(j.at("/penstock").says("no-steps"));
        }
        return j.eachOf(sections.size() - 2, before -> {
            SectionNumbers section = sections.get(before + 1);
            double around = Math.min(
                    widest(sections.subList(0, before + 1)), widest(sections.subList(before + 2, sections.size())));
            return j.at(PipeSizes.path(j.design(), before + 1) + "/pipe")
                    .with("section", section.name())
                    .with("bore", section.bore(), LENGTH)
                    .atLeast(Math.min(1, section.bore() / around), j.limit("share"));
        });
    }

    private static double widest(List<SectionNumbers> sections) {
        return sections.stream().mapToDouble(SectionNumbers::bore).max().orElse(0);
    }

    private static Stream<Change> asNext(Judgement j, Outcome.Fail failure) {
        List<Section> sections = j.design().penstock().sections();
        int narrow = PipeSizes.of(j, failure);
        return Stream.of(sections.get(narrow - 1), sections.get(narrow + 1))
                .map(as -> Change.of(failure.path(), as.pipe())
                        .with("section", sections.get(narrow).name())
                        .with("as", as.name()));
    }
}
