package org.leat.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Paths;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.choice.Overview;
import org.leat.choice.Overview.GroupedFailure;
import org.leat.design.Design;
import org.leat.file.Problem;
import org.leat.file.ProblemText;
import org.leat.plant.Plant;
import org.leat.readings.Expectations;
import org.leat.readings.FirstStart;
import org.leat.report.SettingsText;
import org.leat.report.StartSheet;
import org.leat.report.StopLimits;
import org.leat.report.SuppressionText;
import org.leat.report.Wording;

/** The page of one design, from the caution at its top to the caution at its foot. */
final class Page {

    private static final String NO_DESIGN = "No picture: the design itself is not at hand.";

    private final Report report;
    private final @Nullable Design design;
    private final @Nullable Overview overview;
    private final @Nullable LogOnPage log;
    private final Rulebook rulebook;
    private final Wording wording;
    private final FindingCards cards;

    Page(
            Report report,
            @Nullable Design design,
            @Nullable Overview overview,
            @Nullable LogOnPage log,
            Rulebook rulebook) {
        this.report = report;
        this.design = design;
        this.overview = overview;
        this.log = log;
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
        this.cards = new FindingCards(wording);
    }

    /** {@return the page of a file over which the program broke} */
    static String broken(String file, String cause, Wording wording) {
        Markup page = PageFrame.begin(file);
        page.open("header").leaf("h1", file).close();
        page.open("main");
        page.leaf("p", "Not checked: this program broke over it: " + cause, "class", "verdict is-error");
        page.close();
        page.open("footer");
        PageFrame.caution(page, wording, PageFrame.AGAIN);
        page.close();
        return PageFrame.end(page);
    }

    /** {@return the page} */
    String written() {
        String name = report.design().isEmpty() ? report.file() : report.design();
        Markup page = PageFrame.begin(name);
        page.leaf(
                "a",
                "To the pictures",
                "href",
                "#" + (report.readable() ? Topic.PLANT.id() + "-station" : "unreadable"),
                "class",
                "skip");
        page.open("header");
        page.leaf("p", report.file(), "class", "file");
        page.leaf("h1", name);
        page.close();
        page.open("main");
        PageFrame.caution(page, wording, PageFrame.FIRST);
        if (report.readable()) {
            body(page);
        } else {
            unreadable(page);
        }
        page.close();
        page.open("footer");
        PageFrame.caution(page, wording, PageFrame.AGAIN);
        PageFrame.loosened(page, rulebook);
        page.close();
        return PageFrame.end(page);
    }

    private void unreadable(Markup page) {
        page.open("section", "id", "unreadable").leaf("h2", "The file cannot be read as a design");
        page.open("ul");
        for (Problem problem : report.problems()) {
            page.leaf("li", ProblemText.line(problem));
        }
        page.close().close();
    }

    private void body(Markup page) {
        List<Figure> stations = stations();
        verdict(page);
        danger(page);
        contents(page, stations);
        for (Figure station : stations) {
            write(page, station);
        }
        if (log != null) {
            log.write(page);
        }
        rest(page);
    }

    private void verdict(Markup page) {
        long errors = report.failures(Level.ERROR);
        long warnings = report.failures(Level.WARNING);
        long open = report.count(Kind.OPEN) + report.count(Kind.REVIEW);
        String counts = count(errors, "error", "errors") + ", " + count(warnings, "warning", "warnings") + ", "
                + count(report.failures(Level.NOTE), "note", "notes") + "; "
                + count(report.count(Kind.PASS), "limit holds", "limits hold") + ", " + open + " not judged.";
        if (overview == null) {
            String state = errors > 0 ? "error" : "warning";
            page.open("section", "class", "head", "aria-label", "Verdict");
            page.leaf("p", counts, "class", "verdict is-" + state);
            page.close();
        } else {
            new PageHead(overview, wording).write(page, counts);
        }
    }

    private static String count(long number, String one, String many) {
        return number + " " + (number == 1 ? one : many);
    }

