package org.leat.pack.kit;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.leat.season.DesignYear;
import org.leat.season.Year.Month;

/** What rules ask of a year that was run. */
public final class SolvedYear {

    /** The case in which a rule judges the year. */
    public static final String CASE = "year";

    /** How the year is run, for the cards of rules. */
    public static final String HOW =
            "where stream and loads are known for the year: the year, hour by hour, with the set on hand that suits each week best, all"
                    + " days taken as days of full use; else ";

    private static final double HOUR = 3600;

    /** As full as rounding lets it be. */
    private static final double FULL = 1 - 1e-9;

    private SolvedYear() {}

    /**
     * A month's day of the loads, J at the battery's poles.
     *
     * @param month of the year
     * @param wanted by the loads
     * @param there for them: what they had, with what was left over where nothing was missing
     */
    public record LoadsOfMonth(Month month, double wanted, double there) {

        double ratio() {
            return there / wanted;
        }
    }

    /** {@return the month with least for the loads} What is left over is counted as if it went through the battery. */
    public static LoadsOfMonth leanest(DesignYear.Told told) {
        List<LoadsOfMonth> months = told.year().months().stream()
                .map(m -> {
                    double left =
                            m.hoursMissing() > 0 ? 0 : m.dumped() * told.bank().efficiency();
                    return new LoadsOfMonth(m, (m.used() + m.missing()) / m.days(), (m.used() + left) / m.days());
                })
                .toList();
        List<LoadsOfMonth> wanting =
                months.stream().filter(month -> month.wanted() > 0).toList();
        return wanting.isEmpty() ? months.get(0) : Worst.least(wanting, LoadsOfMonth::ratio);
    }

    /** {@return what people call a month; of a duration curve only the season is known} */
    public static String name(DesignYear.Told told, Month month) {
        return switch (told.stream()) {
            case SERIES -> month.month().toString();
            case MONTHS -> {
                String name = month.month().getMonth().name();
                yield name.charAt(0) + name.substring(1).toLowerCase(Locale.ROOT);
            }
            case DURATION, CONSTANT -> "the leanest month";
        };
    }

    /** {@return the longest time between one full battery and the next, the year taken to repeat, s; all of it where it is never full} */
    public static double longestWithoutFull(DesignYear.Told told) {
        double[] charge = told.year().charge();
        int longest = 0;
        int run = 0;
        boolean ever = false;
        // twice round, so that what runs over the turn of the year is one stretch
        for (int hour = 0; hour < 2 * charge.length; hour++) {
            boolean full = charge[hour % charge.length] >= FULL;
            ever |= full;
            run = full ? 0 : run + 1;
            longest = Math.max(longest, run);
        }
        return (ever ? longest : charge.length) * HOUR;
    }

    /** {@return the charge that is reached or exceeded in a share of the hours} */
    public static double chargeReached(DesignYear.Told told, double share) {
        double[] charge = told.year().charge();
        Arrays.sort(charge);
        int below = (int) Math.floor((1 - share) * charge.length);
        return charge[Math.min(charge.length - 1, below)];
    }

    /** {@return share of the days on which the stream fills the pipe of at least one set on hand} */
    public static double daysFull(DesignYear.Told told) {
        double least = leastFlow(told);
        int days = told.year().series().days();
        int full = 0;
        for (int day = 0; day < days; day++) {
            full += told.year().series().flow(day) - told.keeping().kept() >= least ? 1 : 0;
        }
        return (double) full / days;
    }

    /** {@return the flow that fills the pipe of the set which needs least, m³/s} */
    public static double leastFlow(DesignYear.Told told) {
        double least = told.table().fullFlow(0);
        for (int set = 1; set < told.table().sets().size(); set++) {
            least = Math.min(least, told.table().fullFlow(set));
        }
        return least;
    }
}
