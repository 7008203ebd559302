package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Kind;
import org.leat.check.Outcome;
import org.leat.check.Rulebook;
import org.leat.choice.PartsFront;
import org.leat.file.DesignEdit;
import org.leat.prices.PriceList;

/** Writes which sets of parts are worth choosing from. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class PartsWriter {

    private static final double KILOWATT_HOUR = 3.6e6;
    private static final int WIDTH = 100;
    private static final int LABEL = 10;

    /** Points that a person is shown of those with fewest warnings, and of the rest: together one screen. */
    private static final int ON_ONE_SCREEN = 7;

    private final Rulebook rulebook;
    private final Wording wording;
    private final Subject subject;

    /**
     * What was searched.
     *
     * @param design name of its file
     * @param prices name of the price list's file
     * @param list what it says
     * @param stream where the flows of the year come from, as a sentence
     */
    public record Subject(String design, String prices, PriceList list, String stream) {}

    /** Writes in the words of a rulebook. */
    public PartsWriter(Rulebook rulebook, Subject subject) {
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
        this.subject = subject;
    }

    /** Writes a front for a person. */
    public void text(PartsFront front, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>(loosened());
        lines.addAll(Columns.wrapped(subject.design() + ": parts from " + subject.prices(), WIDTH, LABEL));
        lines.add("");
        lines.addAll(entry("Choices", choices(front.sets())));
        lines.addAll(entry("Energy", energyTold()));
        lines.addAll(entry("Search", search(front)));
        lines.addAll(entry("Proven", proven(front)));
        lines.add("");
        List<PartsFront.Point> points = front.points();
        if (points.isEmpty()) {
            lines.addAll(Columns.wrapped(
                    front.end() == PartsFront.End.STOPPED
                            ? "No set without error was found yet."
                            : "No set is without error: other parts, or another plant, are needed.",
                    WIDTH,
                    0));
            refused(front, lines);
        } else {
            table(points, lines);
        }
        lines.add("");
        lines.addAll(caution());
        lines.addAll(last());
        write(lines, out);
    }

    private void table(List<PartsFront.Point> points, List<String> lines) {
        int fewest = points.stream().mapToInt(p -> p.warnings().size()).min().orElse(0);
        List<Integer> calm = new ArrayList<>();
        List<Integer> rest = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            (points.get(i).warnings().size() == fewest ? calm : rest).add(i);
        }
        lines.add(row("no", subject.list().currency(), "kWh a year", "warnings", "changes to the design"));
        int shown = rows(points, calm, lines);
        if (!rest.isEmpty()) {
            lines.add("");
            lines.add("With more warnings, for less money or more energy:");
            shown += rows(points, rest, lines);
        }
        if (shown < points.size()) {
            lines.add("");
            lines.add(points.size() - shown + " more between them: --format json and html tell all.");
        }
    }

    private int rows(List<PartsFront.Point> points, List<Integer> all, List<String> lines) {
        List<Integer> shown = shown(all);
        for (int i : shown) {
            PartsFront.Point point = points.get(i);
            String line = row(
                    Integer.toString(i + 1),
                    money(point.price()),
                    energy(point.energy()),
                    Integer.toString(point.warnings().size()),
                    changes(point));
            lines.addAll(Columns.wrapped(line, WIDTH, 38));
        }
        return shown.size();
    }

    private static String row(String no, String price, String energy, String warnings, String changes) {
        return left(3, no) + "  " + right(8, price) + "  " + right(10, energy) + "  " + right(8, warnings) + "   "
                + changes;
    }

    private static String left(int width, String text) {
        return text + " ".repeat(Math.max(0, width - Columns.of(text)));
    }

    private static String right(int width, String text) {
        return " ".repeat(Math.max(0, width - Columns.of(text))) + text;
    }

    /** Of many the two ends, and some spread evenly between them. */
    private static List<Integer> shown(List<Integer> all) {
        if (all.size() <= ON_ONE_SCREEN) {
            return all;
        }
        List<Integer> shown = new ArrayList<>();
        for (int i = 0; i < ON_ONE_SCREEN; i++) {
            shown.add(all.get((int) ((long) i * (all.size() - 1) / (ON_ONE_SCREEN - 1))));
        }
        return shown;
    }

    /** {@return what a set changes of the design, in a line} */
    public String changes(PartsFront.Point point) {
        return changes(point.parts());
    }

    private String changes(List<PriceList.Part> parts) {
        List<String> changed = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            if (!parts.get(i).asDesigned()) {
                changed.add(subject.list().choices().get(i).name() + ": "
                        + parts.get(i).name());
            }
        }
        return changed.isEmpty() ? "none" : String.join("; ", changed);
    }

    /** {@return what was searched, how, and what is proven, a sentence or two each} */
    public List<String> told(PartsFront front) {
        return List.of(
                "Choices: " + choices(front.sets()), "Energy " + energyTold(), search(front), capital(proven(front)));
    }

    private static String capital(String text) {
        return text.substring(0, 1).toUpperCase(Locale.ROOT) + text.substring(1);
    }

    private String choices(long sets) {
        List<String> each = new ArrayList<>();
        for (PriceList.Choice choice : subject.list().choices()) {
            each.add(choice.name() + " of " + choice.parts().size());
        }
        return String.join(", ", each) + ": " + sets + (sets == 1 ? " set." : " sets.");
    }

    private String energyTold() {
        return "at the battery's poles, " + subject.stream()
                + "; each day the nozzles of the set that give most, the battery charged as the design states.";
    }

    private static String search(PartsFront front) {
        return front.solved() + (front.solved() == 1 ? " set" : " sets") + " solved, " + front.checked()
                + " judged by the rules, " + front.forbidden()
                + " of them forbidden: an error, or one that can no longer be told. The rest cost no less and give no more"
                + " than a set kept.";
    }

    private String proven(PartsFront front) {
        return switch (front.end()) {
            case WHOLE ->
                "no set without error is cheaper, gives more and has fewer warnings than these: none is better in one without"
                        + " being worse in another.";
            case OF_PRICE_AND_ENERGY ->
                "no set without error is cheaper and gives more than these. With fewer than "
                        + front.fewer().orElseThrow()
                        + (front.fewer().getAsInt() == 1 ? " warning" : " warnings")
                        + " there may be others: --checks looks further.";
            case STOPPED ->
                "stopped. "
                        + (front.settledBelow() == null
                                ? "Nothing is settled yet."
                                : "Below " + money(front.settledBelow()) + " "
                                        + subject.list().currency()
                                        + " no set without error is cheaper and gives more than these.")
                        + (front.possible().isPresent()
                                ? " No set gives more than "
                                        + energy(front.possible().getAsDouble()) + " kWh: the power of the jets."
                                : "");
        };
    }

    /** Writes one set of the front for a person. */
    public void text(PartsFront front, int number, Appendable out) throws IOException {
        PartsFront.Point point = front.points().get(number - 1);
        List<String> lines = new ArrayList<>(loosened());
        lines.add(subject.design() + ": set " + number + " of " + front.points().size());
        lines.add("");
        lines.addAll(entry("Price", money(point.price()) + " " + subject.list().currency() + "."));
        lines.addAll(entry("Energy", energy(point.energy()) + " kWh a year, " + energyTold()));
        parts(point, lines);
        warnings(point, lines);
        lines.add("");
        lines.addAll(caution());
        lines.addAll(last());
        write(lines, out);
    }

    /** Writes the cheapest change after which no error is left, or that there is none, for a person. */
    public void mended(PartsFront front, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>(loosened());
        lines.addAll(Columns.wrapped(
                subject.design() + ": the cheapest change without an error, parts from " + subject.prices(),
                WIDTH,
                LABEL));
        lines.add("");
        lines.addAll(entry("Choices", choices(front.sets()).replace(": ", "; with what may stay as it is, ")));
        lines.addAll(entry(
                "Search",
                front.checked() + (front.checked() == 1 ? " set" : " sets") + " judged by the rules, cheapest first."));
        if (front.points().isEmpty()) {
            lines.addAll(entry(
                    "Proven",
                    front.end() == PartsFront.End.STOPPED
                            ? "not found within the budget. "
                                    + (front.settledBelow() == null
                                            ? ""
                                            : "For less than " + money(front.settledBelow()) + " "
                                                    + subject.list().currency()
                                                    + " there is none; --checks looks further.")
                            : "none: no set of these parts is without error."));
            refused(front, lines);
        } else {
            PartsFront.Point point = front.points().get(0);
            long changes =
                    point.parts().stream().filter(part -> !part.asDesigned()).count();
            lines.addAll(entry(
                    "Proven",
                    changes == 0
                            ? "no error stands, so nothing need be changed."
                            : "no cheaper set of these parts is without error, and none as cheap changes less."));
            if (changes > 0) {
                change(point, lines);
            }
        }
        lines.add("");
        lines.addAll(caution());
        lines.addAll(last());
        write(lines, out);
    }

    private void change(PartsFront.Point point, List<String> lines) {
        lines.add("");
        Table table = new Table();
        table.row("change", subject.list().currency());
        for (int i = 0; i < point.parts().size(); i++) {
            PriceList.Part part = point.parts().get(i);
            if (!part.asDesigned()) {
                table.row(subject.list().choices().get(i).name() + ": " + part.name(), money(part.price()));
            }
        }
        table.row("together", money(point.price()));
        lines.addAll(table.lines());
        lines.add("");
        lines.addAll(entry("Energy", energy(point.energy()) + " kWh a year after it, " + energyTold()));
        warnings(point, lines);
    }

    private void parts(PartsFront.Point point, List<String> lines) {
        lines.add("");
        Table table = new Table();
        table.row("part", "price", "");
        for (int i = 0; i < point.parts().size(); i++) {
            PriceList.Part part = point.parts().get(i);
            table.row(
                    subject.list().choices().get(i).name() + ": " + part.name(),
                    money(part.price()),
                    part.asDesigned() ? "as the design has it" : "");
        }
        lines.addAll(table.lines());
        lines.add("");
    }

    /** What stands in the way of the last set judged: the dearest, or one of the dearest. */
    private void refused(PartsFront front, List<String> lines) {
        PartsFront.Refused refused = front.refused();
        if (refused == null) {
            return;
        }
        String parts = changes(refused.parts());
        lines.add("");
        lines.addAll(Columns.wrapped(
                "What forbids the last of them, " + (parts.equals("none") ? "the design as it is" : parts) + ":",
                WIDTH,
                0));
        for (Outcome because : refused.because()) {
            String how = because.kind() == Kind.FAIL ? "error " : "can no longer be told, ";
            lines.addAll(Columns.wrapped("  " + how + because.rule() + ": " + wording.of(because), WIDTH, 4));
        }
    }

    private void warnings(PartsFront.Point point, List<String> lines) {
        if (point.warnings().isEmpty()) {
            lines.addAll(entry("Warnings", "none."));
            return;
        }
        lines.add("Warnings");
        point.warnings()
                .forEach(warning ->
                        lines.addAll(Columns.wrapped("  " + warning.rule() + ": " + wording.of(warning), WIDTH, 4)));
    }

    /** {@return what settings loosen of what protects people: before everything} */
    private List<String> loosened() {
        List<String> lines = new ArrayList<>();
        SettingsText.playedDown(rulebook).forEach(line -> lines.addAll(Columns.wrapped("  " + line, WIDTH, 6)));
        if (!lines.isEmpty()) {
            lines.add(0, SettingsText.LOOSENED);
            lines.add("");
        }
        return lines;
    }

    private List<String> last() {
        String said = SettingsText.inOneLine(rulebook);
        return said.isEmpty() ? List.of() : Columns.wrapped(said, WIDTH, 0);
    }

    private List<String> caution() {
        return Columns.wrapped(wording.phrase("caution").replace('\n', ' '), WIDTH, 0);
    }

    private static List<String> entry(String title, String text) {
        return Columns.wrapped(title + " ".repeat(LABEL - title.length()) + text, WIDTH, LABEL);
    }

    private static void write(List<String> lines, Appendable out) throws IOException {
        for (String line : lines) {
            out.append(PlainText.of(line).stripTrailing()).append('\n');
        }
    }

    /** {@return a price, in hundredths where it has them} */
    public static String money(BigDecimal price) {
        BigDecimal cents = price.setScale(2, RoundingMode.HALF_UP);
        BigDecimal whole = cents.stripTrailingZeros();
        return whole.scale() <= 0 ? whole.toPlainString() : cents.toPlainString();
    }

    /** {@return an energy in kilowatt-hours} */
    public static String energy(double joule) {
        double value = joule / KILOWATT_HOUR;
        return BigDecimal.valueOf(value)
                .setScale(value >= 100 ? 0 : value >= 10 ? 1 : 2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private record PartRow(String choice, @Nullable String part, BigDecimal price, boolean asDesigned) {}

    private record EditRow(String path, @Nullable String value) {}

    private record WarningRow(String rule, String at, String during, String message) {}

    private record PointRow(
            int no,
            BigDecimal price,
            @Nullable BigDecimal energy,
            List<PartRow> parts,
            List<EditRow> sets,
            List<WarningRow> warnings) {}

    private record Whole(
            List<String> loosened,
            String design,
            String prices,
            String currency,
            String end,
            long sets,
            int solved,
            int judged,
            int forbidden,
            @Nullable BigDecimal settledBelow,
            @Nullable BigDecimal energyPossible,
            @Nullable Integer fewerWarningsUnproven,
            @Nullable RefusedRow refused,
            List<PointRow> points) {}

    private record RefusedRow(List<PartRow> parts, List<BecauseRow> because) {}

    private record BecauseRow(String kind, String rule, String at, String during, String message) {}

    /** Writes a front for a program: energies in J at the battery's poles. */
    public void json(PartsFront front, Appendable out) throws IOException {
        List<PointRow> points = new ArrayList<>();
        for (PartsFront.Point point : front.points()) {
            points.add(row(points.size() + 1, point));
        }
        Whole whole = new Whole(
                SettingsText.playedDown(rulebook),
                subject.design(),
                subject.prices(),
                subject.list().currency(),
                front.end().name().toLowerCase(Locale.ROOT).replace('_', '-'),
                front.sets(),
                front.solved(),
                front.checked(),
                front.forbidden(),
                front.settledBelow(),
                Numbers.of(front.possible()),
                front.fewer().isPresent() ? front.fewer().getAsInt() : null,
                front.refused() == null ? null : row(front.refused()),
                points);
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writePOJO(whole);
            json.writeRaw('\n');
        }
    }

    private List<PartRow> rows(List<PriceList.Part> parts) {
        List<PartRow> rows = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            PriceList.Part part = parts.get(i);
            rows.add(new PartRow(
                    subject.list().choices().get(i).name(),
                    part.name().isEmpty() ? null : part.name(),
                    part.price(),
                    part.asDesigned()));
        }
        return rows;
    }

    private RefusedRow row(PartsFront.Refused refused) {
        List<BecauseRow> because = new ArrayList<>();
        for (Outcome one : refused.because()) {
            because.add(new BecauseRow(one.kind().word(), one.rule(), one.path(), one.during(), wording.of(one)));
        }
        return new RefusedRow(rows(refused.parts()), because);
    }

    private PointRow row(int no, PartsFront.Point point) {
        List<EditRow> sets = new ArrayList<>();
        for (Edit edit : point.edits()) {
            sets.add(new EditRow(edit.path(), edit.value() == null ? null : DesignEdit.written(edit.value())));
        }
        List<WarningRow> warnings = new ArrayList<>();
        for (Outcome.Fail warning : point.warnings()) {
            warnings.add(new WarningRow(warning.rule(), warning.path(), warning.during(), wording.of(warning)));
        }
        return new PointRow(no, point.price(), Numbers.of(point.energy()), rows(point.parts()), sets, warnings);
    }
}
