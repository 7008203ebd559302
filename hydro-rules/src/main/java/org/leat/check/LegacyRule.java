package org.leat.check;

import java.util.List;

/**
 * One design rule. A rule is a pure function: it holds no state, formats no text and catches nothing. Where an input is
 * missing it answers <em>open</em> and names the field, never pass. Meant to be implemented, also outside this project.
 */
public interface LegacyRule {

    /** {@return what the rule says about itself; the same every time} */
    RuleCard card();

    /**
     * Judges a plant.
     *
     * @return one outcome for each element and case judged; at least one, be it {@link Kind#NOT_APPLICABLE}
     */
    List<Outcome> judge(Judgement judgement);

    /**
     * Ways out of one failure of this rule, each computed: applying its edits must make the failure go away. Asked for
     * failures only.
     *
     * @param judgement the same as was judged
     * @param failure one of the outcomes of {@link #judge}
     * @return the ways, best first; empty where none is known
     */
    default List<WayOut> waysOut(Judgement judgement, Outcome failure) {
        return List.of();
    }

    /** {@return the rule's id} */
    default String id() {
        return card().id();
    }
}
