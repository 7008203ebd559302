package org.leat.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is asked of a checker beyond its packs' own words.
 *
 * @param rules by rule id
 */
public record Settings(Map<String, RuleSettings> rules) {

    /** Nothing changed. */
    public static final Settings NONE = new Settings(Map.of());

    public Settings {
        rules = Collections.unmodifiableMap(new LinkedHashMap<>(rules));
    }
}
