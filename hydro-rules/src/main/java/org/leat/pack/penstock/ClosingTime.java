package org.leat.pack.penstock;

import static org.leat.check.Level.WARNING;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.TIME;

import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.ClosingTimes;
import org.leat.plant.numbers.PenstockNumbers.ValveNumbers;

/** How fast the water can be shut against the time that keeps its surge within the rating itself. */
final class ClosingTime {

    static final Rule RULE = Rule.of("penstock/closing-time", WARNING, "closing time of the fastest valve")
            .why(
                    "A valve that is shut every week loads the pipe every week. Shut slowly enough, its surge stays within the"
                            + " rating itself and the allowance for surges is kept for accidents.")
            .formula(
                    "t_e ≥ 2 Σ(L V) ρ / (rating − standing pressure) (Michaud); t_e the time in which the valve stops the flow: most of it"
                            + " goes in the last of its travel; none needed where an instant stop fits")
            .judged("the valve in the penstock and the one at the nozzle, on the nozzle set that needs most time")
            .source("Michaud 1878; Joukowsky 1898; Wylie and Streeter, Fluid Transients in Systems, ch. 3")
            .source(
                    "loss of valves part open: Weisbach, in King and Brater, Handbook of Hydraulics (from memory); Perry's"
                            + " Chemical Engineers' Handbook")
            .passes(
                    "slow-enough",
                    "Shut in {value:s}, the valve stops the water in {effective:s} and makes a surge of"
                            + " {surge:m}.")
            .fails(
                    "too-fast",
                    "Shut in {value:s}, the valve stops the water in {effective:s} and makes a surge of"
                            + " {surge:m}; {limit} keeps it within the pipe's rating.")
            .notApplicable("no-valve", "Nothing shuts the water.")
            .judgeAll(ClosingTime::judge)
            .wayOut("slower", "Shut in {time:s} or more: a valve of many turns, not a lever.", ClosingTime::slower)
            .lastAdvice(
                    "nobody",
                    "That takes {time:s}, longer than a hand or a geared actuator shuts a valve: a deflector that turns the jet"
                            + " aside and lets the water run, or several smaller nozzles shut one after the other.",
                    ClosingTime::tooSlow)
            .build();

    private ClosingTime() {}

    private static List<Outcome> judge(Judgement j) {
        List<Closing> all = j.solved().closing();
        List<Outcome> worst = Stream.of(Closing.Cause.VALVE, Closing.Cause.NOZZLE_SHUT)
                .map(cause ->
                        all.stream().filter(closing -> closing.cause() == cause).toList())
                .filter(stops -> !stops.isEmpty())
                .map(stops -> Worst.outcome(j.each(stops, stop -> judge(j, stop))))
                .toList();
        return worst.isEmpty() ? List.of(j.at("/penstock").says("no-valve")) : worst;
    }

    private static Outcome judge(Judgement j, Closing closing) {
        Spot spot = j.at(path(closing)).during(closing);
        double surge = spot.known(closing.surgeHead());
        return spot.with("effective", closing.effectiveTime(), TIME)
                .with("surge", surge, LENGTH)
                .atLeast(closing.closingTime(), spot.known(ClosingTimes.least(j.solved(), closing)), TIME);
    }

    /** The field with the time; the penstock itself where the time is taken for a valve without one. */
    private static String path(Closing closing) {
        ValveNumbers valve = closing.valve();
        return valve == null || valve.path() == null ? "/penstock" : valve.path();
    }

    /** By the closed form first; by the waves where that is not enough. */
    private static Stream<Change> slower(Judgement j, Outcome.Fail failure) {
        if (failure.path().equals("/penstock")) {
            return Stream.empty();
        }
        return Stream.<DoubleSupplier>of(failure::limit, () -> byWaves(j, failure))
                .map(time -> Math.ceil(time.getAsDouble()))
                .takeWhile(whole -> whole <= SlowerStop.SLOWEST)
                .map(whole -> SlowerStop.in(j, failure.path(), whole));
    }

    private static Stream<Change> tooSlow(Judgement j, Outcome.Fail failure) {
        double asked = failure.limit();
        double time = Math.ceil(asked > SlowerStop.SLOWEST ? asked : byWaves(j, failure));
        return time > SlowerStop.SLOWEST ? Stream.of(Change.advice().with("time", time, TIME)) : Stream.empty();
    }

    /** The time that both the closed form and the waves ask for, s. */
    private static double byWaves(Judgement j, Outcome.Fail failure) {
        return j.solved().closing().stream()
                .filter(closing -> closing.id().equals(failure.during()))
                .mapToDouble(closing -> ClosingTimes.byCharacteristics(j.solved(), closing))
                .reduce(failure.limit(), Math::max);
    }
}
