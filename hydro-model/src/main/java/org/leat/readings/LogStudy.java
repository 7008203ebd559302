package org.leat.readings;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.plant.numbers.NozzleGroup;

/**
 * A log of readings over months: the readings of a day and a nozzle set are taken together, each is told as a change since the first
 * days, so that what building left open falls out, and for each fault that comes slowly the size that suits the change is tracked,
 * with its drift and the day on which it meets its limit.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class LogStudy {

    /** Faults that come slowly, each with the size at which it must be looked after; common practice. */
    private static final Map<FaultKind, Double> LIMITS = new EnumMap<>(Map.of(
            FaultKind.SCREEN_BLOCKED, 0.1,
            FaultKind.NOZZLE_WORN, 0.05,
            FaultKind.WHEEL_WORN, 0.1,
            FaultKind.BEARING_DRAG, 0.1,
            FaultKind.MAGNETS_WEAKER, 0.1,
            FaultKind.JOINT_BAD, 0.03));

    /** Days of the beginning with which the later ones are compared. */
    private static final int FIRST = 3;

    /** Of an instrument's uncertainty, what changes from day to day; the rest is the same every day. */
    private static final double REPEATED = 0.5;

    /** A size that falls by so many standard uncertainties was mended. */
    private static final double MENDED = 4;

    /** Of the least size that is solved, how far below nothing a size may come out. */
    private static final double BELOW_NOTHING = 5;

    private static final int FARTHEST = 3650;
    private static final int USUAL_VISIT = 30;

    private final FaultTable table;

    private LogStudy(FaultTable table) {
        this.table = table;
    }

    /**
     * What a log tells.
     *
     * @param first day of the log
     * @param last day of the log
     * @param days with readings
     * @param drifts each fault that comes slowly, the one that explains the changes best first
     * @param still sum of squares with nothing changing, in standard uncertainties
     * @param nextVisit the day by which somebody should look
     * @param impossible readings that cannot be, left out
     */
    public record Told(
            LocalDate first,
            LocalDate last,
            int days,
            List<Drift> drifts,
            double still,
            LocalDate nextVisit,
            List<ImpossibleReading> impossible) {
        public Told {
            drifts = List.copyOf(drifts);
            impossible = List.copyOf(impossible);
        }

        /** {@return whether there are days to compare: one alone tells no change} */
        public boolean judged() {
            return days > 1;
        }

        /** {@return the fault that explains the changes, if any grows; null where nothing does} */
        public @Nullable Drift growing() {
            Drift best = drifts.get(0);
            return best.grows() && best.squares() < still - 9 ? best : null;
        }
    }

    private record Mean(double sum, double standard, int count) {
        Mean with(Observation seen) {
            return new Mean(sum + seen.value(), standard + seen.standard(), count + 1);
        }

        double value() {
            return sum / count;
        }
    }

    /** {@return what a log tells of a plant; readings of sets that the design has not are left out, and empty where none is left} */
    public static Optional<Told> of(FaultTable table, PlantLog log) {
        return new LogStudy(table).told(log);
    }

    /** {@return the nozzle sets that a log names and the design has not, each where it is named first; their readings are left out} */
    public static List<TakenReadings.Misplaced> unknownSets(FaultTable table, PlantLog log) {
        List<NozzleGroup> sets = table.expectations().sets();
        Map<String, TakenReadings.Misplaced> unknown = new LinkedHashMap<>();
        for (int i = 0; i < log.entries().size(); i++) {
            String name = log.entries().get(i).nozzles();
            if (name != null && TakenReadings.meant(name, sets) == null) {
                unknown.putIfAbsent(
                        name,
                        new TakenReadings.Misplaced(
                                "/entries[" + i + "]/nozzles",
                                TakenReadings.Why.NO_SUCH_SET,
                                sets.stream().map(NozzleGroup::name).toList()));
            }
        }
        return List.copyOf(unknown.values());
    }

    private Optional<Told> told(PlantLog log) {
        Map<LocalDate, Map<Channel, Mean>> days = new TreeMap<>();
        List<ImpossibleReading> impossible = new ArrayList<>();
        Map<LocalDate, Map<String, SetReadings>> byDay = new TreeMap<>();
        for (int i = 0; i < log.entries().size(); i++) {
            SetReadings entry = log.entries().get(i);
            LocalDate day = entry.day();
            if (day != null) {
                byDay.computeIfAbsent(day, d -> new LinkedHashMap<>()).put("/entries[" + i + "]", entry);
            }
        }
        byDay.forEach((day, sets) -> {
            TakenReadings taken = TakenReadings.of(sets, table.expectations());
            impossible.addAll(taken.impossible());
            Map<Channel, Mean> means = new TreeMap<>(BY_NAME);
            for (Observation seen : taken.readings()) {
                means.put(
                        seen.channel(),
                        means.getOrDefault(seen.channel(), new Mean(0, 0, 0)).with(seen));
            }
            if (!means.isEmpty()) {
                days.put(day, means);
            }
        });
        return days.isEmpty() ? Optional.empty() : Optional.of(told(days, impossible));
    }

    private static final Comparator<Channel> BY_NAME =
            Comparator.comparing(Channel::nozzles).thenComparing(Channel::state).thenComparing(Channel::what);

    private Told told(Map<LocalDate, Map<Channel, Mean>> days, List<ImpossibleReading> impossible) {
        Map<Channel, Mean> beginning = beginning(days);
        List<LocalDate> dates = List.copyOf(days.keySet());
        List<Drift> drifts = new ArrayList<>();
        double still = 0;
        for (Map<Channel, Mean> day : days.values()) {
            still += squares(FaultKind.NOTHING, 0, 0, changes(day, beginning));
        }
        for (Map.Entry<FaultKind, Double> slow : LIMITS.entrySet()) {
            if (table.kinds().contains(slow.getKey())) {
                drifts.add(drift(slow.getKey(), slow.getValue(), days, beginning));
            }
        }
        drifts.sort(Comparator.comparingDouble(Drift::squares));
        LocalDate last = dates.get(dates.size() - 1);
        LocalDate visit = last.plusDays(USUAL_VISIT);
        Drift best = drifts.get(0);
        LocalDate earliest = best.earliest();
        if (best.grows() && earliest != null && earliest.isBefore(visit)) {
            visit = earliest.isBefore(last) ? last : earliest;
        }
        return new Told(dates.get(0), last, days.size(), drifts, still, visit, impossible);
    }

    /** What each reading was on the first days. */
    private static Map<Channel, Mean> beginning(Map<LocalDate, Map<Channel, Mean>> days) {
        Map<Channel, Mean> first = new TreeMap<>(BY_NAME);
        Map<Channel, Integer> seen = new TreeMap<>(BY_NAME);
        for (Map<Channel, Mean> day : days.values()) {
            day.forEach((channel, mean) -> {
                int times = seen.merge(channel, 1, Integer::sum);
                if (times <= FIRST) {
                    Mean known = first.getOrDefault(channel, new Mean(0, 0, 0));
                    first.put(
                            channel,
                            new Mean(
                                    known.sum() + mean.value(),
                                    known.standard() + mean.standard() / mean.count(),
                                    known.count() + 1));
                }
            });
        }
        return first;
    }

    /**
     * A reading as it would be on the plant as designed, changed as it has changed.
     *
     * @param channel what was read
     * @param value SI
     * @param standard uncertainty of the change
     */
    private record Change(Channel channel, double value, double standard) {}

    private List<Change> changes(Map<Channel, Mean> day, Map<Channel, Mean> beginning) {
        List<Change> changes = new ArrayList<>();
        day.forEach((channel, mean) -> {
            Mean before = beginning.getOrDefault(channel, mean);
            double expected = table.expectations().value(channel);
            double value = before.value() == 0 ? expected : expected * mean.value() / before.value();
            double standard = REPEATED * mean.standard() / mean.count() * Math.sqrt(1 + 1.0 / before.count());
            changes.add(new Change(channel, value, standard));
        });
        return changes;
    }

    private double squares(FaultKind kind, int node, double share, List<Change> changes) {
        FaultReader reader = new FaultReader(table, kind, kind.ofOneNozzle() ? 0 : -1);
        double sum = 0;
        for (Change change : changes) {
            double value = at(reader, change.channel(), node, share);
            double off = (change.value() - value) / change.standard();
            sum += off * off;
        }
        return sum;
    }

    /** From the sound plant (node −1) through the sizes that were solved. */
    private double at(FaultReader reader, Channel channel, int node, double share) {
        double from = node < 0
                ? table.expectations().value(channel)
                : reader.at(channel).value(node);
        return share == 0 ? from : from + share * (reader.at(channel).value(node + 1) - from);
    }

    private Drift.Day day(LocalDate date, FaultKind kind, List<Change> changes) {
        FaultReader reader = new FaultReader(table, kind, kind.ofOneNozzle() ? 0 : -1);
        double best = Double.POSITIVE_INFINITY;
        double size = 0;
        double standard = kind.most();
        for (int node = -1; node + 1 < reader.nodes(); node++) {
            double low = node < 0 ? 0 : reader.size(node);
            double high = reader.size(node + 1);
            double push = 0;
            double stiff = 0;
            for (Change change : changes) {
                double from = at(reader, change.channel(), node, 0);
                double slope = at(reader, change.channel(), node, 1) - from;
                double weight = 1 / (change.standard() * change.standard());
                push += weight * slope * (change.value() - from);
                stiff += weight * slope * slope;
            }
            // before the first size less than nothing is allowed, so that noise does not count one way
            double least = node < 0 ? -BELOW_NOTHING : 0;
            double share = stiff > 0 ? Math.max(least, Math.min(1, push / stiff)) : 0;
            double squares = squares(kind, node, share, changes);
            if (squares < best) {
                best = squares;
                size = low + share * (high - low);
                standard = stiff > 0 ? (high - low) / Math.sqrt(stiff) : kind.most();
            }
        }
        return new Drift.Day(date, size, Math.max(standard, 1e-9));
    }

    private Drift drift(
            FaultKind kind, double limit, Map<LocalDate, Map<Channel, Mean>> days, Map<Channel, Mean> beginning) {
        List<Drift.Day> points = new ArrayList<>();
        double squares = 0;
        for (Map.Entry<LocalDate, Map<Channel, Mean>> one : days.entrySet()) {
            List<Change> changes = changes(one.getValue(), beginning);
            Drift.Day day = day(one.getKey(), kind, changes);
            points.add(day);
            squares += residual(kind, day.size(), changes);
        }
        List<Drift.Day> since = points.subList(lastMended(points), points.size());
        LocalDate last = points.get(points.size() - 1).day();
        // straight line, days counted back from the last one: its value there is what it is now
        double w = 0;
        double wt = 0;
        double wtt = 0;
        double wy = 0;
        double wty = 0;
        for (Drift.Day day : since) {
            double weight = 1 / (day.standard() * day.standard());
            double t = ChronoUnit.DAYS.between(last, day.day());
            w += weight;
            wt += weight * t;
            wtt += weight * t * t;
            wy += weight * day.size();
            wty += weight * t * day.size();
        }
        double determinant = w * wtt - wt * wt;
        boolean line = since.size() > 2 && determinant > 1e-12 * w * wtt;
        double perDay = line ? (w * wty - wt * wy) / determinant : 0;
        double now = line ? (wtt * wy - wt * wty) / determinant : wy / w;
        double scatter = 0;
        for (Drift.Day day : since) {
            double t = ChronoUnit.DAYS.between(last, day.day());
            double off = (day.size() - now - perDay * t) / day.standard();
            scatter += off * off;
        }
        double wider = Math.sqrt(Math.max(1, scatter / Math.max(1, since.size() - 2)));
        double perDayStandard = line ? wider * Math.sqrt(w / determinant) : Double.POSITIVE_INFINITY;
        double nowStandard = wider * (line ? Math.sqrt(wtt / determinant) : 1 / Math.sqrt(w));
        return new Drift(
                kind,
                points,
                since.get(0).day(),
                perDay,
                perDayStandard,
                now,
                nowStandard,
                limit,
                met(last, now, perDay, limit),
                line ? met(last, now + 2 * nowStandard, perDay + 2 * perDayStandard, limit) : null,
                squares);
    }

    private double residual(FaultKind kind, double size, List<Change> changes) {
        FaultReader reader = new FaultReader(table, kind, kind.ofOneNozzle() ? 0 : -1);
        int node = -1;
        while (node + 2 < reader.nodes() && reader.size(node + 1) < size) {
            node++;
        }
        double low = node < 0 ? 0 : reader.size(node);
        return squares(kind, node, (size - low) / (reader.size(node + 1) - low), changes);
    }

    private static int lastMended(List<Drift.Day> points) {
        int since = 0;
        for (int i = 1; i < points.size(); i++) {
            double fell = points.get(i - 1).size() - points.get(i).size();
            if (fell
                    > MENDED
                            * Math.hypot(
                                    points.get(i - 1).standard(), points.get(i).standard())) {
                since = i;
            }
        }
        return since;
    }

    private static @Nullable LocalDate met(LocalDate last, double now, double perDay, double limit) {
        if (now >= limit) {
            return last;
        }
        double days = perDay > 0 ? Math.floor((limit - now) / perDay) : Double.POSITIVE_INFINITY;
        return days <= FARTHEST ? last.plusDays((long) days) : null;
    }
}
