package org.leat.report.testing;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.leat.check.Finding;
import org.leat.check.Outcome;
import org.leat.check.Rulebook;
import org.leat.report.Wording;

/** Findings as an expectation tells them. */
final class Told {

    private final Wording wording;

    Told(Rulebook rulebook) {
        this.wording = new Wording(rulebook);
    }

    /**
     * One finding.
     *
     * @param fields what is told of it, in order
     */
    record Line(Map<String, String> fields) {

        /** {@return whether a finding is as this line says, as far as it says anything} */
        boolean isMetBy(Line found) {
            return fields.entrySet().stream()
                    .allMatch(e -> e.getValue().equals(found.fields().get(e.getKey())));
        }

        /** {@return the line in an expectation file} */
        String yaml(String indent) {
            StringBuilder text = new StringBuilder();
            String first = fields.keySet().iterator().next();
            fields.forEach((name, value) -> text.append(indent)
                    .append(name.equals(first) ? "- " : "  ")
                    .append(name)
                    .append(": \"")
                    .append(value.replace("\\", "\\\\").replace("\"", "\\\""))
                    .append("\"\n"));
            return text.toString();
        }
    }

    List<Line> lines(List<Finding> findings) {
        return findings.stream().map(this::line).toList();
    }

    private Line line(Finding finding) {
        Outcome outcome = finding.outcome();
        Map<String, String> fields = new LinkedHashMap<>();
        fields.put("rule", outcome.rule());
        fields.put("kind", outcome.kind().word());
        fields.put("level", outcome.level().word());
        fields.put("at", finding.position().line() + ":" + finding.position().column());
        fields.put("path", outcome.path());
        if (!outcome.during().isEmpty()) {
            fields.put("case", outcome.during());
        }
        if (outcome.comparison() != null) {
            fields.put("value", wording.value(outcome));
            fields.put("limit", wording.limit(outcome));
        }
        if (outcome.missing() != null) {
            fields.put("missing", outcome.missing());
        }
        fields.put("text", wording.of(outcome));
        return new Line(fields);
    }
}
