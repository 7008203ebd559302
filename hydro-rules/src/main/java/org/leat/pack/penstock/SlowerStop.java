package org.leat.pack.penstock;

import static org.leat.quantity.Quantities.seconds;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.pack.kit.WorstStop;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;

/** The water of the stop in which a rule failed, shut more slowly; told with {@code time}. */
final class SlowerStop {

    static final String TEXT = "Shut no faster than in {time:s}: a valve of many turns, not a lever.";

    /** Nobody turns a wheel evenly for longer than that: the slowest stop that a hand or a geared actuator makes. */
    static final double SLOWEST = 120;

    private static final double[] TIMES = {1, 2, 3, 5, 8, 10, 15, 20, 30, 45, 60, 90, SLOWEST};

    private SlowerStop() {}

    /** {@return slower stops, the fastest first; none for a plugged nozzle, which nobody times} */
    static Stream<Change> of(Judgement j, Outcome.Fail failure) {
        String path = timePath(j, failure);
        return path == null ? Stream.empty() : DoubleStream.of(TIMES).mapToObj(time -> in(j, path, time));
    }

    /** {@return the stop timed at a path made in a time, s, and no other valve of the pipe shut faster than the one there} */
    static Change in(Judgement j, String path, double time) {
        List<ValveNumbers> valves = j.numbers().penstock().sections().stream()
                .flatMap(section -> section.valves().stream())
                .toList();
        Change change = Change.of(path, seconds(time)).with("time", time, TIME);
        if (valves.stream().noneMatch(valve -> path.equals(valve.path()))) {
            return change; // at a nozzle
        }
        for (ValveNumbers valve : valves) {
            String other = valve.path();
            if (other != null && !other.equals(path) && valve.closingTime() < time) {
                change = change.and(other, seconds(time));
            }
        }
        return change;
    }

    /** The field that says how fast the water is stopped. */
    private static @Nullable String timePath(Judgement j, Outcome.Fail failure) {
        return j.solved().closing().stream()
                .filter(closing -> closing.id().equals(failure.during()) && WorstStop.timed(closing))
                .flatMap(closing -> Stream.ofNullable(closing.valve()))
                .findFirst()
                .map(ValveNumbers::path)
                .orElse(null);
    }
}
