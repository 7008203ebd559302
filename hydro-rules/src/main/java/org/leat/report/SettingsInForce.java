package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Limit;
import org.leat.check.Paths;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.check.Settings;
import org.leat.check.Settings.FailOn;
import org.leat.check.Settings.PackUse;
import org.leat.check.Suppression;

/** Every setting in force with the file and line it came from: for a person. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class SettingsInForce {

    private SettingsInForce() {}

    /**
     * {@return the lines}
     *
     * @param names of the settings files, the nearest first
     * @param more packs that the call names
     * @param all whether what no file changes is told too
     */
    public static List<String> lines(
            Rulebook rulebook, Settings settings, List<String> names, List<String> more, boolean all) {
        List<String> lines = new ArrayList<>();
        lines.add(names.isEmpty() ? "no settings file" : "settings files, the nearest first: " + joined(names));
        FailOn failOn = settings.failOn();
        lines.add("fail-on  "
                + (failOn == null
                        ? "error  the program's own"
                        : failOn.level().word() + "  " + PlainText.of(failOn.setBy())));
        for (PackUse pack : settings.packs()) {
            lines.add("pack  " + PlainText.of(pack.name()) + "  "
                    + PlainText.of(pack.at().file()) + ":" + pack.at().line());
        }
        more.forEach(pack -> lines.add("pack  " + PlainText.of(pack) + "  the call"));
        for (RuleInForce rule : rulebook.rules()) {
            lines.addAll(SettingsText.changes(rule));
            if (all) {
                lines.addAll(own(rule));
            }
        }
        for (Suppression s : settings.suppressions()) {
            lines.add("suppression  " + s.rule() + "  "
                    + PlainText.of(s.design() + "  " + Paths.plain(s.at()) + "  " + SuppressionText.of(s)));
        }
        return lines;
    }

    private static List<String> own(RuleInForce rule) {
        List<String> lines = new ArrayList<>();
        String id = rule.card().id();
        if (rule.changes().level() == null) {
            lines.add(id + "  level " + rule.level().word() + "  the rule's own");
        }
        for (Limit limit : rule.limits().values()) {
            if (limit.changedBy() == null) {
                lines.add(id + "  limit " + limit.name() + " " + SettingsText.value(limit, limit.value())
                        + "  the rule's own: " + PlainText.of(limit.named().source()));
            }
        }
        return lines;
    }

    private static String joined(List<String> names) {
        return PlainText.of(String.join(", ", names));
    }
}
