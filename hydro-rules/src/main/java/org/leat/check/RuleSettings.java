package org.leat.check;

import java.util.Collections;
import java.util.Map;
import java.util.TreeMap;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * What settings say about one rule.
 *
 * @param limits changed limits by name
 * @param level in place of the rule's own; null to keep that
 * @param off whether it does not run; null to leave that as it is
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record RuleSettings(
        Map<String, LimitChange> limits,
        @Nullable LevelChange level,
        @Nullable Switch off) {

    /** Nothing changed. */
    public static final RuleSettings NONE = new RuleSettings(Map.of(), null, null);

    public RuleSettings {
        limits = Collections.unmodifiableMap(new TreeMap<>(limits));
    }

    /** {@return these, and what others say where these say nothing} Each limit, the level and the switch on their own. */
    public RuleSettings over(RuleSettings farther) {
        Map<String, LimitChange> all = new TreeMap<>(farther.limits);
        all.putAll(limits);
        return new RuleSettings(all, level == null ? farther.level : level, off == null ? farther.off : off);
    }
}
