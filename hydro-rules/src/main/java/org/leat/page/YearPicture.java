package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.StringJoiner;
import org.leat.check.Paths;
import org.leat.page.Drawing.Place;
import org.leat.plant.Plant;
import org.leat.quantity.QuantityKind;
import org.leat.report.UsualUnits;
import org.leat.season.DesignYear;
import org.leat.season.Year;
import org.leat.season.Year.Month;

/** The year as a strip: what is made and used day by day, and how full the battery is. */
final class YearPicture {

    private static final int HOURS = 24;
    private static final int MOST_LETTERS = 13;
    private static final int ROOM_OF_A_YEAR = 365;
    private static final double LEFT = 44;
    private static final double RIGHT = 392;
    private static final double MADE_TOP = 28;
    private static final double MADE_FOOT = 158;
    private static final double CHARGE_TOP = 200;
    private static final double CHARGE_FOOT = 280;
    private static final String NO_YEAR = "No picture: the year was not run. ";

    private final DesignYear.Told told;
    private final Year year;
    private final int days;
    private final double[] made;
    private final double[] used;
    private final double[] lowest;
    private final double[] highest;

    private YearPicture(DesignYear.Told told) {
        this.told = told;
        this.year = told.year();
        this.days = year.series().days();
        this.made = new double[days];
        this.used = new double[days];
        this.lowest = new double[days];
        this.highest = new double[days];
        double[] madeByHour = year.made();
        double[] usedByHour = year.used();
        double[] charge = year.charge();
        for (int day = 0; day < days; day++) {
            lowest[day] = 100;
            for (int hour = HOURS * day; hour < HOURS * (day + 1); hour++) {
                made[day] += madeByHour[hour] / HOURS;
                used[day] += usedByHour[hour] / HOURS;
                lowest[day] = Math.min(lowest[day], 100 * charge[hour]);
                highest[day] = Math.max(highest[day], 100 * charge[hour]);
            }
        }
    }

    static Figure of(Plant plant) {
        DesignYear run = DesignYear.of(plant, null, DesignYear.USUAL_VISIT);
        if (run instanceof DesignYear.Open open) {
            return Figure.without(
                    Topic.YEAR, NO_YEAR + "It takes " + Paths.shown(open.path()) + ": " + open.why() + ".");
        }
        DesignYear.Told told = (DesignYear.Told) run;
        if (told.stream() == DesignYear.Source.CONSTANT) {
            return Figure.without(
                    Topic.YEAR,
                    NO_YEAR
                            + "The stream is told as one flow; tell its months or its duration curve, since a dry season is"
                            + " what a year is judged by.");
        }
        YearPicture picture = new YearPicture(told);
        return new Figure(Topic.YEAR, picture.caption(), picture::draw, List.of(picture.months(), picture.whole()));
    }

    private String caption() {
        String order = told.stream() == DesignYear.Source.DURATION
                ? " Of a duration curve the order of the days is not known: one dry season is taken, which asks most of the"
                        + " battery."
                : "";
        return "Look where use comes near what is made, and how low the battery is in the evenings of that season. Nozzles are"
                + " changed on a visit every " + told.keeping().visit()
                + " days to the set on hand that suits that day best; every day is a day of full use." + order;
    }

    private void draw(Markup page) {
        boolean ordered = told.stream() != DesignYear.Source.DURATION;
        Drawing on = Drawing.begin(
                page,
                Topic.YEAR.id(),
                "Power made and used through the year, and the charge of the battery",
                CHARGE_FOOT + (ordered ? 24 : 42));
        Scale x = Scale.even(0, days, LEFT, RIGHT);
        double most = 1;
        for (int day = 0; day < days; day++) {
            most = Math.max(most, Math.max(made[day], used[day]));
        }
        Plot power = new Plot(on, x, Scale.even(0, 1.08 * most, MADE_FOOT, MADE_TOP));
        Plot charge = new Plot(on, x, Scale.even(0, 112, CHARGE_FOOT, CHARGE_TOP));
        missing(on, power);
        power.axes("", "mean of each day at the battery, W", 4);
        double[] middle = new double[days];
        for (int day = 0; day < days; day++) {
            middle[day] = day + 0.5;
        }
        power.line(middle, made, "line s-set0").line(middle, used, "line s-set1");
        band(on, charge, middle);
        charge.axes(ordered ? "" : "day of the year, in the order taken", "charge of the battery, %", 2);
        charge.line(middle, lowest, "line s-alternator");
        if (ordered) {
            letters(on, x);
        }
        on.end();
        Legend key = new Legend()
                .line("line s-set0", "made")
                .line("line s-set1", "used by the loads")
                .line("line s-alternator", "lowest charge of the day")
                .mark("loss", "from there to the highest");
        if (year.hoursMissing() > 0) {
            key.mark("beyond", "days on which something is missing");
        }
        key.write(page);
    }

