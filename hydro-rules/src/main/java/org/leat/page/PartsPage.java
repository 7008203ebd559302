package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.check.Outcome;
import org.leat.check.Rulebook;
import org.leat.choice.PartsFront;
import org.leat.prices.PriceList;
import org.leat.report.PartsWriter;
import org.leat.report.Wording;

/** The sets of parts worth choosing from as a page: a picture of the front, and each set with its parts, prices and warnings. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class PartsPage {

    private final Rulebook rulebook;
    private final Wording wording;
    private final PartsWriter words;
    private final PartsWriter.Subject subject;

    /** Words it with a rulebook. */
    public PartsPage(Rulebook rulebook, PartsWriter.Subject subject) {
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
        this.words = new PartsWriter(rulebook, subject);
        this.subject = subject;
    }

    /**
     * {@return the page}
     *
     * @param design name of the plant, or of its file
     */
    public String written(PartsFront front, String design) {
        String name = design + ", which parts";
        Markup page = PageFrame.begin(name);
        page.leaf("a", "To the sets", "href", "#sets", "class", "skip");
        page.open("header");
        page.leaf("p", subject.design() + " with " + subject.prices(), "class", "file");
        page.leaf("h1", name);
        page.close();
        page.open("main");
        PageFrame.caution(page, wording, PageFrame.FIRST);
        PageFrame.loosenedFirst(page, rulebook);
        head(page, front);
        if (!front.points().isEmpty()) {
            front(page, front);
            for (int i = 0; i < front.points().size(); i++) {
                set(page, i + 1, front.points().get(i));
            }
        }
        page.close();
        page.open("footer");
        PageFrame.caution(page, wording, PageFrame.AGAIN);
        PageFrame.loosened(page, rulebook);
        page.close();
        return PageFrame.end(page);
    }

    private void head(Markup page, PartsFront front) {
        int points = front.points().size();
        page.open("section", "class", "head", "aria-label", "What was found");
        page.leaf(
                "p",
                points == 0
                        ? "No set of parts without error was found"
                        : points == 1
                                ? "One set of parts is worth choosing"
                                : points + " sets of parts are worth choosing from",
                "class",
                "verdict is-" + (points == 0 ? "warning" : "none"));
        words.told(front).forEach(line -> page.leaf("p", line));
        page.close();
    }

    private void front(Markup page, PartsFront front) {
        page.open("section", "class", "list", "id", "sets", "aria-labelledby", "sets-title");
        page.leaf("h2", "Price and energy", "id", "sets-title");
        page.leaf(
                "p",
                "To the right costs more, upward gives more. Along the line each step up costs something; what lies above it has"
                        + " more warnings.",
                "class",
                "look");
        page.open("div", "class", "pair");
        page.open("figure");
        new FrontPicture(front.points()).draw(page, subject.list().currency());
        page.close().close();
        DataTable table = new DataTable(
                "Sets of parts, the cheapest first",
                "set",
                subject.list().currency(),
                "kWh a year",
                "warnings",
                "changes to the design");
        for (int i = 0; i < front.points().size(); i++) {
            PartsFront.Point point = front.points().get(i);
            table.row(
                    Integer.toString(i + 1),
                    PartsWriter.money(point.price()),
                    PartsWriter.energy(point.energy()),
                    Integer.toString(point.warnings().size()),
                    words.changes(point));
        }
        table.write(page);
        page.close();
    }

    private void set(Markup page, int number, PartsFront.Point point) {
        page.open("section", "class", "list", "id", "set-" + number);
        page.leaf(
                "h2",
                "Set " + number + ": " + PartsWriter.money(point.price()) + " "
                        + subject.list().currency() + ", " + PartsWriter.energy(point.energy()) + " kWh a year");
        DataTable table = new DataTable("Parts of set " + number, "what", "part", "price", "");
        for (int i = 0; i < point.parts().size(); i++) {
            PriceList.Part part = point.parts().get(i);
            table.row(
                    subject.list().choices().get(i).name(),
                    part.name(),
                    PartsWriter.money(part.price()),
                    part.asDesigned() ? "as the design has it" : "");
        }
        table.write(page);
        List<String> warnings = new ArrayList<>();
        for (Outcome.Fail warning : point.warnings()) {
            warnings.add(warning.rule() + ": " + wording.of(warning));
        }
        if (warnings.isEmpty()) {
            page.leaf("p", "No warning.");
        } else {
            page.open("ul");
            warnings.forEach(warning -> page.leaf("li", warning));
            page.close();
        }
        page.close();
    }
}
