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
import org.leat.design.SettlingBasin;
import org.leat.hydraulics.SettlingVelocity;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** The finest sand that the basin keeps from the runner. */
final class IntakeSettling implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("intake/settling", Level.NOTE)
            .title("sand that passes the basin")
            .why(
                    "Sand that the basin does not catch grinds nozzle and buckets; printed and bronze ones go within a season"
                            + " of floods.")
            .formula("a grain is caught that sinks faster than Q / (L B); sinking speed by Ferguson and Church")
            .judged("running on the nozzle set with most flow, water as it runs")
            .source("Hazen 1904; Ferguson and Church, J. Sediment. Res. 74 (2004) 933")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("grain", QuantityKind.LENGTH, 0.3, "mm", RuleCard.COMMON_PRACTICE)
            .message("caught", "flow")
            .message("passes", "flow")
            .message("longer", "length")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        Intake intake = j.design().intake();
        SettlingBasin basin = intake == null ? null : intake.basin();
        if (basin == null) {
            return List.of(j.at("/intake").notGiven("/intake/basin"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running running = Worst.most(j.cases().running(), r -> r.water().flow());
        double flow = running.water().flow();
        if (!(flow > 0)) {
            return List.of(
                    j.at("/intake/basin").notApplicable("caught", Arg.of("flow", flow, QuantityKind.VOLUME_FLOW)));
        }
        double grain = SettlingVelocity.finestGrainCaught(
                flow,
                Si.of(basin.length()),
                Si.of(basin.width()),
                j.plant().numbers().water().kinematicViscosity());
        return List.of(j.at("/intake/basin")
                .during(running)
                .compare(
                        Comparison.atMost(grain, j.limit("grain")),
                        "caught",
                        "passes",
                        Arg.of("flow", flow, QuantityKind.VOLUME_FLOW)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Intake intake = j.design().intake();
        SettlingBasin basin = intake == null ? null : intake.basin();
        if (basin == null) {
            return List.of();
        }
        double rate = SettlingVelocity.ofSand(
                j.limit("grain").value(), j.plant().numbers().water().kinematicViscosity());
        double flow =
                Worst.most(j.cases().running(), r -> r.water().flow()).water().flow();
        double length = Math.ceil(flow / rate / Si.of(basin.width()) * 10) / 10;
        Candidate longer = Candidate.of(
                "longer",
                new Edit("/intake/basin/length", Si.quantity(length, "m", Length.class)),
                Arg.of("length", length, QuantityKind.LENGTH));
        return Search.first(this, j, failure, Stream.of(longer)).stream().toList();
    }
}