    /** Days on which the loads did not have all they want, as a field behind the lines. */
    private void missing(Drawing on, Plot power) {
        double wanted = 0;
        for (int hour = 0; hour < HOURS; hour++) {
            wanted += told.loads().watts(hour) / HOURS;
        }
        for (int day = 0; day < days; day++) {
            int from = day;
            while (day < days && used[day] < wanted * (1 - 1e-9)) {
                day++;
            }
            if (day > from) {
                on.rectangle(power.x(from), MADE_TOP, power.x(day) - power.x(from), MADE_FOOT - MADE_TOP, "beyond");
            }
        }
    }

    private void band(Drawing on, Plot charge, double[] middle) {
        List<Place> edge = new ArrayList<>();
        for (int day = 0; day < days; day++) {
            edge.add(new Place(charge.x(middle[day]), charge.y(highest[day])));
        }
        for (int day = days - 1; day >= 0; day--) {
            edge.add(new Place(charge.x(middle[day]), charge.y(lowest[day])));
        }
        on.through(edge, "loss");
    }

    /** First letters of the months; over more than a year the years. */
    private void letters(Drawing on, Scale x) {
        boolean oneYear = year.months().size() <= MOST_LETTERS;
        int day = 0;
        for (Month month : year.months()) {
            java.time.Month name = month.month().getMonth();
            if (oneYear) {
                on.line(x.at(day), CHARGE_FOOT, x.at(day), CHARGE_FOOT + 4, "axis");
                on.text(
                        x.at(day + month.days() / 2.0),
                        CHARGE_FOOT + 17,
                        name.name().substring(0, 1),
                        "tick mid");
            } else if (name == java.time.Month.JANUARY && day + ROOM_OF_A_YEAR <= days) {
                on.line(x.at(day), CHARGE_FOOT, x.at(day), CHARGE_FOOT + 4, "axis");
                on.text(
                        x.at(day + ROOM_OF_A_YEAR / 2.0),
                        CHARGE_FOOT + 17,
                        Integer.toString(month.month().getYear() % 100 + 100).substring(1),
                        "tick mid");
            }
            day += month.days();
        }
    }

    private DataTable months() {
        DataTable table = new DataTable(
                "The year by month", "month", "made", "used", "dumped", "missing", "hours short", "lowest charge");
        int number = 0;
        for (Month month : year.months()) {
            table.row(
                    name(month, ++number),
                    energy(month.made()),
                    energy(month.used()),
                    energy(month.dumped()),
                    energy(month.missing()),
                    Integer.toString(month.hoursMissing()),
                    ShownText.percent(month.leastCharge()));
        }
        return table;
    }

    private String name(Month month, int number) {
        if (told.stream() == DesignYear.Source.DURATION) {
            return "month " + number;
        }
        if (told.stream() == DesignYear.Source.SERIES) {
            return month.month().toString();
        }
        String name = month.month().getMonth().name();
        return name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
    }

    private DataTable whole() {
        StringJoiner sets = new StringJoiner(", ");
        int[] on = year.daysOnSet();
        for (int i = 0; i < on.length; i++) {
            if (on[i] > 0) {
                sets.add(told.table().sets().get(i).name() + " on " + on[i] + " days");
            }
        }
        return new DataTable("The whole year", "what", "how much")
                .row("made", energy(year.totalMade()))
                .row("used by the loads", energy(year.totalUsed()))
                .row("dumped or held back", energy(year.totalDumped()))
                .row("missing", energy(year.totalMissing()) + " in " + year.hoursMissing() + " hours")
                .row("share of what the greatest power would make", ShownText.percent(year.capacityFactor()))
                .row("nozzles", sets + "; changed " + year.changes() + " times")
                .row("longest run of hours in which the battery gives", Integer.toString(year.longestOnBattery()))
                .row("whole turns of the bank", UsualUnits.show(year.fullCycles(), QuantityKind.RATIO));
    }

    private static String energy(double joules) {
        return UsualUnits.show(joules, QuantityKind.ENERGY, "kWh", 3);
    }
}
