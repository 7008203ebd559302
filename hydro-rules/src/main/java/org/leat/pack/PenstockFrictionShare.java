package org.leat.pack;

import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.WaterSide;

/** {@code penstock/friction-share}: how much of the fall the pipe eats. */
final class PenstockFrictionShare implements LegacyRule {

    private static final String PAST_MAXIMUM = "past-maximum";

    private static final RuleCard CARD = RuleCard.of("penstock/friction-share", Level.WARNING)
            .canFailAs(Level.ERROR)
            .hurtsNobody()
            .title("share of the gross head lost on the way")
            .why("A narrow pipe wastes the fall; a wide one wastes money. From a third of the head on, a larger nozzle"
                    + " brings more water but no more power.")
            .formula("share = 1 − net head / gross head; jet power is greatest at 1/3 where the loss goes with Q²")
            .judged("running on the nozzle set open as built, pipe full")
            .source(RuleCard.COMMON_PRACTICE)
            .source("power maximum at one third: d(Q (H − k Q²))/dQ = 0")
            .limit("least", RATIO, 5, "%", RuleCard.COMMON_PRACTICE)
            .limit("most", RATIO, 15, "%", RuleCard.COMMON_PRACTICE)
            .limit(PAST_MAXIMUM, RATIO, 33.3, "%", "d(Q (H − k Q²))/dQ = 0")
            .message("in-range", "head")
            .message("narrow", "head")
            .message("past-maximum", "head")
            .message("wide", "head")
            .message("not-full")
            .message("other-pipe", "section", "diameter")
            .message("other-nozzle", "bore")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        List<Running> running = j.cases().running();
        return running.isEmpty() ? Open.unsolved(j) : List.of(judge(j, running.get(0)));
    }

    private static Outcome judge(Judgement j, Running running) {
        WaterSide water = running.water();
        if (!water.fullPipe()) {
            return j.at("/penstock").notApplicable("not-full");
        }
        double share = water.frictionShare();
        Comparison comparison = Comparison.within(share, j.limit("least"), j.limit("most"));
        Arg head = Arg.of("head", water.grossHead() - water.netHead(), LENGTH);
        if (share >= j.limit(PAST_MAXIMUM).value()) {
            return j.at("/penstock").compare(Level.ERROR, comparison, "in-range", PAST_MAXIMUM, head);
        }
        return share < j.limit("least").value()
                ? j.at("/penstock").compare(Level.NOTE, comparison, "in-range", "wide", head)
                : j.at("/penstock").compare(comparison, "in-range", "narrow", head);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        boolean narrow = !failure.message().id().equals("wide");
        int longest = PipeSizes.longest(j);
        Stream<Candidate> pipes =
                narrow ? PipeSizes.larger(j, longest, "other-pipe") : PipeSizes.smaller(j, longest, "other-pipe");
        Stream<Candidate> nozzles =
                narrow ? NozzlesOnHand.smaller(j, "other-nozzle") : NozzlesOnHand.larger(j, "other-nozzle");
        return Stream.of(pipes, nozzles)
                .map(candidates -> candidates.filter(c -> holds(j.with(c.edits()))))
                .flatMap(candidates -> Search.first(this, j, failure, candidates).stream())
                .toList();
    }

    private boolean holds(Judgement j) {
        return judge(j).stream().allMatch(o -> o.kind() == Kind.PASS);
    }
}
