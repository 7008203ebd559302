package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Limit;
import org.leat.check.RuleInForce;

/** How a settings file changes a rule: the piece of it that says what holds now. */
final class RuleInSettings {

    private static final int DIGITS = 6;

    private RuleInSettings() {}

    /** {@return lines of Markdown} */
    static List<String> lines(RuleInForce rule) {
        List<String> lines = new ArrayList<>();
        lines.add(
                rule.limits().isEmpty()
                        ? "The rule has no limit to change. Its level can be, and it can be switched off; each needs a reason:"
                        : "What holds now; change what you need, and say why:");
        lines.add("");
        lines.add("```yaml");
        lines.add("rules:");
        lines.add("  " + rule.card().id() + ":");
        lines.add("    level: " + rule.level().word());
        if (!rule.limits().isEmpty()) {
            lines.add("    limits:");
            rule.limits().values().forEach(limit -> lines.add("      " + limit.name() + ": " + value(limit)));
        }
        lines.add("    reason: why this holds for us");
        lines.add("```");
        return lines;
    }

    private static String value(Limit limit) {
        return UsualUnits.show(limit.value(), limit.kind(), limit.named().unit(), DIGITS);
    }
}
