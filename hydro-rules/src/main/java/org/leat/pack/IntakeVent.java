package org.leat.pack;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
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
import org.leat.design.Intake;
import org.leat.design.Vent;
import org.leat.pack.Search.Candidate;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** A way for air into the pipe below a shut-off at the top. */
final class IntakeVent implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("intake/vent", Level.ERROR)
            .title("air into the pipe below a shut-off at the top")
            .why(
                    "Where a valve or a blocked screen shuts the top while the nozzles run, the water hangs in the pipe and"
                            + " draws it flat. A vent pipe below the shut-off lets air in. Without one this fails as an error where"
                            + " the wall buckles, as a warning where only the safety factor is short.")
            .formula("suction = ρ g (elevation above the nozzles), at most a vacuum; limit = 2 E/((1 − ν²)(SDR − 1)³)"
                    + " · ovality factor / safety, E of some hours' load; a vent of at least a share of the bore")
            .judged("top shut or screen blocked, nozzles open, the pipe as hot as it gets")
            .source("PPI Handbook of PE Pipe, ch. 6; AWWA M55 (safety factor 2)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("safety", QuantityKind.RATIO, 2, "", "AWWA M55; PPI")
            .limit("ovality", QuantityKind.RATIO, 3, "%", "coiled pipe, PPI Handbook of PE Pipe, ch. 6 (from memory)")
            .limit("creep", QuantityKind.RATIO, 1.9, "", OutsidePressure.CREEP_SOURCE)
            .limit("bore-share", QuantityKind.RATIO, 0.333, "", RuleCard.COMMON_PRACTICE)
            .message("stands", "section")
            .message("vented")
            .message("helix")
            .message("collapses", "section")
            .message("above-valve", "section")
            .message("narrow")
            .message("add-vent", "bore")
            .build();

    private static final String PATH = "/intake/vent";

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Intake intake = j.design().intake();
        if (intake == null) {
            return List.of(j.at("/").notGiven(PATH));
        }
        Vent vent = intake.vent();
        Spot spot = j.at(PATH);
        if (vent != null && Boolean.TRUE.equals(vent.belowValve()) && Si.of(vent.bore()) >= least(j)) {
            return List.of(spot.compare(
                    Comparison.atLeast(Si.of(vent.bore()), least(j), QuantityKind.LENGTH), "vented", "narrow"));
        }
        Outcome unvented = unvented(j, spot);
        if (vent == null || unvented.kind() == Kind.PASS) {
            return List.of(unvented);
        }
        if (vent.belowValve() == null) {
            return List.of(spot.notGiven(PATH + "/below-valve"));
        }
        if (!vent.belowValve()) {
            return List.of(spot.fail("above-valve", Arg.of("section", first(j).name())));
        }
        return List.of(spot.compare(
                Comparison.atLeast(Si.of(vent.bore()), least(j), QuantityKind.LENGTH), "vented", "narrow"));
    }

    /** What the pipe would do without a vent, in the section with the least margin. */
    private static Outcome unvented(Judgement j, Spot spot) {
        Outcome worst = null;
        for (SectionNumbers section : OutsidePressure.soft(j)) {
            Amount modulus =
                    OutsidePressure.modulusOfHours(section, j.limit("creep").value());
            Amount critical = OutsidePressure.critical(
                    section, modulus, j.limit("ovality").value());
            if (!(critical instanceof Amount.Known known)) {
                return Open.because(spot, critical);
            }
            double suction = OutsidePressure.hanging(j, Math.max(section.fromElevation(), section.toElevation()));
            double safety = j.limit("safety").value();
            Comparison comparison = Comparison.atMost(suction, known.value() / safety, QuantityKind.PRESSURE);
            if (worst == null
                    || comparison.margin()
                            < Objects.requireNonNull(worst.comparison()).margin()) {
                worst = spot.compare(
                        OutsidePressure.level(comparison, safety),
                        comparison,
                        "stands",
                        "collapses",
                        Arg.of("section", section.name()));
            }
        }
        return worst == null ? spot.pass("helix") : worst;
    }

    private static SectionNumbers first(Judgement j) {
        return j.plant().numbers().penstock().sections().get(0);
    }

    private static double least(Judgement j) {
        return j.limit("bore-share").value() * first(j).bore();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        double millimetres = Math.ceil(least(j) * 1000);
        Vent vent = new Vent(Si.quantity(millimetres, "mm", Length.class), true);
        Candidate add =
                Candidate.of("add-vent", new Edit(PATH, vent), Arg.of("bore", millimetres / 1000, QuantityKind.LENGTH));
        return j.design().intake() == null
                ? List.of()
                : Search.first(this, j, failure, Stream.of(add)).stream().toList();
    }
}
