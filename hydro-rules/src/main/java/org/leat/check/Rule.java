package org.leat.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import java.util.function.UnaryOperator;
import org.apiguardian.api.API;

/**
 * One design rule: a card with everything it says, how it judges, and what may take its failures away. Immutable; a pure
 * function of what it judges, safe to share between threads.
 *
 * <p>Made with {@link #of}. Where the plant could not be solved or an input is absent, the engine answers <em>open</em>
 * and names the field: a rule asks for what it needs ({@link Judgement#solved()}, {@link Spot#given}) and never answers
 * for what is not there.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Rule {

    private final RuleCard card;
    private final Function<Judgement, List<Outcome>> judging;
    private final Ways ways;

    /** What may take failures away. */
    @FunctionalInterface
    interface Ways {
        List<WayOut> of(Rule rule, Judgement judgement, Outcome.Fail failure);
    }

    private Rule(RuleCard card, Function<Judgement, List<Outcome>> judging, Ways ways) {
        this.card = card;
        this.judging = judging;
        this.ways = ways;
    }

    /**
     * {@return a rule to be filled in}
     *
     * @param id component and what is judged, as in {@code penstock/static-pressure}
     * @param level of a failure
     * @param title what is judged, in a few words
     */
    public static RuleBuilder of(String id, Level level, String title) {
        return new RuleBuilder(id, level, title);
    }

    static Rule of(RuleCard card, Function<Judgement, List<Outcome>> judging, List<DeclaredWay> ways, boolean byPower) {
        List<DeclaredWay> declared = List.copyOf(ways);
        return new Rule(card, judging, (rule, j, failure) -> {
            List<WayOut> found = new ArrayList<>();
            for (DeclaredWay way : declared) {
                way.find(rule, j, failure, !found.isEmpty()).ifPresent(found::add);
            }
            if (byPower) {
                found.sort(Comparator.comparingDouble(way -> -way.gain().orElse(0)));
            }
            return found;
        });
    }

    /** {@return what the rule says about itself} */
    public RuleCard card() {
        return card;
    }

    /** {@return the rule's id} */
    public String id() {
        return card.id();
    }

    /** {@return the rule with whatever is asked of it passing through something that contains it} */
    Rule contained(UnaryOperator<Function<Judgement, List<Outcome>>> judged, UnaryOperator<Ways> out) {
        return new Rule(card, judged.apply(judging), out.apply(ways));
    }

    /** {@return one outcome for each element and case judged; at least one, be it that nothing applies} */
    public List<Outcome> judge(Judgement judgement) {
        return answered(judging, judgement);
    }

    /** {@return what is answered; where an input is absent, the open answer that was made where it was asked for} */
    static List<Outcome> answered(Function<Judgement, List<Outcome>> judging, Judgement judgement) {
        try {
            return List.copyOf(judging.apply(judgement));
        } catch (OpenQuestion question) {
            return List.of(question.answer());
        }
    }

    /** {@return ways out of a failure, in the order of the card; each edit was tried} */
    public List<WayOut> waysOut(Judgement judgement, Outcome.Fail failure) {
        return List.copyOf(ways.of(this, judgement, failure));
    }

    @Override
    public String toString() {
        return card.id();
    }
}