    /** What can hurt someone and does not count comes before every picture. */
    private void danger(Markup page) {
        List<Finding> uncounted = report.endangeringUncounted();
        List<String> off = SettingsText.playedDown(rulebook);
        if (uncounted.isEmpty() && off.isEmpty()) {
            return;
        }
        page.open("section", "class", "danger").leaf("h2", "Does not count, and can hurt someone");
        list(page, off);
        cards.write(page, uncounted);
        page.close();
    }

    private List<Figure> stations() {
        List<Figure> stations = new ArrayList<>();
        Plant plant = design == null ? null : Plant.of(design);
        boolean solved = report.unsolved().isEmpty() && !report.running().isEmpty();
        for (Topic topic : Topic.values()) {
            stations.add(
                    switch (topic) {
                        case PLANT -> plant == null ? Figure.without(topic, NO_DESIGN) : PlantPicture.of(report, plant);
                        case PRESSURE ->
                            solved ? PressurePicture.of(report, plant, wording) : Figure.without(topic, unsolved());
                        case TORQUE, POWER, YEAR, BUS ->
                            !solved
                                    ? Figure.without(topic, unsolved())
                                    : plant == null ? Figure.without(topic, NO_DESIGN) : ofThePlant(topic, plant);
                        case WATTS -> solved ? WattsPicture.of(report) : Figure.without(topic, unsolved());
                        case MARGINS -> MarginsPicture.of(report, wording);
                    });
        }
        return stations;
    }

    private Figure ofThePlant(Topic topic, Plant plant) {
        return switch (topic) {
            case TORQUE -> TorquePicture.of(plant);
            case POWER -> PowerPicture.of(plant);
            case YEAR -> YearPicture.of(plant);
            default -> BusPicture.of(report, plant.design());
        };
    }

    private String unsolved() {
        String fields = report.unsolved().stream()
                .map(unknown -> Paths.shown(unknown.path()))
                .collect(Collectors.joining(", "));
        return "No picture: the plant cannot be solved" + (fields.isEmpty() ? "." : " without " + fields + ".");
    }

    private void contents(Markup page, List<Figure> stations) {
        page.open("nav", "aria-label", "On this page").open("ol");
        for (Figure station : stations) {
            long here = failures(station.topic()).stream()
                    .mapToLong(GroupedFailure::size)
                    .sum();
            page.open("li")
                    .leaf(
                            "a",
                            station.topic().title(),
                            "href",
                            "#" + station.topic().id() + "-station");
            if (here > 0) {
                page.text(" ").leaf("span", count(here, "finding", "findings"), "class", "many");
            }
            page.close();
        }
        if (log != null) {
            page.open("li")
                    .leaf("a", LogOnPage.TITLE, "href", "#" + LogOnPage.ID)
                    .close();
        }
        page.close().close();
    }

    /** {@return the failures beside a picture, those of one rule at one place together where that was found out} */
    private List<GroupedFailure> failures(Topic topic) {
        Stream<GroupedFailure> all = overview == null
                ? report.worstFirst(Kind.FAIL).stream().map(f -> new GroupedFailure(f, List.of(), f.waysOut(), false))
                : overview.causes().stream().flatMap(c -> Stream.concat(c.clears().stream(), c.calms().stream()));
        return all.filter(g -> Topic.of(g.worst().outcome()) == topic)
                .sorted(Comparator.comparing(GroupedFailure::worst, Finding.WORST_FIRST))
                .toList();
    }

    private void write(Markup page, Figure station) {
        String id = station.topic().id();
        page.open("section", "class", "station", "id", id + "-station", "aria-labelledby", id + "-title");
        page.leaf("h2", station.topic().title(), "id", id + "-title");
        page.leaf("p", station.caption(), "class", "look");
        if (station.picture() != null) {
            page.open("div", "class", "pair");
            page.open("figure");
            station.picture().accept(page);
            page.close();
            page.open("div", "class", "numbers");
            station.tables().stream().filter(t -> !t.isEmpty()).forEach(t -> t.write(page));
            cards.writeGroups(page, failures(station.topic()));
            page.close().close();
        } else {
            cards.writeGroups(page, failures(station.topic()));
        }
        page.close();
    }

