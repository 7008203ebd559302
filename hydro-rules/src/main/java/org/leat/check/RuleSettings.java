package org.leat.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import org.jspecify.annotations.Nullable;

/**
 * What settings say about one rule.
 *
 * @param limits changed limits by name
 * @param level in place of the rule's own; null to keep that
 * @param off why the rule does not run; null if it does
 * @param by who says so: the settings file and line, or a name
 */
public record RuleSettings(
        Map<String, LimitChange> limits,
        @Nullable Level level,
        @Nullable String off,
        String by) {

    public RuleSettings {
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    }
}
