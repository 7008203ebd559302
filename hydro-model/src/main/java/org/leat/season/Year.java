package org.leat.season;

import java.time.LocalDate;
import java.time.YearMonth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.design.Chemistry;
import org.leat.law.Answer;

/**
 * A plant over a series of days, hour by hour. Somebody comes every few days and opens the set that the stream of that day suits
 * best. What is made feeds the loads first; what is left charges the battery, up to what it takes, at its efficiency; the rest is
 * dumped. What is short comes from the battery down to its floor; the rest is missing.
 *
 * <p>Left out: the charging current of a nearly full battery, which falls off, so that a little more is dumped than is told; the
 * regulator; the temperature of the battery; loads that wait.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class Year {

    private static final double HOUR = 3600;

    private final FlowSeries series;
    private final PowerTable table;
    private final int[] sets;
    private final int changes;
    private final double[] made;
    private final double[] used;
    private final double[] charge;
    private final List<Month> months;
    private final int longestOnBattery;
    private final @Nullable LocalDate firstEmpty;

    private Year(Run run) {
        series = run.series;
        table = run.table;
        sets = run.sets;
        changes = run.changes;
        made = run.made;
        used = run.used;
        charge = run.charge;
        months = List.copyOf(run.months);
        longestOnBattery = run.longest;
        firstEmpty = run.firstEmpty;
    }

    /**
     * How a plant is run.
     *
     * @param kept flow that stays in the stream, m³/s
     * @param visit days from one visit to the next, 1 or more; nozzles are changed on a visit only
     */
    public record Keeping(double kept, int visit) {
        public Keeping {
            if (!(kept >= 0) || visit < 1) {
                throw new IllegalArgumentException("kept " + kept + ", visit " + visit);
            }
        }
    }

    /** {@return the days of a series} */
    public static Year of(FlowSeries series, PowerTable table, LoadDay loads, YearBattery bank, Keeping keeping) {
        Run run = new Run(series, table, loads, bank, keeping);
        run.all();
        return new Year(run);
    }

    /** What changes while the days go by. */
    private static final class Run {

        private final FlowSeries series;
        private final PowerTable table;
        private final LoadDay loads;
        private final YearBattery bank;
        private final Keeping keeping;
        private final int[] sets;
        private final double[] made;
        private final double[] used;
        private final double[] charge;
        private final List<Month> months = new ArrayList<>();
        private double stored;
        private int changes;
        private int onBattery;
        private int longest;
        private @Nullable LocalDate firstEmpty;

        private YearMonth month = YearMonth.of(1, 1);
        private int days;
        private double monthMade;
        private double monthUsed;
        private double monthDumped;
        private double monthMissing;
        private int monthHours;
        private double monthLeast;

        Run(FlowSeries series, PowerTable table, LoadDay loads, YearBattery bank, Keeping keeping) {
            this.series = series;
            this.table = table;
            this.loads = loads;
            this.bank = bank;
            this.keeping = keeping;
            this.sets = new int[series.days()];
            this.made = new double[series.days() * 24];
            this.used = new double[series.days() * 24];
            this.charge = new double[series.days() * 24];
            this.stored = bank.start() * bank.energy();
        }

        void all() {
            int set = 0;
            for (int day = 0; day < series.days(); day++) {
                YearMonth now = YearMonth.from(series.date(day));
                if (!now.equals(month)) {
                    endMonth();
                    month = now;
                    monthLeast = stored / bank.energy();
                }
                double available = Math.max(0, series.flow(day) - keeping.kept());
                if (day % keeping.visit() == 0) {
                    int best = table.best(available);
                    changes += day > 0 && best != set ? 1 : 0;
                    set = best;
                }
                sets[day] = set;
                days++;
                for (int hour = 0; hour < 24; hour++) {
                    hour(day, hour, available, set);
                }
            }
            endMonth();
        }

        private void hour(int day, int hour, double available, int set) {
            int at = day * 24 + hour;
            double power = table.power(set, available, stored / bank.energy());
            double wanted = loads.watts(hour);
            double surplus = (power - wanted) * HOUR;
            double missing = 0;
            if (surplus >= 0) {
                double taken = Math.min(surplus, bank.mostCharging() * HOUR);
                double room = (bank.energy() - stored) / bank.efficiency();
                taken = Math.min(taken, room);
                stored = Math.min(bank.energy(), stored + taken * bank.efficiency());
                monthDumped += surplus - taken;
                onBattery = 0;
            } else {
                double given = Math.min(-surplus, Math.max(0, stored - bank.floor() * bank.energy()));
                stored -= given;
                missing = -surplus - given;
                longest = Math.max(longest, ++onBattery);
            }
            // an hour in which the last of the battery went is not one in which something was missing
            if (missing > 1e-9 * wanted * HOUR) {
                monthHours++;
                firstEmpty = firstEmpty == null ? series.date(day) : firstEmpty;
            }
            made[at] = power;
            used[at] = wanted - missing / HOUR;
            charge[at] = stored / bank.energy();
            monthMade += power * HOUR;
            monthUsed += wanted * HOUR - missing;
            monthMissing += missing;
            monthLeast = Math.min(monthLeast, charge[at]);
        }

        private void endMonth() {
            if (days > 0) {
                months.add(new Month(
                        month, days, monthMade, monthUsed, monthDumped, monthMissing, monthHours, monthLeast));
            }
            days = 0;
            monthMade = 0;
            monthUsed = 0;
            monthDumped = 0;
            monthMissing = 0;
            monthHours = 0;
        }
    }

    /** {@return what each month came to} */
    public List<Month> months() {
        return months;
    }

    /** {@return the flows that were run through} */
    public FlowSeries series() {
        return series;
    }

    /** {@return power of the turbine in each hour, W at the battery's poles} */
    public double[] made() {
        return made.clone();
    }

    /** {@return power that the loads had in each hour, W at the battery's poles} */
    public double[] used() {
        return used.clone();
    }

    /** {@return share of the bank at the end of each hour} */
    public double[] charge() {
        return charge.clone();
    }

    /** {@return the set that was open on a day, in the order of the table} */
    public int set(int day) {
        return sets[day];
    }

    /** {@return days on which each set was open, in the order of the table} */
    public int[] daysOnSet() {
        int[] days = new int[table.sets().size()];
        for (int set : sets) {
            days[set]++;
        }
        return days;
    }

    /** {@return how often somebody changed the nozzles} */
    public int changes() {
        return changes;
    }

    /** {@return the longest run of hours in which the battery had to give} */
    public int longestOnBattery() {
        return longestOnBattery;
    }

    /** {@return the first day on which something was missing; null where there was none} */
    public @Nullable LocalDate firstEmpty() {
        return firstEmpty;
    }

    /** {@return energy made over all days, J} */
    public double totalMade() {
        return months.stream().mapToDouble(Month::made).sum();
    }

    /** {@return energy used over all days, J} */
    public double totalUsed() {
        return months.stream().mapToDouble(Month::used).sum();
    }

    /** {@return energy dumped or held back over all days, J} */
    public double totalDumped() {
        return months.stream().mapToDouble(Month::dumped).sum();
    }

    /** {@return energy that was missing over all days, J} */
    public double totalMissing() {
        return months.stream().mapToDouble(Month::missing).sum();
    }

    /** {@return hours in which something was missing} */
    public int hoursMissing() {
        return months.stream().mapToInt(Month::hoursMissing).sum();
    }

    /** {@return lowest share of the bank} */
    public double leastCharge() {
        return Arrays.stream(charge).min().orElse(1);
    }

    /**
     * {@return energy made over what the greatest power of any set would make in the same time: the capacity factor with the
     * greatest power of the plant as divisor}
     */
    public double capacityFactor() {
        double greatest = 0;
        for (int i = 0; i < table.sets().size(); i++) {
            for (double state : new double[] {0, 0.5, 1}) {
                greatest = Math.max(greatest, table.power(i, Double.MAX_VALUE, state));
            }
        }
        return greatest == 0 ? 0 : totalMade() / (greatest * HOUR * made.length);
    }

    /** {@return the battery's cycles, the year taken to repeat; range as share of the bank} */
    List<Rainflow.Cycle> cycles() {
        return Rainflow.ofRepeating(charge);
    }

    /** {@return whole turns of the bank by what went in and out, cycles weighted by their depth} */
    public double fullCycles() {
        return cycles().stream().mapToDouble(c -> c.range() * c.count()).sum();
    }

    /**
     * {@return share of the battery's life by cycles that these days use up (Miner's sum over cycles by depth)} Cycles shallower
     * than what is published count as much life a depth as the shallowest published one. Empty where none is deep enough to tell.
     */
    public OptionalDouble lifeUsed(Chemistry chemistry) {
        double used = 0;
        boolean any = false;
        for (Rainflow.Cycle cycle : cycles()) {
            double depth = Math.min(1, cycle.range());
            Answer answer = CellChemistryCatalogue.cycles(chemistry, depth);
            if (answer instanceof Answer.Outside outside
                    && depth < outside.low().orElse(0)
                    && depth > 0) {
                double shallowest = outside.low().getAsDouble();
                double least =
                        CellChemistryCatalogue.cycles(chemistry, shallowest).orThrow();
                used += cycle.count() * depth / shallowest / least;
                any = true;
            } else if (answer instanceof Answer.Value cycles) {
                used += cycle.count() / cycles.value();
                any = true;
            }
        }
        return any ? OptionalDouble.of(used) : OptionalDouble.empty();
    }

    /**
     * Energy of one month at the battery's poles, J. Made and what comes out of the battery cover what is used, stored, dumped.
     *
     * @param month which
     * @param days of it in the series
     * @param made by the turbine
     * @param used by the loads
     * @param dumped or held back, the battery being full or taking no more
     * @param missing what the loads would have taken
     * @param hoursMissing hours in which something was missing
     * @param leastCharge lowest share of the bank
     */
    public record Month(
            YearMonth month,
            int days,
            double made,
            double used,
            double dumped,
            double missing,
            int hoursMissing,
            double leastCharge) {}
}
