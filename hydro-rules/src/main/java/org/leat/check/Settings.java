package org.leat.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * What is asked of a checker beyond its packs' own words.
 *
 * @param rules by rule id
 * @param failOn the least level that makes a run fail; null where nothing is said
 * @param packs asked for beside the built-in rules
 * @param suppressions of single findings, each of one named design
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Settings(
        Map<String, RuleSettings> rules, @Nullable FailOn failOn, List<PackUse> packs, List<Suppression> suppressions) {

    /** Nothing changed. */
    public static final Settings NONE = new Settings(Map.of());

    public Settings {
        rules = Collections.unmodifiableMap(new TreeMap<>(rules));
        packs = List.copyOf(packs);
        suppressions = List.copyOf(suppressions);
    }

    /** Changes rules and nothing else. */
    public Settings(Map<String, RuleSettings> rules) {
        this(rules, null, List.of(), List.of());
    }

    /**
     * {@return these settings over others: the nearer win wherever both speak}
     *
     * <p>Packs and suppressions of both hold, the farther first. {@code a.over(b).over(c)} is the same as
     * {@code a.over(b.over(c))}.
     */
    public Settings over(Settings farther) {
        Map<String, RuleSettings> all = new TreeMap<>(farther.rules);
        rules.forEach((id, nearer) -> all.merge(id, nearer, (far, near) -> near.over(far)));
        List<PackUse> bothPacks = new ArrayList<>(farther.packs);
        packs.stream()
                .filter(p -> bothPacks.stream().noneMatch(b -> b.name().equals(p.name())))
                .forEach(bothPacks::add);
        List<Suppression> bothSuppressions = new ArrayList<>(farther.suppressions);
        suppressions.stream().filter(s -> !bothSuppressions.contains(s)).forEach(bothSuppressions::add);
        return new Settings(all, failOn == null ? farther.failOn : failOn, bothPacks, bothSuppressions);
    }
}
