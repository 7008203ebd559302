package org.leat.check;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.check.Settings.Switch;

/**
 * A rule as a checker runs it: its card with the settings applied.
 *
 * @param card what the rule says about itself
 * @param pack the pack it comes from
 * @param level of an ordinary failure
 * @param limits in force, by name
 * @param off why it does not run; null if it does
 * @param changes what settings say about it, each with where they say it
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record RuleInForce(
        RuleCard card,
        String pack,
        Level level,
        Map<String, Limit> limits,
        @Nullable String off,
        RuleSettings changes) {

    public RuleInForce {
        limits = Collections.unmodifiableMap(new LinkedHashMap<>(limits));
    }

    static RuleInForce of(RuleCard card, String pack, @Nullable RuleSettings settings) {
        RuleSettings changes = settings == null ? RuleSettings.NONE : settings;
        Map<String, Limit> limits = new LinkedHashMap<>();
        card.limits().forEach((name, named) -> {
            LimitChange change = changes.limits().get(name);
            limits.put(
                    name,
                    change == null
                            ? new Limit(named, named.standard(), null)
                            : new Limit(named, change.value(), change.grounds().setBy()));
        });
        Level level = changes.level() == null ? card.level() : changes.level().level();
        Switch off = changes.off();
        String why = off == null || !off.off() ? null : off.grounds().reason();
        return new RuleInForce(card, pack, level, limits, why, changes);
    }

    /**
     * {@return the level in force of a case that the rule itself holds to be that bad}
     *
     * <p>Settings name the level of the ordinary failure; a case that is worse or milder than that stays as many steps
     * worse or milder, as far as there are levels.
     */
    public Level inForce(Level own) {
        List<Level> levels = List.of(Level.values());
        int moved = levels.indexOf(own) + levels.indexOf(level) - levels.indexOf(card.level());
        return levels.get(Math.min(levels.size() - 1, Math.max(0, moved)));
    }

    /** {@return whether a finding of that level in force is, by the rule's own word, an error that can hurt someone} */
    public boolean endangers(Level found) {
        return card.endangers() && found.compareTo(inForce(Level.ERROR)) >= 0;
    }

    /** {@return whether a failure at that level in force is, by the rule's own word, no error and yet of what can hurt someone} */
    public boolean warnsOfDanger(Level found) {
        return card.warningsHurt() && found.compareTo(inForce(Level.WARNING)) >= 0 && !endangers(found);
    }

    /** {@return whether a failure at that level in force, or a question of one, is of what can hurt someone} */
    public boolean hurts(Level found) {
        return endangers(found) || warnsOfDanger(found);
    }

    /** {@return whether settings hide or play down what can hurt someone, or loosen a limit that protects} */
    public boolean playsDownDanger() {
        return card.canHurt()
                && (off != null
                        || level.compareTo(card.level()) < 0
                        || !loosened().isEmpty());
    }

    /** {@return limits that protect people and that settings move to the unsafe side, in the card's order} */
    public List<Limit> loosened() {
        return limits.values().stream()
                .filter(limit -> card.canHurt()
                        && limit.changedBy() != null
                        && limit.named().isLoosenedBy(limit.value()))
                .toList();
    }
}
