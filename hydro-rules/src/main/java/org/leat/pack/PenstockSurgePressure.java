package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Safeguards;
import org.leat.design.StopWater;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Closing;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.ValveNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Peak pressure of every stop of the water against what the pipe may see for a moment. */
final class PenstockSurgePressure implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/surge-pressure", Level.ERROR)
            .title("surge against what the pipe may see for a moment")
            .why(
                    "Water that is stopped quickly hammers: the pressure rises by the wave speed times the velocity stopped,"
                            + " on top of the standing pressure. A lever valve or a plugged nozzle is enough to split a pipe.")
            .formula("within 2L/a: p = ρ g (intake level − elevation) + ρ a ΔV (Joukowsky);"
                    + " slower: Δh = 2 L ΔV / (g t_e) (Michaud), t_e the time in which"
                    + " the valve stops the flow: most of it goes in the last of its travel; waves followed in time where"
                    + " this is no bound; limit = rating at the hottest wall · surge allowance")
            .judged(
                    "the worst of: valve shut by hand, nozzle shut, one nozzle plugged at once, on each nozzle set on hand;"
                            + " of a plugged nozzle the first blow, not what follows where the water column parts")
            .source("Joukowsky 1898; Michaud 1878; Wylie and Streeter, Fluid Transients in Systems, ch. 1-2")
            .source(
                    "loss of valves part open: Weisbach, in King and Brater, Handbook of Hydraulics (from memory); Perry's"
                            + " Chemical Engineers' Handbook")
            .source("surge allowance: PE100+ Association technical guidance (PE), AWWA C906 and C900")
            .message("holds", "section", "surge")
            .message("too-high", "section", "surge", "time")
            .message("slower", "time")
            .message("thicker", "sdr", "rating")
            .message("stronger-grade", "sdr", "rating")
            .message("needed", "rating")
            .build();

    private static final double[] TIMES = {1, 2, 3, 5, 8, 10, 15, 20, 30, 45, 60, 90, 120, 180, 300, 600};

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().closing().isEmpty()) {
            return Open.unsolved(j);
        }
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            outcomes.add(
                    valveNotListed(j)
                            ? j.at(sections.get(i).path() + "/pipe")
                                    .notGiven(sections.get(sections.size() - 1).path() + "/fittings")
                            : worst(j, sections.get(i), i));
        }
        return outcomes;
    }

    /** A valve is said to stop the water of several nozzles at once, but is not among the fittings. */
    private static boolean valveNotListed(Judgement j) {
        Safeguards safeguards = j.design().safeguards();
        StopWater stop = safeguards == null ? null : safeguards.stopWater();
        return (stop == StopWater.QUICK_VALVE || stop == StopWater.SLOW_VALVE)
                && j.cases().closing().stream().noneMatch(c -> c.cause() == Closing.Cause.VALVE)
                && j.cases().running().stream()
                        .anyMatch(r -> r.nozzles().bores().size() > 1);
    }

    /** The stop that leaves the least margin. No wave is followed through a stop that others already outdo. */
    private static Outcome worst(Judgement j, SectionNumbers section, int index) {
        Outcome worst = null;
        List<Closing> stops = j.cases().closing();
        boolean tooMuch = stops.stream().anyMatch(c -> tooMuch(section, c, index));
        for (Closing closing : stops) {
            boolean surpassed =
                    tooMuch ? !tooMuch(section, closing, index) : worst != null && worst.kind() == Kind.OPEN;
            if (surpassed) {
                continue;
            }
            Outcome outcome = judge(j, closing, section, closing.sections().get(index));
            if (worst == null || margin(outcome) < margin(worst)) {
                worst = outcome;
            }
        }
        return java.util.Objects.requireNonNull(worst);
    }

    private static boolean tooMuch(SectionNumbers section, Closing closing, int index) {
        return closing.sections().get(index) instanceof Amount.Known pressure
                && section.surgeRatingHot() instanceof Amount.Known rating
                && !Comparison.atMost(pressure.value(), rating.value(), QuantityKind.PRESSURE)
                        .holds();
    }

    /** A failure first, then what is open, because an unknown may be worse than any pass. */
    private static double margin(Outcome outcome) {
        return switch (outcome.kind()) {
            case FAIL -> java.util.Objects.requireNonNull(outcome.comparison()).margin();
            case PASS ->
                1 + java.util.Objects.requireNonNull(outcome.comparison()).margin();
            default -> 0.5;
        };
    }

    private static Outcome judge(Judgement j, Closing closing, SectionNumbers section, Amount peak) {
        Spot spot = j.at(section.path() + "/pipe").during(closing.id());
        if (!(peak instanceof Amount.Known pressure)) {
            return Open.because(spot, peak);
        }
        if (!(section.surgeRatingHot() instanceof Amount.Known rating)) {
            return Open.because(spot, section.surgeRatingHot());
        }
        Comparison comparison = Comparison.atMost(pressure.value(), rating.value(), QuantityKind.PRESSURE);
        Amount.Unknown parts = comparison.holds() && timed(closing) ? closing.parts() : null;
        if (parts != null) {
            // where the column parts, what follows when it closes again can be more than any wave before
            return spot.unknownOf(parts);
        }
        return spot.compare(
                comparison,
                "holds",
                "too-high",
                Arg.of("section", section.name()),
                Arg.of("surge", closing.surgeHead().or(0), QuantityKind.LENGTH),
                Arg.of("time", closing.effectiveTime(), QuantityKind.TIME));
    }

    /** Whether a plugged nozzle alone is too much for the section: then no slower valve helps. */
    private static boolean plugFails(Judgement j, Outcome failure) {
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        for (Closing closing : j.cases().closing()) {
            for (int i = 0; i < sections.size(); i++) {
                if (closing.cause() == Closing.Cause.NOZZLE_PLUGGED
                        && failure.path().startsWith(sections.get(i).path() + "/")
                        && closing.sections().get(i).or(0)
                                > sections.get(i).surgeRatingHot().or(Double.POSITIVE_INFINITY)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** A plug in a nozzle parts the column of nearly every pipe; of it the first blow is judged, as the card says. */
    private static boolean timed(Closing closing) {
        return closing.cause() == Closing.Cause.VALVE || closing.cause() == Closing.Cause.NOZZLE_SHUT;
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        String path = timePath(j, failure);
        if (path != null && !plugFails(j, failure)) {
            Search.least(this, j, failure, java.util.Arrays.stream(TIMES).mapToObj(t -> slower(path, t)))
                    .ifPresent(ways::add);
        }
        double share = needed(j, failure);
        ways.addAll(StrongerPipe.ways(this, j, failure, share));
        return ways;
    }

    private static Candidate slower(String path, double seconds) {
        return Candidate.of(
                "slower",
                new Edit(path, Si.quantity(seconds, "s", javax.measure.quantity.Time.class)),
                Arg.of("time", seconds, QuantityKind.TIME));
    }

    /** The field that says how fast the water is stopped; null for a plugged nozzle, which nobody times. */
    private static @org.jspecify.annotations.Nullable String timePath(Judgement j, Outcome failure) {
        for (Closing closing : j.cases().closing()) {
            if (closing.id().equals(failure.during()) && timed(closing)) {
                ValveNumbers valve = closing.valve();
                return valve == null ? null : valve.path();
            }
        }
        return null;
    }

    /** The rating at 20 °C that would do, by the ratio of what the pipe sees to what it may see. */
    private static double needed(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        for (SectionNumbers section : j.plant().numbers().penstock().sections()) {
            if (comparison != null && failure.path().startsWith(section.path() + "/")) {
                return section.rating().or(Double.NaN) * comparison.value() / comparison.high();
            }
        }
        return Double.NaN;
    }
}
