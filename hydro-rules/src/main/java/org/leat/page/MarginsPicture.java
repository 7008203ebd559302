package org.leat.page;

import java.util.List;
import org.leat.check.Comparison;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Paths;
import org.leat.check.Report;
import org.leat.report.Wording;

/** How much room is left where a rule was judged and holds, the least first. */
final class MarginsPicture {

    private static final int MOST = 12;
    private static final double ROW = 29;

    private final List<Finding> tightest;
    private final Wording wording;

    private MarginsPicture(List<Finding> tightest, Wording wording) {
        this.tightest = tightest;
        this.wording = wording;
    }

    static Figure of(Report report, Wording wording) {
        List<Finding> holding = report.findings().stream()
                .filter(f -> f.outcome().kind() == Kind.PASS && f.outcome().comparison() != null)
                .sorted(Finding.TIGHTEST_FIRST)
                .toList();
        if (holding.isEmpty()) {
            return Figure.without(Topic.MARGINS, "Nothing with a limit was judged and holds.");
        }
        MarginsPicture picture = new MarginsPicture(holding.subList(0, Math.min(MOST, holding.size())), wording);
        int rest = holding.size() - picture.tightest.size();
        return new Figure(
                Topic.MARGINS,
                "The short bars: what passes there would be the first to fail if a number is not as stated."
                        + (rest > 0 ? " " + rest + " more hold with more room." : ""),
                picture::draw,
                List.of(picture.table()));
    }

    private void draw(Markup page) {
        double height = ROW * tightest.size() + 40;
        Drawing on = Drawing.begin(page, Topic.MARGINS.id(), "Room left, tightest first", height);
        Scale x = Scale.even(0, 100, 8, 392);
        double foot = height - 26;
        for (double tick : x.ticks(4)) {
            on.line(x.at(tick), 4, x.at(tick), foot, tick == 0 ? "axis" : "grid");
            on.text(
                    x.at(tick),
                    foot + 17,
                    x.written(tick, 4) + " %",
                    tick == 0 ? "tick" : tick == 100 ? "tick end" : "tick mid");
        }
        for (int i = 0; i < tightest.size(); i++) {
            Finding finding = tightest.get(i);
            double y = 4 + ROW * i;
            double share = 100 * Math.max(0, Math.min(1, finding.margin().orElse(1)));
            on.text(12, y + 12, Drawing.shortened(title(finding), 58), "label");
            on.rectangle(8, y + 16, Math.max(2, x.at(share) - 8), 8, share < 10 ? "room-small" : "room");
        }
        on.end();
    }

    private String title(Finding finding) {
        return wording.title(finding.outcome());
    }

    private DataTable table() {
        DataTable table =
                new DataTable("Room left, tightest first", "what holds", "where", "value", "limit", "to spare");
        for (Finding finding : tightest) {
            String during = finding.outcome().during();
            table.row(
                    title(finding),
                    Paths.shown(finding.outcome().path()) + (during.isEmpty() ? "" : " (" + during + ")"),
                    wording.value(finding.outcome()),
                    wording.limit(finding.outcome()),
                    spare(finding));
        }
        return table;
    }

    private String spare(Finding finding) {
        Comparison comparison = finding.outcome().comparison();
        return comparison == null ? "" : wording.margin(finding.outcome()).replace(" to spare", "");
    }
}
