package org.leat.check;

import java.util.List;
import java.util.Map;
import org.leat.design.Design;

/** What a rule looks at: the design, the plant solved from it, and the limits in force for this rule. Immutable. */
public final class Judgement {

    private final RuleCard card;
    private final Map<String, Limit> limits;
    private final Design design;

    Judgement(RuleCard card, Map<String, Limit> limits, Design design) {
        this.card = card;
        this.limits = limits;
        this.design = design;
    }

    /** {@return what the builder chose} */
    public Design design() {
        return design;
    }

    /**
     * {@return a limit in force}
     *
     * @throws IllegalArgumentException if the rule's card does not list it
     */
    public Limit limit(String name) {
        Limit limit = limits.get(name);
        if (limit == null) {
            throw new IllegalArgumentException(card.id() + " has no limit called " + name);
        }
        return limit;
    }

    /** {@return the place to answer for: a path as in {@link Outcome#path()}, "" for the whole design} */
    public Spot at(String path) {
        return new Spot(card, path, "");
    }

    /** {@return the same rule looking at the design with edits applied, solved again} */
    public Judgement with(List<Edit> edits) {
        return new Judgement(card, limits, DesignEdits.apply(design, edits));
    }

    /** {@return a way out by edits, with the watts it gains} */
    public WayOut wayOut(String messageId, List<Edit> edits, Arg... args) {
        return new WayOut(Message.of(messageId, args), edits, null);
    }

    /** {@return a way out that is no edit of the design} */
    public WayOut advice(String messageId, Arg... args) {
        return new WayOut(Message.of(messageId, args), List.of(), null);
    }
}
