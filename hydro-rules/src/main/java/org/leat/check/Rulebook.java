package org.leat.check;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apiguardian.api.API;

/**
 * Everything a writer needs to word a report: the rules in force and the texts of all messages.
 *
 * @param rules sorted by id
 * @param texts by rule id, a dot and message id; common texts by their own key
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public record Rulebook(List<RuleInForce> rules, Map<String, String> texts) {

    public Rulebook {
        rules = List.copyOf(rules);
        texts = Collections.unmodifiableMap(new TreeMap<>(texts));
    }

    /** {@return the place of a rule in {@link #rules}, or −1} */
    public int indexOf(String ruleId) {
        for (int i = 0; i < rules.size(); i++) {
            if (rules.get(i).card().id().equals(ruleId)) {
                return i;
            }
        }
        return -1;
    }

    /**
     * {@return a rule in force}
     *
     * @throws IllegalArgumentException for an id that no pack has
     */
    public RuleInForce rule(String ruleId) {
        int index = indexOf(ruleId);
        if (index < 0) {
            throw new IllegalArgumentException("no such rule: " + ruleId);
        }
        return rules.get(index);
    }
}
