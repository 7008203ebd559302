package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.design.Chemistry;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.quantity.QuantityKind;
import org.leat.season.DesignYear;
import org.leat.season.FlowDuration;
import org.leat.season.FlowSeries;
import org.leat.season.Year;
import org.leat.season.Year.Month;

/** Writes the year of a plant: what it makes, what is used, dumped and missing, month by month. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class YearWriter {

    private static final double KILOWATT_HOUR = 3.6e6;
    private static final int WIDTH = 100;
    private static final int LABEL = 10;
    private static final double YEAR_HOURS = 8766;

    /** Years after which a battery has ended by age; common practice: 5 to 15. */
    private static final double WORN_BY_AGE = 20;

    private final Map<String, String> texts;

    /** Writes in the words of a rulebook. */
    public YearWriter(Rulebook rulebook) {
        this.texts = rulebook.texts();
    }

    /** Writes for a person. */
    public void text(String name, DesignYear.Told told, Chemistry chemistry, Appendable out) throws IOException {
        Year year = told.year();
        List<String> lines = new ArrayList<>();
        lines.add(name + ": the year, hour by hour");
        lines.add("");
        lines.addAll(entry("Stream", stream(told)));
        lines.addAll(entry("Nozzles", nozzles(told)));
        lines.addAll(entry("It gives", gives(year)));
        lines.addAll(entry("Loads", loads(told)));
        lines.addAll(entry("Battery", battery(told, chemistry)));
        lines.add("");
        Table table = new Table();
        table.row("month", "made", "used", "dumped", "missing", "hours short", "lowest charge");
        for (Month month : year.months()) {
            table.row(
                    month.month().toString(),
                    energy(month.made()),
                    energy(month.used()),
                    energy(month.dumped()),
                    energy(month.missing()),
                    Integer.toString(month.hoursMissing()),
                    percent(month.leastCharge()));
        }
        lines.addAll(table.lines());
        lines.add("");
        lines.addAll(Columns.wrapped(
                "Energy in kWh at the battery's poles. Between solved points the power is straight, within "
                        + share(told.table().error()) + " of the greatest.",
                WIDTH,
                0));
        lines.add("");
        lines.addAll(Columns.wrapped(texts.getOrDefault("caution", "").replace('\n', ' '), WIDTH, 0));
        for (String line : lines) {
            out.append(line).append('\n');
        }
    }

    private static List<String> entry(String title, String text) {
        return Columns.wrapped(title + " ".repeat(LABEL - title.length()) + text, WIDTH, LABEL);
    }

    private static String stream(DesignYear.Told told) {
        FlowSeries series = told.year().series();
        FlowDuration curve = FlowDuration.of(series.flows());
        StringBuilder text = new StringBuilder(
                switch (told.stream()) {
                    case SERIES ->
                        series.days() + " days from " + series.date(0) + " to " + series.date(series.days() - 1);
                    case MONTHS -> "a year of the design's months, each day of a month the same";
                    case DURATION ->
                        "a year with the design's duration curve; the order of its days is not known: one dry season is"
                                + " taken, which asks most of the battery";
                    case CONSTANT ->
                        "the same flow every day: what a dry season takes is not known, and this year is better than the"
                                + " stream's";
                });
        text.append("; nine days in ten bring ").append(flow(curve.exceeded(0.9)));
        text.append(", half of them ").append(flow(curve.exceeded(0.5)));
        if (told.keeping().kept() > 0) {
            text.append("; ").append(flow(told.keeping().kept())).append(" stay in the bed");
        }
        for (FlowSeries.Gap gap : series.bridged()) {
            text.append("; no flow from ")
                    .append(gap.first())
                    .append(" to ")
                    .append(gap.last())
                    .append(", filled straight");
        }
        if (series.estimated() > 0) {
            text.append("; ").append(series.estimated()).append(" days are estimates of their source");
        }
        return text.append('.').toString();
    }

    private static String nozzles(DesignYear.Told told) {
        Year year = told.year();
        List<String> parts = new ArrayList<>();
        List<NozzleGroup> sets = told.table().sets();
        int[] days = year.daysOnSet();
        for (int i = 0; i < days.length; i++) {
            if (days[i] > 0) {
                parts.add(sets.get(i).name() + " on " + days[i] + " days");
            }
        }
        int visit = told.keeping().visit();
        return String.join(", ", parts) + "; changed "
                + (year.changes() == 1 ? "once" : year.changes() + " times") + ", on a visit every "
                + (visit == 1 ? "day" : visit + " days") + " to the set that suits that day's stream best.";
    }

    private static String gives(Year year) {
        return energy(year.totalMade()) + " kWh, " + percent(year.capacityFactor())
                + " of what its greatest power would make in that time; " + energy(year.totalUsed())
                + " kWh of it reach the loads, through the battery or past it; " + energy(year.totalDumped())
                + " kWh are dumped or held back.";
    }

    private static String loads(DesignYear.Told told) {
        Year year = told.year();
        String wanted = "want " + energy(told.loads().energy())
                + " kWh a day; those that do not run all day are taken to" + " end at ten in the evening. ";
        if (year.firstEmpty() == null) {
            return wanted + "Nothing is missing.";
        }
        return wanted + energy(year.totalMissing()) + " kWh are missing, in " + year.hoursMissing()
                + " hours, first on " + year.firstEmpty() + ".";
    }

    private static String battery(DesignYear.Told told, Chemistry chemistry) {
        Year year = told.year();
        OptionalDouble life = year.lifeUsed(chemistry);
        double years = year.made().length / YEAR_HOURS;
        String turns = "is " + percent(year.leastCharge())
                + " charged at its lowest; the longest run of hours in which it has to give is "
                + year.longestOnBattery() + "; " + UsualUnits.show(year.fullCycles(), QuantityKind.RATIO)
                + " turns of the whole bank";
        return turns
                + (life.isEmpty() || years / life.getAsDouble() > WORN_BY_AGE
                        ? ", so few that age ends it, not use."
                        : ", by which it would last " + UsualUnits.show(years / life.getAsDouble(), QuantityKind.RATIO)
                                + " years; age ends it too, whatever its turns.");
    }

    private static String flow(double flow) {
        return UsualUnits.show(flow, QuantityKind.VOLUME_FLOW);
    }

    private static String energy(double joule) {
        double value = joule / KILOWATT_HOUR;
        if (value == 0) {
            return "0";
        }
        return BigDecimal.valueOf(value)
                .setScale(value >= 100 ? 0 : value >= 10 ? 1 : 2, RoundingMode.HALF_UP)
                .toPlainString();
    }

    private static String percent(double share) {
        return Math.round(share * 100) + " %";
    }

    private static String share(double share) {
        return BigDecimal.valueOf(share * 100).setScale(1, RoundingMode.UP).toPlainString() + " %";
    }

    private record MonthRow(
            String month,
            int days,
            @Nullable BigDecimal made,
            @Nullable BigDecimal used,
            @Nullable BigDecimal dumped,
            @Nullable BigDecimal missing,
            int hoursMissing,
            @Nullable BigDecimal leastCharge) {}

    private record SetRow(String set, int days) {}

    private record Filled(String first, int days) {}

    private record Whole(
            String stream,
            String firstDay,
            int days,
            @Nullable BigDecimal keptInStream,
            List<Filled> filled,
            int estimatedDays,
            int visit,
            int changes,
            List<SetRow> sets,
            @Nullable BigDecimal made,
            @Nullable BigDecimal used,
            @Nullable BigDecimal dumped,
            @Nullable BigDecimal missing,
            int hoursMissing,
            @Nullable String firstMissing,
            @Nullable BigDecimal capacityFactor,
            @Nullable BigDecimal leastCharge,
            int longestOnBattery,
            @Nullable BigDecimal turns,
            @Nullable BigDecimal lifeUsed,
            @Nullable BigDecimal tableError,
            List<MonthRow> months) {}

    /** Writes for a program: energies in J at the battery's poles, flows in m³/s. */
    public void json(DesignYear.Told told, Chemistry chemistry, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writePOJO(whole(told, chemistry));
            json.writeRaw('\n');
        }
    }

    private static Whole whole(DesignYear.Told told, Chemistry chemistry) {
        Year year = told.year();
        List<SetRow> sets = new ArrayList<>();
        int[] days = year.daysOnSet();
        for (int i = 0; i < days.length; i++) {
            sets.add(new SetRow(told.table().sets().get(i).name(), days[i]));
        }
        OptionalDouble life = year.lifeUsed(chemistry);
        return new Whole(
                told.stream().name().toLowerCase(Locale.ROOT),
                year.series().date(0).toString(),
                year.series().days(),
                Numbers.of(told.keeping().kept()),
                year.series().bridged().stream()
                        .map(gap -> new Filled(gap.first().toString(), gap.days()))
                        .toList(),
                year.series().estimated(),
                told.keeping().visit(),
                year.changes(),
                sets,
                Numbers.of(year.totalMade()),
                Numbers.of(year.totalUsed()),
                Numbers.of(year.totalDumped()),
                Numbers.of(year.totalMissing()),
                year.hoursMissing(),
                year.firstEmpty() == null ? null : year.firstEmpty().toString(),
                Numbers.of(year.capacityFactor()),
                Numbers.of(year.leastCharge()),
                year.longestOnBattery(),
                Numbers.of(year.fullCycles()),
                Numbers.of(life),
                Numbers.of(told.table().error()),
                year.months().stream()
                        .map(m -> new MonthRow(
                                m.month().toString(),
                                m.days(),
                                Numbers.of(m.made()),
                                Numbers.of(m.used()),
                                Numbers.of(m.dumped()),
                                Numbers.of(m.missing()),
                                m.hoursMissing(),
                                Numbers.of(m.leastCharge())))
                        .toList());
    }
}
