package org.leat.report;

import java.util.List;
import org.leat.check.AssumedValue;
import org.leat.plant.numbers.Assumption;

/** Assumptions for a person. */
final class AssumptionText {

    private final Wording wording;

    AssumptionText(Wording wording) {
        this.wording = wording;
    }

    List<String> lines(List<AssumedValue> assumptions) {
        return assumptions.stream().map(this::line).toList();
    }

    private String line(AssumedValue assumed) {
        Assumption a = assumed.assumption();
        String range = a.low() == a.high()
                ? ""
                : " (could be " + UsualUnits.alike(a.low(), a.value(), a.kind()) + " to "
                        + UsualUnits.alike(a.high(), a.value(), a.kind()) + ")";
        String sensitive = assumed.turns().isEmpty() ? "" : ". Sensitive to it: " + String.join(", ", assumed.rules());
        return PlainText.of(Wording.place(a.path()) + " " + UsualUnits.show(a.value(), a.kind()) + range + ", "
                + wording.phrase(a.reason()) + "; " + a.source() + sensitive);
    }
}
