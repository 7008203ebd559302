package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.leat.check.Limit;
import org.leat.check.Report;
import org.leat.check.RuleInForce;
import org.leat.check.Settings.Grounds;
import org.leat.check.Settings.LimitChange;
import org.leat.check.Suppression;
import org.leat.check.Suppression.IdleSuppression;
import org.leat.file.Names;

/** What settings, suppressions and the baseline come to, in the shapes of {@link JsonModel}; null where they say nothing. */
final class JsonAccepted {

    private JsonAccepted() {}

    static JsonModel.SuppressionEntry suppression(Suppression s, @Nullable String idle, @Nullable String text) {
        return new JsonModel.SuppressionEntry(
                s.rule(),
                s.at(),
                s.during().isEmpty() ? null : s.during(),
                s.reason(),
                s.until() == null ? null : s.until().toString(),
                s.by(),
                s.danger() ? Boolean.TRUE : null,
                s.inDesign(),
                JsonShapes.place(s.position()),
                idle,
                text);
    }

    static @Nullable List<JsonModel.SuppressionEntry> idle(Report report) {
        List<JsonModel.SuppressionEntry> all = new ArrayList<>();
        for (IdleSuppression idle : report.idle()) {
            String text = SuppressionText.of(idle, report.day());
            all.add(suppression(idle.suppression(), Names.ofConstant(idle.why()), text));
        }
        return all.isEmpty() ? null : all;
    }

    static @Nullable List<JsonModel.AbsentEntry> absent(Report report) {
        List<JsonModel.AbsentEntry> all = report.absent().stream()
                .map(a -> new JsonModel.AbsentEntry(
                        a.identity().rule(),
                        a.identity().path(),
                        a.identity().during(),
                        a.kind().word(),
                        a.level().word(),
                        a.text()))
                .toList();
        return all.isEmpty() ? null : all;
    }

    static @Nullable List<JsonModel.ChangeEntry> changes(RuleInForce rule) {
        List<JsonModel.ChangeEntry> all = new ArrayList<>();
        if (rule.changes().off() != null) {
            all.add(change(
                    "off",
                    rule.changes().off().off() ? "off" : "on",
                    rule.changes().off().grounds()));
        }
        if (rule.changes().level() != null) {
            String word = rule.changes().level().level().word();
            all.add(change("level", word, rule.changes().level().grounds()));
        }
        for (Limit limit : rule.limits().values()) {
            LimitChange change = rule.changes().limits().get(limit.name());
            if (change != null) {
                all.add(change("limit " + limit.name(), SettingsText.value(limit, limit.value()), change.grounds()));
            }
        }
        return all.isEmpty() ? null : all;
    }

    private static JsonModel.ChangeEntry change(String what, String setTo, Grounds g) {
        Boolean danger = g.danger() ? Boolean.TRUE : null;
        return new JsonModel.ChangeEntry(what, setTo, g.setBy(), g.reason(), g.person(), danger);
    }
}
