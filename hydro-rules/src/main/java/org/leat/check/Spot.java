package org.leat.check;

import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.law.Answer;
import org.leat.plant.cases.Situation;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/**
 * One element, in one case, about to be answered for. Immutable.
 *
 * @param rule that answers
 * @param path the element
 * @param during the case, "" for none
 */
public record Spot(RuleInForce rule, String path, String during) {

    /** {@return the level in force of the rule's ordinary failure} */
    public Level level() {
        return rule.level();
    }

    /** {@return the same element in one of the plant's situations} */
    public Spot during(Situation situation) {
        return during(situation.id());
    }

    /** {@return the same element in a case of a name of its own} */
    public Spot during(String caseName) {
        return new Spot(rule, path, caseName);
    }

    /**
     * {@return pass or fail, by the comparison, at the rule's level in force}
     *
     * @param passing id of the message if it holds
     * @param failing id of the message if not
     */
    public Outcome compare(Comparison comparison, String passing, String failing, Arg... args) {
        return compare(rule.card().level(), comparison, passing, failing, args);
    }

    /**
     * {@return pass or fail, by the comparison, at a level of its own}
     *
     * @param level as bad as the rule itself holds this case to be; settings move it as they move the rule's level
     */
    public Outcome compare(Level level, Comparison comparison, String passing, String failing, Arg... args) {
        boolean holds = comparison.holds();
        Message message = new Message(holds ? passing : failing, List.of(args));
        return outcome(holds ? Kind.PASS : Kind.FAIL, level, comparison, message, null);
    }

    /** {@return a pass where nothing is compared} */
    public Outcome pass(String messageId, Arg... args) {
        return outcome(Kind.PASS, rule.card().level(), null, Message.of(messageId, args), null);
    }

    /** {@return a failure where nothing is compared, at the rule's level in force} */
    public Outcome fail(String messageId, Arg... args) {
        return fail(rule.card().level(), messageId, args);
    }

    /**
     * {@return a failure where nothing is compared, at a level of its own}
     *
     * @param level as bad as the rule itself holds this case to be; settings move it as they move the rule's level
     */
    public Outcome fail(Level level, String messageId, Arg... args) {
        return outcome(Kind.FAIL, level, null, Message.of(messageId, args), null);
    }

    /**
     * {@return an open question: a field is not given}
     *
     * @param missing path of that field
     */
    public Outcome notGiven(String missing) {
        return outcome(
                Kind.OPEN,
                rule.card().level(),
                null,
                Message.of(CommonMessages.NOT_GIVEN, Arg.at("field", missing)),
                missing);
    }

    /**
     * {@return an open question, in the rule's own words}
     *
     * @param missing path of the field that would let the rule judge; null if no field would
     */
    public Outcome open(@Nullable String missing, String messageId, Arg... args) {
        return outcome(Kind.OPEN, rule.card().level(), null, Message.of(messageId, args), missing);
    }

    /** {@return an open question: a law was asked outside its published range} */
    public Outcome outside(Answer.Outside outside) {
        Message message = Message.of(
                CommonMessages.OUTSIDE_LAW,
                Arg.of("law", outside.law()),
                Arg.of("input", outside.input()),
                Arg.of("found", outside.value(), QuantityKind.RATIO),
                Arg.of("low", outside.low(), QuantityKind.RATIO),
                Arg.of("high", outside.high(), QuantityKind.RATIO),
                Arg.of("unit", outside.unit()));
        return outcome(Kind.OPEN, rule.card().level(), null, message, null);
    }

    /** {@return an open question: the plant has no such number} */
    public Outcome unknown(Amount.Unknown unknown) {
        Message message = Message.of(
                CommonMessages.NOT_KNOWN, Arg.at("field", unknown.path()), Arg.phrase("reason", unknown.reason()));
        return outcome(Kind.OPEN, rule.card().level(), null, message, unknown.path());
    }

    /** {@return a review: a person must look} */
    public Outcome review(String messageId, Arg... args) {
        return outcome(Kind.REVIEW, rule.card().level(), null, Message.of(messageId, args), null);
    }

    /** {@return something told, nothing judged} */
    public Outcome told(String messageId, Arg... args) {
        return outcome(Kind.INFORMATIONAL, rule.card().level(), null, Message.of(messageId, args), null);
    }

    /** {@return that the design has nothing here for the rule to judge} */
    public Outcome notApplicable(String messageId, Arg... args) {
        return outcome(Kind.NOT_APPLICABLE, rule.card().level(), null, Message.of(messageId, args), null);
    }

    private Outcome outcome(
            Kind kind, Level as, @Nullable Comparison comparison, Message message, @Nullable String missing) {
        RuleCard card = rule.card();
        if (as.compareTo(card.worst()) > 0) {
            throw new IllegalArgumentException(card.id() + " says it cannot fail as " + as);
        }
        return new Outcome(card.id(), kind, rule.inForce(as), path, during, comparison, message, missing);
    }
}
