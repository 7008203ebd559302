package org.leat.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * A rule as a checker runs it: its card with the settings applied.
 *
 * @param card what the rule says about itself
 * @param pack the pack it comes from
 * @param level of a failure
 * @param limits in force, by name
 * @param off why it does not run; null if it does
 */
public record RuleInForce(
        RuleCard card,
        String pack,
        Level level,
        Map<String, Limit> limits,
        @Nullable String off) {

    public RuleInForce {
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    }

    static RuleInForce of(RuleCard card, String pack, @Nullable RuleSettings settings) {
        Map<String, Limit> limits = new LinkedHashMap<>();
        card.limits().forEach((name, named) -> {
            LimitChange change = settings == null ? null : settings.limits().get(name);
            limits.put(
                    name,
                    change == null
                            ? new Limit(named, named.standard(), null)
                            : new Limit(named, change.value(), change.by()));
        });
        Level level = settings == null || settings.level() == null ? card.level() : settings.level();
        return new RuleInForce(card, pack, level, limits, settings == null ? null : settings.off());
    }
}
