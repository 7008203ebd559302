package org.leat.check;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.file.Position;

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

    /**
     * What settings say about one rule.
     *
     * @param limits changed limits by name
     * @param level in place of the rule's own; null to keep that
     * @param off whether it does not run; null to leave that as it is
     */
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

    /**
     * The least level that makes a run fail.
     *
     * @param level that and worse
     * @param setBy the settings file and line, or a name
     */
    public record FailOn(Level level, String setBy) {}

    /**
     * A level changed by settings.
     *
     * @param level of a rule's ordinary failure; its worse and milder cases move by as many steps
     * @param grounds who says so and why
     */
    public record LevelChange(Level level, Grounds grounds) {}

    /**
     * A limit changed by settings.
     *
     * @param value in SI
     * @param grounds who says so and why
     */
    public record LimitChange(double value, Grounds grounds) {}

    /**
     * A rule switched off by settings, or on again by nearer ones.
     *
     * @param off whether it does not run
     * @param grounds who says so and why
     */
    public record Switch(boolean off, Grounds grounds) {}

    /**
     * A pack that settings ask for.
     *
     * @param name as it is asked for
     * @param at where
     */
    public record PackUse(String name, Position at) {}

    /**
     * On what grounds settings change a rule.
     *
     * @param setBy the settings file and line, or a name
     * @param reason why
     * @param person who answers for it; null where nobody is named
     * @param danger whether that person says in so many words that the danger is known
     */
    public record Grounds(
            String setBy, String reason, @Nullable String person, boolean danger) {

        /** {@return grounds that name nobody} */
        public static Grounds of(String setBy, String reason) {
            return new Grounds(setBy, reason, null, false);
        }

        /** {@return whether a named person answers for the danger} */
        public boolean answersForDanger() {
            return person != null && danger;
        }
    }
}
