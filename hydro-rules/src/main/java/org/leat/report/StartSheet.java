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
import org.leat.readings.ReadingKind;
import org.leat.readings.StartStep;
import org.leat.readings.StartStep.Kind;
import org.leat.readings.StartStep.Line;

/**
 * Writes the sheet of a first start: each step with what is read and where, what is expected, its range, when to stop, and room for
 * what was read. Two pages of A4 in type of a fixed width, 84 letters wide.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class StartSheet {

    private static final int WIDTH = 84;
    private static final int MOST_UNSETTLED = 14;

    private final Wording wording;

    /** Writes in the words of a rulebook. */
    public StartSheet(Rulebook rulebook) {
        this.wording = new Wording(rulebook);
    }

    /** Writes for a person. */
    public void text(Report report, List<StartStep> steps, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add("First start: " + Plainly.of(report.design()));
        lines.add("date ____________  by ____________________  instruments ___________________________");
        lines.addAll(notBefore(report));
        int number = 1;
        for (StartStep step : steps) {
            lines.add("");
            lines.add(number + "  " + title(step));
            lines.addAll(wrapped(action(step.kind()), "   "));
            if (!step.lines().isEmpty()) {
                lines.addAll(table(step).lines());
            }
            number++;
        }
        lines.add("");
        lines.add("Where, and with what");
        lines.addAll(legend(steps));
        lines.add("");
        lines.addAll(wrapped(
                "Stop: shut the water slowly, at the inlet or by the deflector; never by pulling a lead, a fuse or the battery."
                        + " A reading out of its range is no danger by itself: find out why before the next step."
                        + " Ranges hold what building and a usual instrument leave open, 95 in 100.",
                ""));
        lines.add("");
        lines.addAll(List.of(wording.phrase("caution").split("\n", -1)));
        for (String line : lines) {
            out.append(line.stripTrailing()).append('\n');
        }
    }

    private List<String> notBefore(Report report) {
        List<String> lines = new ArrayList<>();
        List<Finding> failing = StopLimits.failing(report);
        List<Finding> unsettled = StopLimits.unsettled(report);
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
        List<String> said = wrapped(Plainly.of(finding.outcome().rule() + ": " + wording.of(finding)), "      ");
        List<String> lines = new ArrayList<>(said);
        lines.set(0, "  [ ] " + said.get(0).strip());
        return lines;
    }

    private static String title(StartStep step) {
        String set = Plainly.of(step.nozzles());
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

    private static String action(Kind kind) {
        return switch (kind) {
            case FILL ->
                "Inlet a little open, lowest nozzle open, every high point vented, until the jet runs without spitting. Air is"
                        + " a spring: nobody in line with the nozzle, nobody beside a joint.";
            case PRESSURE_TEST ->
                "Pipe full, no air, by pump at the low end; walk the pipe. EN 805: highest pressure of any case + 1 bar;"
                        + " where that is not known, standing + 2 bar, half as much again. A joint that moves: stop. Stand"
                        + " aside, never in line with a plug.";
            case STANDING ->
                "All nozzles shut, inlet open, ten minutes. Does it fall, there is a leak; too high or too low: the head is another.";
            case OPEN_LEADS ->
                "Guard on. The wheel runs away: short, then shut. Leads insulated from each other and from hands: they"
                        + " carry these volts. Three pairs alike within 2 %; noise, smell, shake: stop.";
            case DUMP_LOAD ->
                "Battery disconnected before the water comes. Volts must stay at the dump load's; then, dump load off, the second"
                        + " guard must act by itself. Elements get hot.";
            case FIRST_ON_BUS ->
                "Water shut: connect battery, then fuse; then open slowly. Never open the bus while it turns. Rings and"
                        + " watches off: batteries burn metal.";
            case NEXT_ON_BUS -> "Water shut while the nozzle is changed. Open slowly.";
            case HOURS ->
                "Every half hour: winding, bearing, bridge, joints, dump load by hand-held thermometer, not by hand. A"
                        + " joint warmer than its cable: stop.";
        };
    }

    private static Table table(StartStep step) {
        Table table = new Table();
        table.row("   read", "expected", "range", "stop above", "read");
        for (Line line : step.lines()) {
            table.row(
                    "   " + name(line),
                    show(line.expected(), line.kind()),
                    line.low() == line.high() ? "" : range(line),
                    line.stop().isEmpty()
                            ? ""
                            : show(line.stop().getAsDouble(), line.kind()) + (line.beyond() ? " !" : ""),
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

    private record Step(String step, String nozzles, String action, List<Reading> readings) {}

    /** Writes for a program: values in SI. */
    public void json(Report report, List<StartStep> steps, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writeStartObject();
            json.writeStringField("design", report.design());
            json.writePOJOField("fails", unsettled(StopLimits.failing(report)));
            json.writePOJOField("unsettled", unsettled(StopLimits.unsettled(report)));
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
