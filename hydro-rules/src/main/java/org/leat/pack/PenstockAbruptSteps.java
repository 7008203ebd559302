package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Section;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;

/** A bore that narrows and widens again along the run. */
final class PenstockAbruptSteps implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/abrupt-steps", Level.NOTE)
            .title("bore that narrows and widens again")
            .why(
                    "A narrow piece between wide ones costs the speed that the water gains and loses again, catches leaves"
                            + " and is the place where air hangs. Odds and ends of pipe belong at the lower end, narrowest last.")
            .formula("bore of a section / the lesser of the widest bore above and the widest below it")
            .judged("the sections in their order")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("share", QuantityKind.RATIO, 95, "%", RuleCard.COMMON_PRACTICE)
            .message("steady", "section", "bore")
            .message("no-steps")
            .message("narrow", "section", "bore")
            .message("same-pipe", "section", "as")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 1; i < sections.size() - 1; i++) {
            double bore = sections.get(i).bore();
            double around = Math.min(widest(sections.subList(0, i)), widest(sections.subList(i + 1, sections.size())));
            outcomes.add(j.at(sections.get(i).path() + "/pipe")
                    .compare(
                            Comparison.atLeast(Math.min(1, bore / around), j.limit("share")),
                            "steady",
                            "narrow",
                            Arg.of("section", sections.get(i).name()),
                            Arg.of("bore", bore, QuantityKind.LENGTH)));
        }
        return outcomes.isEmpty() ? List.of(j.at("/penstock").pass("no-steps")) : outcomes;
    }

    private static double widest(List<SectionNumbers> sections) {
        return sections.stream().mapToDouble(SectionNumbers::bore).max().orElse(0);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<Section> sections = j.design().penstock().sections();
        for (int i = 1; i < sections.size() - 1; i++) {
            String path = PipeSizes.path(j.design(), i) + "/pipe";
            if (failure.path().equals(path)) {
                Section name = sections.get(i);
                return Search.first(
                                this,
                                j,
                                failure,
                                Stream.of(sections.get(i - 1), sections.get(i + 1))
                                        .map(as -> Candidate.of(
                                                "same-pipe",
                                                new Edit(path, as.pipe()),
                                                Arg.of("section", name.name()),
                                                Arg.of("as", as.name()))))
                        .stream()
                        .toList();
            }
        }
        return List.of();
    }
}
