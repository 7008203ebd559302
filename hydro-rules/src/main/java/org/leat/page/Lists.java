package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import org.leat.check.AssumedValue;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Paths;
import org.leat.check.Report;
import org.leat.plant.numbers.Assumption;
import org.leat.report.UsualUnits;
import org.leat.report.Wording;

/** What stands below the pictures: assumptions, open questions, sources. */
final class Lists {

    private final Report report;
    private final Wording wording;

    Lists(Report report, Wording wording) {
        this.report = report;
        this.wording = wording;
    }

    /** {@return what was assumed, with its range and the verdicts sensitive to it} */
    DataTable assumptions() {
        DataTable table = new DataTable(
                "Assumed, because the file does not say",
                "field",
                "taken as",
                "could be",
                "because",
                "sensitive to it");
        for (AssumedValue assumed : report.assumptions()) {
            Assumption a = assumed.assumption();
            table.row(
                    Paths.shown(a.path()),
                    UsualUnits.show(a.value(), a.kind()),
                    a.low() == a.high()
                            ? ""
                            : UsualUnits.alike(a.low(), a.value(), a.kind()) + " to "
                                    + UsualUnits.alike(a.high(), a.value(), a.kind()),
                    wording.phrase(a.reason()) + "; " + a.source(),
                    String.join(", ", assumed.rules()));
        }
        return table;
    }

    /** {@return findings of a kind, a row each} */
    DataTable rows(String caption, Kind kind) {
        DataTable table = new DataTable(caption, "about", "where", "said");
        for (Finding finding : report.worstFirst(kind)) {
            String during = finding.outcome().during();
            table.row(
                    wording.title(finding.outcome()),
                    Paths.shown(finding.outcome().path()) + (during.isEmpty() ? "" : " (" + during + ")"),
                    wording.of(finding));
        }
        return table;
    }

    /** {@return the design and its alternatives beside each other; empty where it has none} */
    DataTable alternatives() {
        DataTable table = new DataTable(
                "Alternatives, side by side", "choice", "errors", "warnings", "not judged", "at the battery");
        if (!report.alternatives().isEmpty()) {
            choice(table, "as designed", report);
            report.alternatives().forEach(other -> choice(table, other.alternative(), other));
        }
        return table;
    }

    private static void choice(DataTable table, String name, Report of) {
        table.row(
                name,
                Long.toString(of.failures(Level.ERROR)),
                Long.toString(of.failures(Level.WARNING)),
                Long.toString(of.count(Kind.OPEN)),
                of.running().isEmpty()
                        ? ShownText.UNKNOWN
                        : ShownText.watts(of.running().get(0).operatingPoint().batteryPower()));
    }

    /** {@return where the limits of what was judged come from, each once} */
    List<String> sources() {
        TreeSet<String> sources = new TreeSet<>();
        for (Finding finding : report.findings()) {
            Kind kind = finding.outcome().kind();
            if (kind == Kind.FAIL || kind == Kind.PASS) {
                sources.addAll(List.of(wording.source(finding.outcome()).split("; ", -1)));
            }
        }
        return new ArrayList<>(sources);
    }
}