    private void rest(Markup page) {
        Lists lists = new Lists(report, wording);
        section(
                page,
                "open",
                "Not judged",
                "What was not judged is not safe by that. Each says what would settle it.",
                List.of(
                        lists.rows("Could not be judged", Kind.OPEN),
                        lists.rows("For a person to look at", Kind.REVIEW)));
        section(
                page,
                "assumed",
                "Assumed",
                "Taken from practice where the file does not say. A verdict sensitive to it turns at an end of the range.",
                List.of(lists.assumptions()));
        section(
                page,
                "told",
                "Told",
                "For information; nothing is judged.",
                List.of(lists.rows("Told", Kind.INFORMATIONAL)));
        section(
                page,
                "alternatives",
                "Alternatives, side by side",
                "The choices that the design names, each checked as a design of its own.",
                List.of(lists.alternatives()));
        accepted(page);
        start(page);
        if (design != null) {
            section(
                    page,
                    "parts",
                    "Parts list",
                    "What the design names, with quantities. Nothing is chosen here: what the design leaves open is not on it.",
                    List.of(PartsList.of(design)));
        }
        page.open("section", "class", "list", "id", "sources").leaf("h2", "Sources");
        list(page, lists.sources());
        page.close();
    }

    /** The steps of a first start; the sheet itself, with room to write, is a page of its own. */
    private void start(Markup page) {
        if (design == null || !report.unsolved().isEmpty() || report.running().isEmpty()) {
            return;
        }
        Plant plant = Plant.of(design);
        List<StartSheet.Told> steps =
                StartSheet.told(FirstStart.of(Expectations.of(plant), StopLimits.of(report, plant, rulebook)));
        page.open("section", "class", "list", "id", "start").leaf("h2", "First start, step by step");
        if (!StopLimits.failing(report).isEmpty()) {
            page.leaf("p", "Not to be started as it is: the design fails.", "class", "verdict is-error");
        }
        page.leaf("p", StartSheet.STOPPING, "class", "look");
        StartSteps.write(page, steps, "h3", false);
        page.close();
    }

    private static void section(Markup page, String id, String title, String about, List<DataTable> tables) {
        if (tables.stream().allMatch(DataTable::isEmpty)) {
            return;
        }
        page.open("section", "class", "list", "id", id).leaf("h2", title).leaf("p", about, "class", "look");
        tables.stream().filter(t -> !t.isEmpty()).forEach(t -> t.write(page));
        page.close();
    }

    private void accepted(Markup page) {
        List<Finding> harmless = new ArrayList<>(report.suppressed());
        harmless.addAll(report.known());
        harmless.removeIf(Finding::endangers);
        List<String> idle = report.idle().stream()
                .map(i -> SuppressionText.of(i, report.day()))
                .toList();
        List<String> changes = SettingsText.changes(rulebook);
        List<String> gone = SuppressionText.absent(report);
        if (harmless.isEmpty() && idle.isEmpty() && changes.isEmpty() && gone.isEmpty()) {
            return;
        }
        page.open("section", "class", "list", "id", "accepted").leaf("h2", "Does not count, or is judged otherwise");
        list(page, changes);
        list(page, idle);
        list(
                page,
                gone.stream()
                        .map(line -> "in the baseline and no more: " + line)
                        .toList());
        if (report.day() != null) {
            page.leaf("p", "Last days of suppressions were compared with " + report.day() + ".");
        }
        cards.write(page, harmless);
        page.close();
    }

    private static void list(Markup page, List<String> lines) {
        if (!lines.isEmpty()) {
            page.open("ul");
            lines.forEach(line -> page.leaf("li", line));
            page.close();
        }
    }
}
