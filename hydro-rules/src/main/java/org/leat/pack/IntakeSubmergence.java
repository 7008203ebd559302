package org.leat.pack;

import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Length;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Intake;
import org.leat.hydraulics.Submergence;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Depth of water over the pipe's inlet against the vortex that draws air. */
final class IntakeSubmergence implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("intake/submergence", Level.WARNING)
            .title("depth of water over the pipe's inlet")
            .why(
                    "Over a shallow inlet the water spins a hole down to the pipe. The air it draws gathers at high points,"
                            + " spits from the nozzle and takes power.")
            .formula("greatest of: C V √D (Gordon, water from the side); D (1 + 2.3 F) − D/2; D (0.5 + 2 F) − D/2;"
                    + " 3 D and 0.3 m; F = V/√(g D)")
            .judged("running on the nozzle set with most flow, at the lowest water level")
            .source(
                    "Gordon, Water Power, April 1970; ANSI/HI 9.8; Knauss, Swirling Flow Problems at Intakes, 1987 (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .message("deep-enough", "velocity")
            .message("too-shallow", "velocity")
            .message("deeper", "depth")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Intake intake = j.design().intake();
        if (intake == null || intake.submergence() == null) {
            return List.of(j.at("/intake").notGiven("/intake/submergence"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running running = Worst.most(j.cases().running(), IntakeSubmergence::velocity);
        double bore = j.plant().numbers().penstock().sections().get(0).bore();
        double least = Submergence.leastAboveCrown(Submergence.LATERAL_APPROACH, velocity(running), bore);
        return List.of(j.at("/intake/submergence")
                .during(running)
                .compare(
                        Comparison.atLeast(Si.of(intake.submergence()), least, QuantityKind.LENGTH),
                        "deep-enough",
                        "too-shallow",
                        Arg.of("velocity", velocity(running), QuantityKind.SPEED)));
    }

    private static double velocity(Running running) {
        return running.water().sections().get(0).velocity();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        double depth = Math.ceil(comparison.low() * 20 - 1e-9) / 20;
        Candidate deeper = Candidate.of(
                "deeper",
                new Edit("/intake/submergence", Si.quantity(depth, "m", Length.class)),
                Arg.of("depth", depth, QuantityKind.LENGTH));
        return Search.first(this, j, failure, Stream.of(deeper)).stream().toList();
    }
}
