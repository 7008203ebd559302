package org.leat.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.NavigableMap;
import java.util.TreeMap;
import java.util.function.IntToDoubleFunction;
import org.apiguardian.api.API;

/**
 * Daily mean flows of a stream, one for each day of an unbroken stretch. Days that were missing are filled straight between their
 * neighbours, and counted. Immutable.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class FlowSeries {

    private final LocalDate first;
    private final double[] flows;
    private final List<Gap> bridged;
    private final int estimated;

    private FlowSeries(LocalDate first, double[] flows, List<Gap> bridged, int estimated) {
        this.first = first;
        this.flows = flows;
        this.bridged = List.copyOf(bridged);
        this.estimated = estimated;
    }

    /**
     * Days without a flow.
     *
     * @param first of them
     * @param days how many
     */
    public record Gap(LocalDate first, int days) {

        /** {@return the last of them} */
        public LocalDate last() {
            return first.plusDays(days - 1L);
        }
    }

    /**
     * {@return the series of these days, gaps filled straight between their neighbours}
     *
     * @param days flow by day, m³/s, not negative; at least one
     * @param estimated how many of them their source calls estimated
     */
    public static FlowSeries of(NavigableMap<LocalDate, Double> days, int estimated) {
        LocalDate first = days.firstKey();
        int count = Math.toIntExact(ChronoUnit.DAYS.between(first, days.lastKey())) + 1;
        double[] flows = new double[count];
        List<Gap> gaps = gaps(days);
        LocalDate before = first;
        for (var day : days.entrySet()) {
            int at = index(first, day.getKey());
            int from = index(first, before);
            flows[at] = demand(day.getValue());
            for (int i = from + 1; i < at; i++) {
                flows[i] = flows[from] + (flows[at] - flows[from]) * (i - from) / (at - from);
            }
            before = day.getKey();
        }
        return new FlowSeries(first, flows, gaps, estimated);
    }

    private static double demand(double flow) {
        if (!(flow >= 0 && flow <= Double.MAX_VALUE)) {
            throw new IllegalArgumentException("a flow is not negative and finite, not " + flow);
        }
        return flow;
    }

    private static int index(LocalDate first, LocalDate day) {
        return Math.toIntExact(ChronoUnit.DAYS.between(first, day));
    }

    /** {@return the stretches between these days that hold none} */
    static List<Gap> gaps(NavigableMap<LocalDate, Double> days) {
        List<Gap> gaps = new ArrayList<>();
        LocalDate due = days.firstKey();
        for (LocalDate day : days.keySet()) {
            if (day.isAfter(due)) {
                gaps.add(new Gap(due, index(due, day)));
            }
            due = day.plusDays(1);
        }
        return gaps;
    }

    /** {@return a year that is the same every day, from the first of January of a common year on} */
    public static FlowSeries constant(double flow) {
        return each(month -> flow);
    }

    /** {@return a common year of twelve monthly means, m³/s, January first} */
    public static FlowSeries ofMonths(List<Double> means) {
        if (means.size() != 12) {
            throw new IllegalArgumentException("a year has twelve months, not " + means.size());
        }
        return each(month -> means.get(month - 1));
    }

    private static FlowSeries each(IntToDoubleFunction ofMonth) {
        NavigableMap<LocalDate, Double> days = new TreeMap<>();
        LocalDate start = LocalDate.of(2001, 1, 1);
        for (int i = 0; i < 365; i++) {
            LocalDate day = start.plusDays(i);
            days.put(day, ofMonth.applyAsDouble(day.getMonthValue()));
        }
        return of(days, 0);
    }

    /**
     * {@return a common year with this duration curve, its order not being known: wettest at the turn of the year, one dry season,
     * so that the dry days are next to one another as is hardest for a battery}
     *
     * @param shares of the year, rising, each from 0 to 1
     * @param flows reached or exceeded in those shares, m³/s; straight between them, constant beyond them
     */
    public static FlowSeries ofDuration(List<Double> shares, List<Double> flows) {
        NavigableMap<LocalDate, Double> days = new TreeMap<>();
        LocalDate start = LocalDate.of(2001, 1, 1);
        for (int i = 0; i < 365; i++) {
            double rank = i < 183 ? 2 * i + 0.5 : 2 * (364 - i) + 1.5;
            days.put(start.plusDays(i), between(shares, flows, Math.min(1, rank / 365)));
        }
        return of(days, 0);
    }

    private static double between(List<Double> shares, List<Double> flows, double share) {
        if (share <= shares.get(0)) {
            return flows.get(0);
        }
        for (int i = 1; i < shares.size(); i++) {
            if (share <= shares.get(i)) {
                double along = (share - shares.get(i - 1)) / (shares.get(i) - shares.get(i - 1));
                return flows.get(i - 1) + along * (flows.get(i) - flows.get(i - 1));
            }
        }
        return flows.get(flows.size() - 1);
    }

    /** {@return how many days it has} */
    public int days() {
        return flows.length;
    }

    /** {@return the date of a day, from 0 on} */
    public LocalDate date(int day) {
        return first.plusDays(day);
    }

    /** {@return the mean flow of a day, m³/s} */
    public double flow(int day) {
        return flows[day];
    }

    /** {@return all flows in order, m³/s} */
    public double[] flows() {
        return flows.clone();
    }

    /** {@return the stretches that were filled straight between their neighbours} */
    public List<Gap> bridged() {
        return bridged;
    }

    /** {@return how many days their source calls estimated} */
    public int estimated() {
        return estimated;
    }

    /** {@return the same days with a share of the flow, as of a smaller catchment by its area} */
    public FlowSeries times(double factor) {
        double[] scaled = flows.clone();
        for (int i = 0; i < scaled.length; i++) {
            scaled[i] = demand(scaled[i] * factor);
        }
        return new FlowSeries(first, scaled, bridged, estimated);
    }
}
