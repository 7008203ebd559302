package org.leat.settings;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leat.check.Level;
import org.leat.check.NamedLimit;
import org.leat.check.NamedLimit.Safer;
import org.leat.check.RuleCard;
import org.leat.check.Settings;
import org.leat.check.Settings.FailOn;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LevelChange;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.RuleSettings;
import org.leat.check.Settings.Switch;
import org.leat.check.Suppression;
import org.leat.design.ElementPath;
import org.leat.file.Names;
import org.leat.file.PlainValue;
import org.leat.file.Position;
import org.leat.file.Problem;
import org.leat.file.ProblemKind;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Takes one settings file at its word, rule by rule. */
final class LayerSettings {

    private final Layer layer;
    private final Map<String, RuleCard> cards = new TreeMap<>();
    private final List<Problem> problems = new ArrayList<>();
    private final Settings settings;

    LayerSettings(Layer layer, Collection<RuleCard> rules) {
        this.layer = layer;
        rules.forEach(card -> cards.put(card.id(), card));
        Map<String, RuleSettings> changes = new TreeMap<>();
        layer.file().rules().forEach((id, change) -> {
            String path = ElementPath.named("/rules", id, 0);
            RuleCard card = cards.get(id);
            if (card == null) {
                unknown(id, layer.key(path), path);
            } else {
                changes.put(id, change(card, change, path));
            }
        });
        Level level = layer.file().failOn();
        FailOn failOn = level == null
                ? null
                : new FailOn(level, layer.setAt(layer.positions().of("/fail-on")));
        settings = new Settings(changes, failOn, layer.packs(), suppressions());
    }

    Settings settings() {
        return settings;
    }

    List<Problem> problems() {
        return problems;
    }

    private void unknown(String id, Position at, String path) {
        problem(ProblemKind.UNKNOWN_RULE, at, path, id, "a rule's id", Names.nearest(id, cards.keySet()));
    }

    private RuleSettings change(RuleCard card, RuleChange change, String path) {
        Position key = layer.key(path);
        if (change.limits().isEmpty() && change.level() == null && change.off() == null) {
            problem(ProblemKind.NOTHING_CHANGED, key, path, "", "limits, level or off", "");
        }
        grounded(change, path);
        Map<String, LimitChange> limits = new TreeMap<>();
        change.limits().forEach((name, value) -> {
            String at = ElementPath.named(path + "/limits", name, 0);
            NamedLimit limit = card.limits().get(name);
            if (limit == null) {
                List<String> known = List.copyOf(card.limits().keySet());
                problems.add(new Problem(
                        ProblemKind.UNKNOWN_LIMIT,
                        layer.key(at),
                        at,
                        name,
                        "a limit of " + card.id(),
                        Names.nearest(name, known),
                        known));
                return;
            }
            si(limit, value, at).ifPresent(si -> {
                Grounds grounds = grounds(change, layer.key(at));
                allowed(card, limit, si, grounds, value, at);
                limits.put(name, new LimitChange(si, grounds));
            });
        });
        return new RuleSettings(limits, level(card, change, path), off(card, change, path));
    }

    private void allowed(RuleCard card, NamedLimit limit, double si, Grounds grounds, PlainValue value, String path) {
        Position at = layer.positions().of(path);
        if (!limit.allows(si)) {
            String expected = (limit.safer() == Safer.HIGHER ? "at least 1" : "at most 1") + ", whoever answers for it";
            problem(ProblemKind.IMPOSSIBLE_VALUE, at, path, value.text(), expected, "");
        } else if (card.canHurt() && limit.isLoosenedBy(si) && !grounds.answersForDanger()) {
            nobodyAnswers(at, path, value.text());
        }
    }

    private void grounded(RuleChange change, String path) {
        if (change.reason().isBlank()) {
            missing(path + "/reason", "a reason");
        }
        String by = change.by();
        boolean named =
                by != null && by.codePoints().filter(Character::isLetter).count() > 1;
        if ((by != null || change.danger() != null) && !named) {
            missing(path + "/by", "a person's name");
        }
    }

    private void missing(String path, String expected) {
        problem(ProblemKind.MISSING_FIELD, layer.positions().of(path), path, "", expected, "");
    }

    private OptionalDouble si(NamedLimit limit, PlainValue value, String path) {
        Position at = layer.positions().of(path);
        PlainValue.Taken taken = value.as(limit.kind(), at, path);
        if (taken instanceof PlainValue.Refused refused) {
            problems.add(refused.problem());
            return OptionalDouble.empty();
        }
        double si = Si.of(((PlainValue.Understood) taken).quantity());
        boolean signed = limit.kind() == QuantityKind.TEMPERATURE || limit.standard() < 0;
        if (si < 0 && !signed) {
            problem(ProblemKind.IMPOSSIBLE_VALUE, at, path, value.text(), "no less than nothing", "");
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(si);
    }

    private @Nullable LevelChange level(RuleCard card, RuleChange change, String path) {
        Level level = change.level();
        if (level == null) {
            return null;
        }
        Position at = layer.positions().of(path + "/level");
        Grounds grounds = grounds(change, at);
        if (card.canHurt() && level.compareTo(card.level()) < 0 && !grounds.answersForDanger()) {
            nobodyAnswers(at, path + "/level", level.word());
        }
        return new LevelChange(level, grounds);
    }

    private @Nullable Switch off(RuleCard card, RuleChange change, String path) {
        Boolean off = change.off();
        if (off == null) {
            return null;
        }
        Position at = layer.positions().of(path + "/off");
        Grounds grounds = grounds(change, at);
        if (off && card.canHurt() && !grounds.answersForDanger()) {
            nobodyAnswers(at, path + "/off", "off");
        }
        return new Switch(off, grounds);
    }

    private void nobodyAnswers(Position at, String path, String found) {
        String expected = "by: and the name of a person, and danger: accepted";
        problem(ProblemKind.NOBODY_ANSWERS, at, path, found, expected, "");
    }

    private Grounds grounds(RuleChange change, Position at) {
        return new Grounds(layer.setAt(at), change.reason(), change.by(), change.danger() != null);
    }

    private List<Suppression> suppressions() {
        List<Suppression> all = new ArrayList<>();
        List<FindingOfDesign> given = layer.file().suppressions();
        for (int i = 0; i < given.size(); i++) {
            String path = ElementPath.named("/suppressions", null, i);
            FindingOfDesign one = given.get(i);
            if (!cards.containsKey(one.rule())) {
                unknown(one.rule(), layer.positions().of(path + "/rule"), path + "/rule");
            }
            if (one.design().isBlank()) {
                missing(path + "/design", "what the design is called");
            }
            all.add(Suppression.of(
                    one.excused(), one.design(), layer.positions().of(path), false));
        }
        return all;
    }

    private void problem(ProblemKind kind, Position at, String path, String found, String expected, String nearest) {
        problems.add(new Problem(kind, at, path, shortened(found), expected, nearest, List.of()));
    }

    private static String shortened(String found) {
        return found.length() <= 60 ? found : found.substring(0, found.offsetByCodePoints(0, 30)) + "\u2026";
    }
}
