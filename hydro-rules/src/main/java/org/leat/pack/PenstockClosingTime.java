package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.stream.Stream;
import javax.measure.quantity.Time;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Closing;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.ValveNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** How fast the water can be shut against the time that keeps its surge within the rating itself. */
final class PenstockClosingTime implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/closing-time", Level.WARNING)
            .title("closing time of the fastest valve")
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
            .message("slow-enough", "effective", "surge")
            .message("too-fast", "effective", "surge")
            .message("no-valve")
            .message("slower", "time")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().closing().isEmpty()) {
            return Open.unsolved(j);
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (Closing.Cause cause : List.of(Closing.Cause.VALVE, Closing.Cause.NOZZLE_SHUT)) {
            Outcome worst = null;
            for (Closing closing : j.cases().closing()) {
                if (closing.cause() == cause) {
                    Outcome outcome = judge(j, closing);
                    worst = worst == null || margin(outcome) < margin(worst) ? outcome : worst;
                }
            }
            if (worst != null) {
                outcomes.add(worst);
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/penstock").notApplicable("no-valve")) : outcomes;
    }

    private static Outcome judge(Judgement j, Closing closing) {
        Spot spot = j.at(path(closing)).during(closing);
        if (!(closing.surgeHead() instanceof Amount.Known surge)) {
            return Open.because(spot, closing.surgeHead());
        }
        Amount least = ClosingTimes.least(j, closing);
        return least instanceof Amount.Known known
                ? spot.compare(
                        Comparison.atLeast(closing.closingTime(), known.value(), QuantityKind.TIME),
                        "slow-enough",
                        "too-fast",
                        Arg.of("effective", closing.effectiveTime(), QuantityKind.TIME),
                        Arg.of("surge", surge.value(), QuantityKind.LENGTH))
                : Open.because(spot, least);
    }

    /** The field with the time; the penstock itself where the time is taken for a valve without one. */
    private static String path(Closing closing) {
        ValveNumbers valve = closing.valve();
        return valve == null || valve.path() == null ? "/penstock" : valve.path();
    }

    private static double margin(Outcome outcome) {
        Comparison comparison = outcome.comparison();
        return comparison == null ? Double.NEGATIVE_INFINITY : comparison.margin();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null || failure.path().equals("/penstock")) {
            return List.of();
        }
        DoubleSupplier byClosedForm = comparison::low;
        DoubleSupplier byWaves = () -> j.cases().closing().stream()
                .filter(closing -> closing.id().equals(failure.during()))
                .mapToDouble(closing -> ClosingTimes.byCharacteristics(j, closing))
                .max()
                .orElse(0);
        Stream<Candidate> slower = Stream.of(byClosedForm, byWaves)
                .map(time -> slower(failure.path(), Math.ceil(Math.max(comparison.low(), time.getAsDouble()))));
        return Search.first(this, j, failure, slower).stream().toList();
    }

    private static Candidate slower(String path, double seconds) {
        return Candidate.of(
                "slower",
                new Edit(path, Si.quantity(seconds, "s", Time.class)),
                Arg.of("time", seconds, QuantityKind.TIME));
    }
}
