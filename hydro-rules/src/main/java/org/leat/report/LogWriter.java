package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.readings.Drift;
import org.leat.readings.LogStudy.Told;

/** Writes what a log of readings tells: what changes, how fast, when it must be looked after. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class LogWriter {

    private final Wording wording;

    /** Writes in the words of a rulebook. */
    public LogWriter(Rulebook rulebook) {
        this.wording = new Wording(rulebook);
    }

    /** Writes for a person. */
    public void text(Told told, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>();
        lines.add(span(told));
        lines.addAll(verdict(told));
        lines.add("");
        lines.add("Each fault that comes slowly, by itself, the one that explains the changes best first");
        Table table = new Table();
        table.row("fault", "now", "30 days", "limit", "limit met", "earliest", "misfit");
        for (Drift drift : told.drifts()) {
            table.row(
                    FaultWords.name(drift.kind()),
                    narrow(drift.now(), drift.nowStandard()),
                    signed(30 * drift.perDay()),
                    FaultWords.share(drift.limit()),
                    passed(drift)
                            ? "passed"
                            : drift.met() == null ? "> 10 years" : drift.met().toString(),
                    passed(drift) || drift.earliest() == null
                            ? ""
                            : drift.earliest().toString(),
                    String.format(Locale.ROOT, "%.0f", drift.squares()));
        }
        table.row("nothing changes", "", "", "", "", "", String.format(Locale.ROOT, "%.0f", told.still()));
        lines.addAll(table.lines(Columns.MOST));
        if (!told.impossible().isEmpty()) {
            lines.add(told.impossible().size() + " readings cannot be on this plant and were left out.");
        }
        lines.add("Told as a change since the first days; limits are common practice.");
        lines.add("");
        lines.add(wording.phrase("caution").replace('\n', ' '));
        for (String line : Columns.wrapped(lines)) {
            out.append(line.stripTrailing()).append('\n');
        }
    }

    /** {@return how many days, from when to when} */
    public static String span(Told told) {
        return told.days() + (told.days() == 1 ? " day" : " days") + " from " + told.first() + " to " + told.last();
    }

    /** {@return a fault's name} */
    public static String name(Drift drift) {
        return FaultWords.name(drift.kind());
    }

    /** {@return where a fault stands and how fast it grows, and when its limit is met} */
    public String line(Drift drift) {
        return "Now " + range(drift.now(), drift.nowStandard()) + ", " + perMonth(drift) + ". " + met(drift);
    }

    /** {@return what changes, what to do, the next visit: a line each} */
    public List<String> verdict(Told told) {
        List<String> lines = new ArrayList<>();
        Drift growing = told.growing();
        if (!told.judged()) {
            lines.add("Whether anything changes is not known: one day alone tells no change.");
        } else if (growing == null) {
            lines.add("Nothing changes that the readings show.");
        } else {
            lines.add(FaultWords.name(growing.kind()) + ": now " + range(growing.now(), growing.nowStandard()) + ", "
                    + perMonth(growing) + ".");
            lines.add(met(growing));
            if (!FaultWords.look(growing.kind()).isEmpty()) {
                lines.add(FaultWords.look(growing.kind()));
            }
        }
        lines.add("Next visit: by " + told.nextVisit() + ".");
        return lines;
    }

    private static String range(double value, double standard) {
        return FaultWords.share(value) + " ± " + spread(2 * standard);
    }

    /** The same with its unit once. */
    private static String narrow(double value, double standard) {
        return FaultWords.share(value).replace(" %", "") + " ± " + spread(2 * standard);
    }

    /** A hundredth of a per cent where a tenth would show nothing. */
    private static String spread(double share) {
        return share < 5e-4 ? String.format(Locale.ROOT, "%.2f %%", 100 * share) : FaultWords.share(share);
    }

    private static String signed(double share) {
        return (share < 0 ? "" : "+") + FaultWords.share(share);
    }

    private static String perMonth(Drift drift) {
        return Double.isInfinite(drift.perDayStandard())
                ? "its drift not known yet"
                : signed(30 * drift.perDay()) + " ± " + spread(60 * drift.perDayStandard()) + " in 30 days";
    }

    /** A limit that is passed has no day on which it will be met. */
    private static boolean passed(Drift drift) {
        return drift.now() >= drift.limit();
    }

    private static String met(Drift drift) {
        if (passed(drift)) {
            return "Its limit of " + FaultWords.share(drift.limit()) + " is passed already.";
        }
        return drift.met() == null
                ? "Its limit of " + FaultWords.share(drift.limit()) + " is not met within ten years."
                : "Its limit of " + FaultWords.share(drift.limit()) + " is met on " + drift.met()
                        + (drift.earliest() == null ? "." : ", on " + drift.earliest() + " at the earliest.");
    }

    private record Point(
            String day, @Nullable BigDecimal size, @Nullable BigDecimal standardUncertainty) {}

    private record Fault(
            String fault,
            String since,
            @Nullable BigDecimal now,
            @Nullable BigDecimal nowStandardUncertainty,
            @Nullable BigDecimal perDay,
            @Nullable BigDecimal perDayStandardUncertainty,
            @Nullable BigDecimal limit,
            @Nullable String limitMet,
            @Nullable String limitMetEarliest,
            boolean grows,
            @Nullable BigDecimal squares,
            List<Point> days) {}

    /** Writes for a program. */
    public void json(Told told, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writeStartObject();
            json.writeStringField("first", told.first().toString());
            json.writeStringField("last", told.last().toString());
            json.writeNumberField("days", told.days());
            json.writeBooleanField("judged", told.judged());
            json.writeStringField("nextVisit", told.nextVisit().toString());
            json.writePOJOField("squaresWithNothingChanging", Numbers.of(told.still()));
            Drift growing = told.growing();
            json.writePOJOField("growing", growing == null ? null : word(growing.kind()));
            json.writePOJOField(
                    "faults", told.drifts().stream().map(LogWriter::fault).toList());
            json.writeNumberField("impossible", told.impossible().size());
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static Fault fault(Drift drift) {
        return new Fault(
                word(drift.kind()),
                drift.since().toString(),
                Numbers.of(drift.now()),
                Numbers.of(drift.nowStandard()),
                Numbers.of(drift.perDay()),
                Numbers.of(drift.perDayStandard()),
                Numbers.of(drift.limit()),
                drift.met() == null ? null : drift.met().toString(),
                drift.earliest() == null ? null : drift.earliest().toString(),
                drift.grows(),
                Numbers.of(drift.squares()),
                drift.days().stream()
                        .map(d -> new Point(d.day().toString(), Numbers.of(d.size()), Numbers.of(d.standard())))
                        .toList());
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
