package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Objects;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Finding;
import org.leat.check.Report;
import org.leat.check.Rulebook;
import org.leat.quantity.QuantityKind;
import org.leat.readings.Channel;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.FirstStart.StartStep;
import org.leat.readings.FirstStart.StartStep.Kind;
import org.leat.readings.FirstStart.StartStep.Line;

/**
 * Writes the sheet of a first start: each step with what is read and where, what is expected, its range, when to stop, and room for
 * what was read. Two pages of A4 in type of a fixed width, 84 letters wide.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class StartSheet {

    private static final int WIDTH = 84;
    private static final int MOST_UNSETTLED = 14;

    private final Rulebook rulebook;
    private final Wording wording;

    /** Writes in the words of a rulebook. */
    public StartSheet(Rulebook rulebook) {
        this.rulebook = rulebook;
        this.wording = new Wording(rulebook);
    }

    /** Writes for a person. */
    public void text(Report report, List<StartStep> steps, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>(loosened());
        lines.add("First start: " + PlainText.of(report.design()));
        lines.add("date ____________  by ____________________  instruments ___________________________");
        lines.addAll(notBefore(report));
        int number = 1;
        for (StartStep step : steps) {
            lines.add("");
            lines.add(number + "  " + title(step));
            lines.addAll(wrapped(said(step.kind()), "   "));
            if (!step.lines().isEmpty()) {
                lines.addAll(table(step).lines());
            }
            number++;
        }
        lines.add("");
        lines.add("Where, and with what");
        lines.addAll(legend(steps));
        lines.add("");
        lines.addAll(wrapped(STOPPING, ""));
        lines.add("");
        lines.addAll(wrapped(wording.phrase("caution").replace('\n', ' '), ""));
        String last = SettingsText.inOneLine(rulebook);
        if (!last.isEmpty()) {
            lines.add("");
            lines.addAll(wrapped(last, ""));
        }
        for (String line : lines) {
            out.append(line.stripTrailing()).append('\n');
        }
    }

    /** {@return what settings loosen of what protects people: before everything} */
    private List<String> loosened() {
        List<String> lines = new ArrayList<>();
        for (String line : SettingsText.playedDown(rulebook)) {
            List<String> said = wrapped(line, "      ");
            said.set(0, "  " + said.get(0).strip());
            lines.addAll(said);
        }
        if (!lines.isEmpty()) {
            lines.add(0, SettingsText.LOOSENED);
            lines.add("");
        }
        return lines;
    }

    private List<String> notBefore(Report report) {
        List<String> lines = new ArrayList<>();
        List<Finding> failing = StopLimits.failing(report);
        List<Finding> unsettled = StopLimits.unsettled(report, rulebook);
        if (!failing.isEmpty()) {
            lines.add("");
            lines.add("DO NOT START: the design fails");
            failing.forEach(finding -> lines.addAll(item(finding)));
        }
        if (!unsettled.isEmpty()) {
            lines.add("");
            lines.add("STOP until somebody has settled, and signed:");
            unsettled.stream().limit(MOST_UNSETTLED).forEach(finding -> lines.addAll(item(finding)));
            if (unsettled.size() > MOST_UNSETTLED) {
                lines.add("  [ ] and " + (unsettled.size() - MOST_UNSETTLED) + " more, which check tells");
            }
        }
        return lines;
    }

    private List<String> item(Finding finding) {
        List<String> said = wrapped(PlainText.of(finding.outcome().rule() + ": " + wording.of(finding)), "      ");
        List<String> lines = new ArrayList<>(said);
        lines.set(0, "  [ ] " + said.get(0).strip());
        return lines;
    }

    private static String title(StartStep step) {
        String set = PlainText.of(step.nozzles());
        return switch (step.kind()) {
            case FILL -> "Fill the pipe";
            case PRESSURE_TEST -> "Pressure test";
            case STANDING -> "Standing pressure";
            case OPEN_LEADS -> "Smallest nozzle, " + set + ", leads open";
            case DUMP_LOAD -> "Dump load and second guard, " + set + ", battery disconnected";
            case FIRST_ON_BUS -> "Smallest nozzle, " + set + ", on the bus";
            case NEXT_ON_BUS -> "Next nozzle, " + set + ", on the bus";
            case HOURS -> "Some hours on " + set;
        };
    }

    /** {@return what is done in a step} */
    private static String action(Kind kind) {
        return switch (kind) {
            case FILL ->
                "Inlet a little open, lowest nozzle open, every high point vented, until the jet runs without spitting.";
            case PRESSURE_TEST ->
                "Pipe full, no air, by pump at the low end; walk the pipe. EN 805: highest pressure of any case + 1 bar;"
                        + " where that is not known, standing + 2 bar, half as much again.";
            case STANDING ->
                "All nozzles shut, inlet open, ten minutes. Does it fall, there is a leak; too high or too low: the head is another.";
            case OPEN_LEADS -> "Guard on. Let it run for seconds, then shut the water. Three pairs alike within 2 %.";
            case DUMP_LOAD ->
                "Battery disconnected before the water comes. Volts must stay at the dump load's; then, dump load off, the second"
                        + " guard must act by itself.";
            case FIRST_ON_BUS -> "Water shut: connect battery, then fuse; then open slowly.";
            case NEXT_ON_BUS -> "Water shut while the nozzle is changed. Open slowly.";
            case HOURS ->
                "Every half hour: winding, bearing, bridge, joints, dump load by hand-held thermometer, not by hand.";
        };
    }

    /** {@return what can hurt in a step; "" for nothing of its own} */
    private static String danger(Kind kind) {
        return switch (kind) {
            case FILL -> "Air is a spring: nobody in line with the nozzle, nobody beside a joint.";
            case PRESSURE_TEST -> "A joint that moves: stop. Stand aside, never in line with a plug.";
            case STANDING, NEXT_ON_BUS -> "";
            case OPEN_LEADS ->
                "The wheel runs away; noise, smell, shake: stop. Leads insulated from each other and from hands: they"
                        + " carry these volts.";
            case DUMP_LOAD -> "Elements get hot.";
            case FIRST_ON_BUS -> "Never open the bus while it turns. Rings and watches off: batteries burn metal.";
            case HOURS -> "A joint warmer than its cable: stop.";
        };
    }

    private static String said(Kind kind) {
        return danger(kind).isEmpty() ? action(kind) : action(kind) + " " + danger(kind);
    }

    /**
     * A step in words.
     *
     * @param title of it
     * @param action what is done
     * @param danger what can hurt; "" for nothing of its own
     * @param reads what is read
     */
    public record Told(String title, String action, String danger, List<Reads> reads) {
        public Told {
            reads = List.copyOf(reads);
        }
    }

    /**
     * What is read, in words.
     *
     * @param name of it
     * @param where and with what; "" where it says itself
     * @param expected value
     * @param range as expected; "" where there is none
     * @param stop above it; "" where no rule limits it
     * @param beyond whether the sound plant itself would read more than that
     */
    public record Reads(String name, String where, String expected, String range, String stop, boolean beyond) {}

    /** {@return the steps in words} */
    public static List<Told> told(List<StartStep> steps) {
        return steps.stream()
                .map(step -> new Told(
                        title(step),
                        action(step.kind()),
                        danger(step.kind()),
                        step.lines().stream().map(StartSheet::reads).toList()))
                .toList();
    }

    private static Reads reads(Line line) {
        Channel channel = line.channel();
        return new Reads(
                name(line),
                channel == null ? "" : ReadingKindWords.where(channel.what()),
                show(line.expected(), line.kind()),
                line.low() == line.high() ? "" : range(line).replaceFirst(" [^ \\d]+(?= to )", ""),
                line.stop().isEmpty() ? "" : show(line.stop().getAsDouble(), line.kind()),
                line.beyond());
    }

    /** How to stop, and what the ranges are. */
    public static final String STOPPING =
            "Stop: shut the water slowly, at the inlet or by the deflector; never by pulling a lead, a fuse or the battery."
                    + " A reading out of its range is no danger by itself: find out why before the next step."
                    + " Ranges hold what building and a usual instrument leave open, 95 in 100.";

    /** What keeps a plant from being started, in words. */
    public record Hindered(List<String> fails, List<String> unsettled) {
        public Hindered {
            fails = List.copyOf(fails);
            unsettled = List.copyOf(unsettled);
        }
    }

    /** {@return what keeps the plant from being started: what fails, and what somebody must settle first} */
    public Hindered hindered(Report report) {
        return new Hindered(hindered(StopLimits.failing(report)), hindered(StopLimits.unsettled(report, rulebook)));
    }

    private List<String> hindered(List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        findings.stream()
                .limit(MOST_UNSETTLED)
                .forEach(f -> lines.add(PlainText.of(f.outcome().rule() + ": " + wording.of(f))));
        if (findings.size() > MOST_UNSETTLED) {
            lines.add("and " + (findings.size() - MOST_UNSETTLED) + " more, which check tells");
        }
        return lines;
    }

    private static Table table(StartStep step) {
        Table table = new Table();
        table.row("   read", "expected", "range", "stop above", "read");
        for (Line line : step.lines()) {
            Reads read = reads(line);
            table.row(
                    "   " + read.name(),
                    read.expected(),
                    read.range().isEmpty() ? "" : range(line),
                    read.beyond() ? read.stop() + " !" : read.stop(),
                    "_________");
        }
        return table;
    }

    private static String range(Line line) {
        return line.low() <= 0 && line.channel() == null
                ? "up to " + show(line.high(), line.kind())
                : UsualUnits.alike(line.low(), line.expected(), line.kind()) + " to "
                        + UsualUnits.alike(line.high(), line.expected(), line.kind());
    }

    private static String show(double value, QuantityKind kind) {
        return UsualUnits.show(value, kind);
    }

    private static String name(Line line) {
        Channel channel = line.channel();
        if (channel != null) {
            ReadingKind what = channel.what();
            return ReadingKindWords.name(what);
        }
        return switch (line.name()) {
            case "FILLING_FLOW" -> "flow while filling";
            case "FILLING_TIME" -> "time to fill, at least";
            case "TEST_PRESSURE" -> "test pressure, low end";
            case "TEST_TIME" -> "time held, at least";
            default -> line.name().toLowerCase(Locale.ROOT).replace('_', ' ');
        };
    }

    private static List<String> wrapped(String text, String indent) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder(indent);
        int used = indent.length();
        for (String word : text.split(" ", -1)) {
            int length = word.codePointCount(0, word.length());
            if (used + 1 + length > WIDTH) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
                used = indent.length();
            }
            boolean first = used == indent.length();
            line.append(first ? "" : " ").append(word);
            used += length + (first ? 0 : 1);
        }
        lines.add(line.toString());
        return lines;
    }

    private static List<String> legend(List<StartStep> steps) {
        Table table = new Table();
        steps.stream()
                .flatMap(step -> step.lines().stream())
                .map(Line::channel)
                .filter(Objects::nonNull)
                .map(Channel::what)
                .distinct()
                .sorted()
                .forEach(what -> table.row("   " + ReadingKindWords.name(what) + ":  " + ReadingKindWords.where(what)));
        return table.lines();
    }

    private record Unsettled(String rule, String text) {}

    private record Reading(
            String what,
            String where,
            String unit,
            @Nullable BigDecimal expected,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            @Nullable BigDecimal stopAbove,
            @Nullable String stopRule,
            boolean beyond) {}

    private record Step(String step, String nozzles, String action, String danger, List<Reading> readings) {}

    /** Writes for a program: values in SI. */
    public void json(Report report, List<StartStep> steps, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writeStartObject();
            json.writePOJOField("loosened", SettingsText.playedDown(rulebook));
            json.writeStringField("design", report.design());
            json.writePOJOField("fails", unsettled(StopLimits.failing(report)));
            json.writePOJOField("unsettled", unsettled(StopLimits.unsettled(report, rulebook)));
            json.writePOJOField("steps", steps.stream().map(StartSheet::step).toList());
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private List<Unsettled> unsettled(List<Finding> findings) {
        return findings.stream()
                .map(finding -> new Unsettled(finding.outcome().rule(), wording.of(finding)))
                .toList();
    }

    private static Step step(StartStep step) {
        return new Step(
                word(step.kind().name()),
                step.nozzles(),
                action(step.kind()),
                danger(step.kind()),
                step.lines().stream().map(StartSheet::reading).toList());
    }

    private static Reading reading(Line line) {
        Channel channel = line.channel();
        return new Reading(
                word(line.name()),
                channel == null ? "" : ReadingKindWords.where(channel.what()),
                line.kind().siSymbol(),
                Numbers.of(line.expected()),
                Numbers.of(line.low()),
                Numbers.of(line.high()),
                line.stop().isEmpty() ? null : Numbers.of(line.stop().getAsDouble()),
                line.rule().isEmpty() ? null : line.rule(),
                line.beyond());
    }

    private static String word(String constant) {
        return constant.toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
