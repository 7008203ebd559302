package org.leat.check;

import java.util.List;
import java.util.Set;
import java.util.concurrent.atomic.AtomicReference;
import org.jspecify.annotations.Nullable;

/**
 * A rule of foreign code: asked within a time limit, its answers held against its card and texts. Once it did not end in
 * time it is not asked again.
 */
final class WatchedRule implements Rule {

    private final RuleCard card;
    private final Rule rule;
    private final Watch watch;
    private final Set<String> texts;
    private final AtomicReference<@Nullable TookTooLong> stuck = new AtomicReference<>();

    /** @param texts keys of the texts that the rule can use */
    WatchedRule(RuleCard card, Rule rule, Watch watch, Set<String> texts) {
        this.card = card;
        this.rule = rule;
        this.watch = watch;
        this.texts = texts;
    }

    @Override
    public RuleCard card() {
        return card;
    }

    @Override
    public List<Outcome> judge(Judgement judgement) {
        List<Outcome> outcomes = ask(() -> List.copyOf(rule.judge(judgement)));
        for (Outcome outcome : outcomes) {
            if (!outcome.rule().equals(card.id())) {
                throw new PackFault("it answered for another rule, " + outcome.rule());
            }
            if (outcome.kind() == null || outcome.level() == null || outcome.during() == null) {
                throw new PackFault("it gave an outcome without kind, level or case");
            }
            worded(outcome.message());
        }
        return outcomes;
    }

    @Override
    public List<WayOut> waysOut(Judgement judgement, Outcome failure) {
        List<WayOut> ways = ask(() -> List.copyOf(rule.waysOut(judgement, failure)));
        ways.forEach(way -> worded(way.message()));
        return ways;
    }

    private void worded(Message message) {
        if (!CommonMessages.ARGUMENTS.containsKey(message.id()) && !texts.contains(card.id() + "." + message.id())) {
            throw new PackFault("its message " + message.id() + " has no text");
        }
        for (Arg arg : message.args()) {
            if (arg.name() == null || arg.value() == null || (arg.value() instanceof Arg.Word w && w.text() == null)) {
                throw new PackFault("its message " + message.id() + " has an argument without a value");
            }
        }
    }

    private <T> T ask(java.util.function.Supplier<T> question) {
        TookTooLong before = stuck.get();
        if (before != null) {
            throw before;
        }
        try {
            return watch.ask("it", question);
        } catch (TookTooLong e) {
            stuck.set(e);
            throw e;
        }
    }
}
