package org.leat.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leat.check.CommonMessages;
import org.leat.check.Limit;
import org.leat.check.NamedLimit;
import org.leat.check.RuleCard;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;

/** Rules as SARIF's reporting descriptors, sorted, with one of our own for files that cannot be read. */
final class SarifRules {

    /** Stands for a file that could not be read as a design. */
    static final String READABLE = "file/readable";

    private static final String OUR_PACK = "built-in";

    private final Map<String, Integer> index = new LinkedHashMap<>();
    private final List<SarifModel.Descriptor> descriptors;
    private final List<SarifModel.ConfigurationOverride> overrides = new ArrayList<>();

    /**
     * Makes the descriptors.
     *
     * @param pages the address of the documentation, ending with a slash; null for none
     */
    SarifRules(Rulebook rulebook, Wording wording, @Nullable String pages) {
        Map<String, SarifModel.Descriptor> byId = new TreeMap<>();
        byId.put(READABLE, readable());
        for (RuleInForce rule : rulebook.rules()) {
            byId.put(rule.card().id(), descriptor(rule, wording, pages));
        }
        byId.keySet().forEach(id -> index.put(id, index.size()));
        descriptors = List.copyOf(byId.values());
        for (RuleInForce rule : rulebook.rules()) {
            SarifModel.ConfigurationOverride override = override(rule);
            if (override != null) {
                overrides.add(override);
            }
        }
    }

    List<SarifModel.Descriptor> descriptors() {
        return descriptors;
    }

    List<SarifModel.ConfigurationOverride> overrides() {
        return overrides;
    }

    /** {@return the place of a rule among the descriptors; −1, the standard's word for none, if it is not there} */
    int indexOrNone(String ruleId) {
        return index.getOrDefault(ruleId, -1);
    }

    int index(String ruleId) {
        Integer at = index.get(ruleId);
        if (at == null) {
            throw new IllegalArgumentException("no such rule: " + ruleId);
        }
        return at;
    }

    private static SarifModel.Descriptor readable() {
        return new SarifModel.Descriptor(
                READABLE,
                new SarifModel.Text("The file reads as a design"),
                new SarifModel.Text("A file that cannot be read as a design is not checked."),
                new SarifModel.Help("Correct the file at the place shown.", "Correct the file at the place shown."),
                null,
                null,
                new SarifModel.Configuration(true, "error", null),
                Map.of());
    }

    private static SarifModel.Descriptor descriptor(RuleInForce rule, Wording wording, @Nullable String pages) {
        RuleCard card = rule.card();
        Map<String, SarifModel.Text> messages = new LinkedHashMap<>();
        List<String> ids = new ArrayList<>(card.texts().keySet());
        ids.addAll(new TreeMap<>(CommonMessages.ARGUMENTS).keySet());
        for (String id : ids) {
            String template = wording.numbered(card.id(), id);
            if (template != null) {
                messages.put(id, new SarifModel.Text(template));
            }
        }
        Map<String, Object> properties = new LinkedHashMap<>();
        properties.put("pack", rule.pack());
        properties.put("sources", card.sources());
        return new SarifModel.Descriptor(
                card.id(),
                new SarifModel.Text(card.title()),
                new SarifModel.Text(card.why()),
                help(card),
                // packs of others have no page among ours
                pages != null && rule.pack().equals(OUR_PACK) ? pages + "docs/rules/" + card.id() + ".html" : null,
                messages,
                new SarifModel.Configuration(true, card.level().word(), standard(card)),
                properties);
    }

    private static SarifModel.Help help(RuleCard card) {
        String text = card.why() + "\n\nFormula: " + card.formula() + "\nCase: " + card.judged() + "\nSource: "
                + String.join("; ", card.sources());
        String markdown = card.why() + "\n\n- **Formula:** " + card.formula() + "\n- **Case:** " + card.judged()
                + "\n- **Source:** " + String.join("; ", card.sources());
        return new SarifModel.Help(text, markdown);
    }

    private static @Nullable Map<String, Object> standard(RuleCard card) {
        if (card.limits().isEmpty()) {
            return null;
        }
        Map<String, Object> parameters = new LinkedHashMap<>();
        for (NamedLimit limit : card.limits().values()) {
            parameters.put(limit.name(), parameter(limit, limit.standard()));
        }
        return parameters;
    }

    private static SarifModel.@Nullable ConfigurationOverride override(RuleInForce rule, int at) {
        Map<String, Object> changed = new LinkedHashMap<>();
        for (Limit limit : rule.limits().values()) {
            if (limit.changedBy() != null) {
                changed.put(limit.name(), parameter(limit.named(), limit.value()));
            }
        }
        boolean same = rule.level() == rule.card().level() && rule.off() == null && changed.isEmpty();
        return same
                ? null
                : new SarifModel.ConfigurationOverride(
                        new SarifModel.Configuration(
                                rule.off() == null, rule.level().word(), changed.isEmpty() ? null : changed),
                        new SarifModel.DescriptorReference(rule.card().id(), at),
                        Map.of("changes", SettingsText.changes(rule)));
    }

    private SarifModel.@Nullable ConfigurationOverride override(RuleInForce rule) {
        return override(rule, index(rule.card().id()));
    }

    private static String parameter(NamedLimit limit, double si) {
        return UsualUnits.show(si, limit.kind(), limit.unit(), 6);
    }
}
