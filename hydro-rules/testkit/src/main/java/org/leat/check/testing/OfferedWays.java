package org.leat.check.testing;

import org.leat.check.Finding;
import org.leat.check.Judgement;
import org.leat.check.Rule;
import org.leat.check.WayOut;
import org.leat.design.Design;

/** The ways out that a rule offers, against those that the checker kept after carrying each out. */
final class OfferedWays {

    private OfferedWays() {}

    /** A way that does not take its failure away, or brings another as bad, is dropped by the checker: here it is told. */
    static void hold(Rule rule, Design design, Finding failure) {
        for (WayOut way : rule.waysOut(Judgement.of(rule, design), failure.outcome())) {
            if (!way.edits().isEmpty()
                    && failure.waysOut().stream()
                            .noneMatch(w -> w.message().equals(way.message())
                                    && w.edits().equals(way.edits()))) {
                throw new AssertionError(rule.id() + " offers a way out that does not help: " + way.message());
            }
        }
    }
}
