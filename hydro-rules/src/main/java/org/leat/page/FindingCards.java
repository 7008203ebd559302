package org.leat.page;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.leat.check.AssumedValue.SensitiveVerdict;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Paths;
import org.leat.check.WayOut;
import org.leat.check.WayOut.RejectedChange;
import org.leat.choice.Overview.GroupedFailure;
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
            card(page, new GroupedFailure(finding, List.of(), finding.waysOut(), false));
        }
    }

    /** Writes what there is to say about the failures of a rule at one place in all cases; nothing for none. */
    void writeGroups(Markup page, List<GroupedFailure> groups) {
        for (GroupedFailure group : groups) {
            card(page, group);
        }
    }

    private void card(Markup page, GroupedFailure group) {
        Finding finding = group.worst();
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
        for (Finding other : group.others()) {
            Outcome also = other.outcome();
            String what = also.comparison() == null
                    ? wording.of(other)
                    : wording.value(also) + ", limit " + wording.limit(also);
            page.leaf(
                    "p",
                    "Also " + (also.during().isEmpty() ? "" : "in the case " + also.during() + ": ") + what
                            + (what.endsWith(".") ? "" : "."),
                    "class",
                    "compared");
        }
        waysOut(page, group);
        page.open("p", "class", "where");
        page.leaf("code", outcome.rule()).text(" at ").leaf("code", Paths.shown(outcome.path()));
        page.text(", " + finding.position() + ". Source: " + wording.source(outcome) + ".");
        List<SensitiveVerdict> restsOn =
                all(group).flatMap(f -> f.restsOn().stream()).toList();
        if (!restsOn.isEmpty()) {
            page.text(" Rests on what was assumed of "
                    + restsOn.stream()
                            .map(SensitiveVerdict::field)
                            .map(Paths::shown)
                            .distinct()
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        if (!finding.counts()) {
            page.text(" Does not count: " + SuppressionText.of(finding) + ".");
        }
        if (all(group).anyMatch(Finding::broke)) {
            page.text(" The rule broke while looking for ways out.");
        }
        page.close();
        page.close();
    }

    private void waysOut(Markup page, GroupedFailure group) {
        Finding finding = group.worst();
        List<RejectedChange> rejected =
                all(group).flatMap(f -> f.rejected().stream()).distinct().toList();
        if (group.waysForAll().isEmpty() && rejected.isEmpty() && !group.onlyForSome()) {
            return;
        }
        page.open("ul", "class", "ways");
        for (WayOut way : group.waysForAll()) {
            way(page, "Way out: ", way, finding.outcome());
        }
        if (group.onlyForSome()) {
            for (Finding some : all(group).toList()) {
                for (WayOut way : some.waysOut()) {
                    way(page, "Way out only in the case " + some.outcome().during() + ": ", way, some.outcome());
                }
            }
        }
        for (RejectedChange tried : rejected) {
            page.open("li", "class", "vain").leaf("span", "Tried in vain: ", "class", "lead-in");
            page.text(wording.of(tried.way(), finding.outcome()) + " Then " + tried.brings() + " fails.");
            page.close();
        }
        page.close();
    }

    private void way(Markup page, String lead, WayOut way, Outcome outcome) {
        page.open("li").leaf("span", lead, "class", "lead-in").text(wording.of(way, outcome));
        if (way.gain().isPresent()) {
            page.text(" ")
                    .leaf(
                            "span",
                            "(" + gain(way.gain().getAsDouble()) + ")",
                            "class",
                            ShownText.gainClass(gain(way.gain().getAsDouble())));
        }
        page.close();
    }

    private static Stream<Finding> all(GroupedFailure group) {
        return Stream.concat(Stream.of(group.worst()), group.others().stream());
    }

    private static String gain(double watts) {
        long rounded = Math.round(watts);
        return rounded == 0 ? "\u00b10 W" : (rounded > 0 ? "+" : "\u2212") + Math.abs(rounded) + " W";
    }
}
