package org.leat.check;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Supplier;
import org.jspecify.annotations.Nullable;

/**
 * Contains a rule of foreign code: it is asked within a time limit, and what it answers is held against its card. Once it
 * did not end in time it is not asked again.
 */
final class WatchedRule {

    private final RuleCard card;
    private final Watch watch;
    private final AtomicReference<@Nullable PackTimeout> stuck = new AtomicReference<>();

    private WatchedRule(RuleCard card, Watch watch) {
        this.card = card;
        this.watch = watch;
    }

    static Rule of(Rule rule, Watch watch) {
        WatchedRule watched = new WatchedRule(rule.card(), watch);
        return rule.contained(
                judging -> j -> watched.held(watched.ask(() -> Rule.answered(judging, j))),
                ways -> (same, j, failure) -> watched.ask(() -> List.copyOf(ways.of(same, j, failure))));
    }

    private List<Outcome> held(List<Outcome> outcomes) {
        for (Outcome outcome : outcomes) {
            if (!outcome.rule().equals(card.id())) {
                throw new PackFault("it answered for another rule, " + outcome.rule());
            }
        }
        return outcomes;
    }

    private <T> T ask(Supplier<T> question) {
        PackTimeout before = stuck.get();
        if (before != null) {
            throw before;
        }
        try {
            return watch.ask("it", question);
        } catch (PackTimeout e) {
            stuck.set(e);
            throw e;
        }
    }
}
