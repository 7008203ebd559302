package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.Kind;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.solve.NodePressure;
import org.leat.quantity.QuantityKind;

/** Lowest pressure while running or in a stop against what the wall stands from outside. */
final class PenstockCollapse implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("penstock/collapse", Level.ERROR)
            .title("lowest pressure against the pipe's collapse")
            .why(
                    "A stop that hammers is followed by suction as deep; so is a siphon. A thin wall folds flat in it, and a"
                            + " fold is where it cracks. Where only the safety factor is short this fails as a warning.")
            .formula(
                    "running: p = ρ g (grade line − elevation); stop: one pipe shut at the nozzles, the mirror image of"
                            + " the surge below the intake's level; else a vacuum, or the lowest of the waves where the wall would not"
                            + " stand that; limit = 2 E/((1 − ν²)(SDR − 1)³) · ovality factor / safety")
            .judged(
                    "running on each nozzle set (E of hours), and every stop of the water, at the nozzles or at the intake (E of a"
                            + " surge)")
            .source("PPI Handbook of PE Pipe, ch. 6; AWWA M55 (safety factor 2); Wylie and Streeter, ch. 2")
            .limit("safety", QuantityKind.RATIO, 2, "", "AWWA M55; PPI")
            .limit("ovality", QuantityKind.RATIO, 3, "%", "coiled pipe, PPI Handbook of PE Pipe, ch. 6 (from memory)")
            .limit("creep", QuantityKind.RATIO, 1.9, "", OutsidePressure.CREEP_SOURCE)
            .message("stands", "section")
            .message("helix", "section")
            .message("collapses", "section")
            .message("thicker", "sdr", "rating")
            .message("stronger-grade", "sdr", "rating")
            .message("thick-wall", "ratio")
            .build();

    /** Pressure head deeper than any vacuum, m. */
    private static final double FAR_BELOW_VACUUM = 100;

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        List<SectionNumbers> sections = j.plant().numbers().penstock().sections();
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            SectionNumbers section = sections.get(i);
            outcomes.add(
                    OutsidePressure.soft(j).contains(section)
                            ? judge(j, i, section)
                            : j.at(section.path() + "/pipe").pass("helix", Arg.of("section", section.name())));
        }
        return outcomes;
    }

    private static Outcome judge(Judgement j, int index, SectionNumbers section) {
        Spot spot = j.at(section.path() + "/pipe");
        double creep = j.limit("creep").value();
        Outcome worst = null;
        Amount hours = critical(j, section, OutsidePressure.modulusOfHours(section, creep));
        for (Running running : j.cases().running()) {
            worst = worse(worst, outcome(j, spot.during(running), section, suction(running, index), hours));
        }
        Amount now = critical(j, section, section.modulus());
        for (Closing closing : j.cases().closing()) {
            worst = worse(worst, stop(j, spot.during(closing), closing, index, section, now));
        }
        return Objects.requireNonNull(worst);
    }

    /** By the bound that costs nothing; by the waves where the wall would not stand that. */
    private static Outcome stop(
            Judgement j, Spot spot, Closing closing, int index, SectionNumbers section, Amount critical) {
        if (!(closing.surgeHead() instanceof Amount.Known)) {
            return Open.because(spot, closing.surgeHead());
        }
        double bound = bound(j, closing, section);
        Outcome cheap = outcome(j, spot, section, bound, critical);
        if (cheap.kind() == Kind.PASS || cheap.kind() == Kind.OPEN) {
            return cheap;
        }
        if (closing.cause() == Closing.Cause.SCREEN_BLOCKED && j.design().intake() == null) {
            return spot.notGiven("/intake"); // a vent may be there
        }
        // where the column parts the water boils at next to a vacuum: no wave sucks more
        Amount lowest = closing.lowest().get(index);
        double suction = Math.min(bound, lowest instanceof Amount.Known known ? Math.max(0, -known.value()) : bound);
        return outcome(j, spot, section, suction, critical);
    }

    /** In one pipe the mirror image of the surge; else, and where the water hangs below a shut inlet, a vacuum. */
    private static double bound(Judgement j, Closing closing, SectionNumbers section) {
        double highest = Math.max(section.fromElevation(), section.toElevation());
        double level = j.plant().numbers().site().grossHead();
        boolean mirror = !closing.cause().atIntake()
                && j.plant().numbers().penstock().sections().size() == 1;
        double head = mirror ? level - closing.surgeHead().or(0) - highest : -FAR_BELOW_VACUUM;
        return OutsidePressure.ofHead(j, head);
    }

    private static double suction(Running running, int index) {
        List<NodePressure> nodes = running.water().nodes();
        return Math.max(
                0, -Math.min(nodes.get(index).pressure(), nodes.get(index + 1).pressure()));
    }

    private static Amount critical(Judgement j, SectionNumbers section, Amount modulus) {
        return OutsidePressure.critical(section, modulus, j.limit("ovality").value());
    }

    private static Outcome outcome(Judgement j, Spot spot, SectionNumbers section, double suction, Amount critical) {
        if (!(critical instanceof Amount.Known known)) {
            return Open.because(spot, critical);
        }
        double safety = j.limit("safety").value();
        Comparison comparison = Comparison.atMost(suction, known.value() / safety, QuantityKind.PRESSURE);
        return spot.compare(
                OutsidePressure.level(comparison, safety),
                comparison,
                "stands",
                "collapses",
                Arg.of("section", section.name()));
    }

    private static Outcome worse(@Nullable Outcome one, Outcome other) {
        return one == null || margin(other) < margin(one) ? other : one;
    }

    private static double margin(Outcome outcome) {
        Comparison comparison = outcome.comparison();
        return comparison == null ? Double.NEGATIVE_INFINITY : comparison.margin();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = StrongerPipe.ways(this, j, failure, Double.NaN);
        return ways.isEmpty() ? OutsidePressure.thickerWall(j, failure) : ways;
    }
}
