package org.leat.choice;

import org.leat.check.Outcome;

/**
 * One rule at one element, whatever the case: cases are called after nozzles, and a change of the nozzles renames them.
 *
 * @param rule the rule's id
 * @param path the element
 */
record FindingPlace(String rule, String path) {

    static FindingPlace of(Outcome outcome) {
        return new FindingPlace(outcome.rule(), outcome.path());
    }
}
