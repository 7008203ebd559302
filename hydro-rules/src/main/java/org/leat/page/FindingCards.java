package org.leat.page;

import java.util.List;
import java.util.stream.Collectors;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Paths;
import org.leat.check.RejectedChange;
import org.leat.check.SensitiveVerdict;
import org.leat.check.WayOut;
import org.leat.report.SuppressionText;
import org.leat.report.Wording;

/** Findings with their ways out. */
final class FindingCards {

    private final Wording wording;

    FindingCards(Wording wording) {
        this.wording = wording;
    }

    /** Writes what there is to say about each finding, in the order given; nothing for none. */
    void write(Markup page, List<Finding> findings) {
        for (Finding finding : findings) {
            card(page, finding);
        }
    }

    private void card(Markup page, Finding finding) {
        Outcome outcome = finding.outcome();
        String level = outcome.kind() == Kind.FAIL
                ? outcome.level().word()
                : outcome.kind().word();
        page.open("article", "class", "finding is-" + level);
        page.open("h3");
        page.leaf("span", level, "class", "level");
        page.text(" ").leaf("span", wording.title(outcome), "class", "about");
        page.close();
        page.leaf("p", wording.of(finding), "class", "said");
        String during = outcome.during().isEmpty() ? "" : ", in the case " + outcome.during();
        if (outcome.comparison() != null) {
            page.leaf(
                    "p",
                    wording.value(outcome) + ", limit " + wording.limit(outcome) + ", " + wording.margin(outcome)
                            + during + ".",
                    "class",
                    "compared");
        } else if (!during.isEmpty()) {
            page.leaf("p", "In the case " + outcome.during() + ".", "class", "compared");
        }
        waysOut(page, finding);
        page.open("p", "class", "where");
        page.leaf("code", outcome.rule()).text(" at ").leaf("code", Paths.shown(outcome.path()));
        page.text(", " + finding.position() + ". Source: " + wording.source(outcome) + ".");
        if (!finding.restsOn().isEmpty()) {
            page.text(" Rests on what was assumed of "
                    + finding.restsOn().stream()
                            .map(SensitiveVerdict::field)
                            .map(Paths::shown)
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        if (!finding.counts()) {
            page.text(" Does not count: " + SuppressionText.of(finding) + ".");
        }
        if (finding.broke()) {
            page.text(" The rule broke while looking for ways out.");
        }
        page.close();
        page.close();
    }

    private void waysOut(Markup page, Finding finding) {
        if (finding.waysOut().isEmpty() && finding.rejected().isEmpty()) {
            return;
        }
        page.open("ul", "class", "ways");
        for (WayOut way : finding.waysOut()) {
            page.open("li").leaf("span", "Way out: ", "class", "lead-in").text(wording.of(way, finding.outcome()));
            if (way.gain().isPresent()) {
                page.text(" ").leaf("span", "(" + gain(way.gain().getAsDouble()) + ")", "class", "gain");
            }
            page.close();
        }
        for (RejectedChange tried : finding.rejected()) {
            page.open("li", "class", "vain").leaf("span", "Tried in vain: ", "class", "lead-in");
            page.text(wording.of(tried.way(), finding.outcome()) + " Then " + tried.brings() + " fails.");
            page.close();
        }
        page.close();
    }

    private static String gain(double watts) {
        long rounded = Math.round(watts);
        return rounded == 0 ? "\u00b10 W" : (rounded > 0 ? "+" : "\u2212") + Math.abs(rounded) + " W";
    }
}
