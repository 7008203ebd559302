package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Limit;
import org.leat.check.RuleInForce;
import org.leat.check.Rulebook;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LevelChange;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Settings.Switch;

/** What settings change, each with where they say so and why: for a person. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class SettingsText {

    /** Over the lines of {@link #playedDown}. */
    public static final String LOOSENED = "Off, played down or loosened by settings, and can hurt someone";

    private static final int DIGITS = 6;

    private SettingsText() {}

    /** {@return a line for each change of a rule in force} */
    public static List<String> changes(Rulebook rulebook) {
        List<String> lines = new ArrayList<>();
        rulebook.rules().forEach(rule -> lines.addAll(changes(rule)));
        return lines;
    }

    /** {@return what is off, played down or loosened although it can hurt someone, a line for each change} */
    public static List<String> playedDown(Rulebook rulebook) {
        List<String> lines = new ArrayList<>();
        for (RuleInForce rule : rulebook.rules()) {
            if (rule.playsDownDanger()) {
                lines.addAll(switched(rule));
                rule.loosened().forEach(limit -> lines.addAll(changed(rule, limit)));
            }
        }
        return lines;
    }

    /** {@return the rules that settings switch off, play down or loosen although they can hurt someone, in a sentence; "" for none} */
    public static String inOneLine(Rulebook rulebook) {
        List<String> ids = rulebook.rules().stream()
                .filter(RuleInForce::playsDownDanger)
                .map(rule -> rule.card().id())
                .toList();
        return ids.isEmpty() ? "" : "Settings loosen what protects people: " + String.join(", ", ids) + ".";
    }

    /** {@return a line for each change of one rule} */
    static List<String> changes(RuleInForce rule) {
        List<String> lines = switched(rule);
        rule.limits().values().forEach(limit -> lines.addAll(changed(rule, limit)));
        return lines;
    }

    private static List<String> switched(RuleInForce rule) {
        List<String> lines = new ArrayList<>();
        String id = rule.card().id();
        Switch off = rule.changes().off();
        if (off != null) {
            lines.add(id + "  " + (off.off() ? "off" : "on") + "  " + said(off.grounds()));
        }
        LevelChange level = rule.changes().level();
        if (level != null) {
            lines.add(id + "  level " + level.level().word() + ", the rule's own is "
                    + rule.card().level().word() + "  " + said(level.grounds()));
        }
        return lines;
    }

    private static List<String> changed(RuleInForce rule, Limit limit) {
        LimitChange change = rule.changes().limits().get(limit.name());
        return change == null
                ? List.of()
                : List.of(rule.card().id() + "  limit " + limit.name() + " " + value(limit, limit.value())
                        + ", the rule's own is " + value(limit, limit.named().standard()) + "  "
                        + said(change.grounds()));
    }

    private static String said(Grounds grounds) {
        String person = grounds.person() == null
                ? ""
                : " (" + PlainText.of(grounds.person()) + (grounds.danger() ? " accepts the danger" : "") + ")";
        return PlainText.of(grounds.setBy()) + ": " + PlainText.of(grounds.reason()) + person;
    }

    /** {@return a limit's value in the unit in which its rule states it} */
    static String value(Limit limit, double si) {
        return UsualUnits.show(si, limit.kind(), limit.named().unit(), DIGITS);
    }
}
