package org.leat.pack.kit;

import static org.leat.quantity.Quantities.mm;

import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.design.NozzleSet;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Other nozzles to open in every position: those on hand first, then what could be made in half millimetres. */
public final class NozzlesOnHand {

    /** What {@link #smaller} says. */
    public static final String NONE_LARGER = "Nozzles of {bore:mm} in every open position, none larger on hand.";

    /** What {@link #more} says. */
    public static final String MORE =
            "{count} nozzles of {bore:mm}, none larger on hand: one of them plugged stops less of the water.";

    /** Jets round one wheel at most: common practice. */
    private static final int MOST_JETS = 6;

    private static final double SAME = 1e-6;
    private static final double HALF_MILLIMETRE = 0.0005;
    private static final int LEAST_HALF_MILLIMETRES = 4;

    /** Wider nozzles are not tried one after another: a design that has them is far off anyway. */
    private static final int MOST_HALF_MILLIMETRES = 200;

    private NozzlesOnHand() {}

    /** {@return candidates with bores below the largest open, largest first; told with {@code bore}} */
    public static Stream<Change> smaller(Judgement j, Outcome.Fail failure) {
        double open = bores(j).max(Comparator.naturalOrder()).orElseThrow();
        Stream<Double> onHand = available(j).filter(bore -> bore < open - SAME).sorted(Comparator.reverseOrder());
        Stream<Double> made = Stream.iterate(
                        Math.min(MOST_HALF_MILLIMETRES, Math.floor((open - SAME) / HALF_MILLIMETRE)),
                        n -> n >= LEAST_HALF_MILLIMETRES,
                        n -> n - 1)
                .map(n -> n * HALF_MILLIMETRE);
        return Stream.concat(onHand, made).map(bore -> noneLarger(j, candidate(j, bore), bore));
    }

    /** Larger ones on hand would be fitted again some day: they go. */
    private static Change noneLarger(Judgement j, Change candidate, double bore) {
        List<Quantity<Length>> kept = j.design().nozzles().available().stream()
                .filter(nozzle -> Si.of(nozzle) <= bore + SAME)
                .toList();
        if (kept.size() == j.design().nozzles().available().size()) {
            return candidate;
        }
        return candidate.and("/nozzles/available", kept);
    }

    /** {@return candidates with more nozzles, of no more area together; told with {@code count} and {@code bore}} */
    public static Stream<Change> more(Judgement j) {
        double area = bores(j).mapToDouble(bore -> bore * bore).sum();
        int open = j.design().nozzles().open().size();
        return IntStream.rangeClosed(open + 1, MOST_JETS).boxed().flatMap(count -> {
            long halves = (long) Math.floor(Math.sqrt(area / count) / HALF_MILLIMETRE + SAME);
            return halves < LEAST_HALF_MILLIMETRES
                    ? Stream.empty()
                    : Stream.of(jets(j, count, halves * HALF_MILLIMETRE));
        });
    }

    private static Change jets(Judgement j, int count, double bore) {
        return noneLarger(j, candidate(count, bore), bore).with("count", (long) count);
    }

    /** {@return candidates with bores on hand above the smallest open, smallest first; told with {@code bore}} */
    public static Stream<Change> larger(Judgement j, Outcome.Fail failure) {
        double open = bores(j).min(Comparator.naturalOrder()).orElseThrow();
        return available(j).filter(bore -> bore > open + SAME).sorted().map(bore -> candidate(j, bore));
    }

    /** {@return a change, and with it no nozzles kept but those of some sets; told with {@code sets}} */
    public static Change only(Change change, Judgement j, List<NozzleGroup> sets) {
        NozzleSet nozzles = j.design().nozzles();
        Change kept = nozzles.sets().isEmpty()
                ? change.and(
                        "/nozzles/available",
                        nozzles.available().stream()
                                .filter(bore -> sets.stream().anyMatch(set -> isOf(set, Si.of(bore))))
                                .toList())
                : change.and(
                        "/nozzles/sets",
                        nozzles.sets().stream()
                                .filter(choice -> sets.stream()
                                        .anyMatch(set -> set.bores()
                                                .equals(choice.open().stream()
                                                        .map(Si::of)
                                                        .toList())))
                                .toList());
        return kept.with("sets", sets.stream().map(NozzleGroup::name).collect(Collectors.joining(", ")));
    }

    private static boolean isOf(NozzleGroup set, double bore) {
        return set.bores().stream().allMatch(each -> Math.abs(each - bore) < SAME);
    }

    private static Stream<Double> bores(Judgement j) {
        return j.design().nozzles().open().stream().map(Si::of);
    }

    private static Stream<Double> available(Judgement j) {
        return j.design().nozzles().available().stream().map(Si::of);
    }

    private static Change candidate(Judgement j, double bore) {
        return candidate(j.design().nozzles().open().size(), bore);
    }

    private static Change candidate(int positions, double bore) {
        double millimetres = Math.rint(bore * 1e5) / 100;
        return Change.of("/nozzles/open", Collections.nCopies(positions, mm(millimetres)))
                .with("bore", bore, QuantityKind.LENGTH);
    }
}
