package org.leat.check.testing;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.leat.check.Edit;
import org.leat.check.Finding;
import org.leat.check.Outcome;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.check.WayOut;
import org.leat.report.Wording;

/** Tells the findings of a report as an expectation does. */
final class Telling {

    private final Wording wording;

    Telling(Rulebook rulebook) {
        this.wording = new Wording(rulebook);
    }

    /** {@return every finding of a report and of its alternatives} */
    List<Told> of(Report report) {
        List<Told> told = new ArrayList<>();
        report.findings().forEach(finding -> told.add(of(finding, report.alternative())));
        report.alternatives().forEach(alternative -> told.addAll(of(alternative)));
        return told;
    }

    /** {@return a finding of a design or of an alternative of it; "" for the design itself} */
    Told of(Finding finding, String alternative) {
        Outcome outcome = finding.outcome();
        String missing = outcome.missing();
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("kind", outcome.kind().word());
        facts.put("level", outcome.level().word());
        facts.put(
                Told.POSITION,
                finding.position().line() + ":" + finding.position().column());
        facts.put("at", outcome.path());
        facts.put("case", outcome.during());
        facts.put("alternative", alternative);
        facts.put("value", wording.value(outcome));
        facts.put("limit", wording.limit(outcome));
        facts.put("missing", missing == null ? "" : missing);
        facts.values().removeIf(String::isEmpty);
        List<Told.Way> ways =
                finding.waysOut().stream().map(way -> of(way, outcome)).toList();
        return new Told(outcome.rule(), facts, wording.of(outcome), ways);
    }

    private Told.Way of(WayOut way, Outcome outcome) {
        Map<String, String> edits = new LinkedHashMap<>();
        for (Edit edit : way.edits()) {
            edits.put(edit.path(), EditText.of(edit.value()));
        }
        return new Told.Way(wording.of(way, outcome), watts(way.gain()), edits);
    }

    /** To a tenth of a watt; empty for advice. */
    private static String watts(OptionalDouble gain) {
        if (gain.isEmpty()) {
            return "";
        }
        String rounded = String.format(Locale.ROOT, "%+.1f W", gain.getAsDouble());
        return rounded.substring(1).equals("0.0 W") ? "0 W" : rounded;
    }
}
