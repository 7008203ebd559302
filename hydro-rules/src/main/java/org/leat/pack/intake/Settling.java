package org.leat.pack.intake;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.m;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.SettlingBasin;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.IntakeFlow;

/** The finest sand that the basin keeps from the runner. */
final class Settling {

    static final Rule RULE = Rule.of("intake/settling", NOTE, "sand that passes the basin")
            .why(
                    "Sand that the basin does not catch grinds nozzle and buckets; printed and bronze ones go within a season"
                            + " of floods.")
            .formula("a grain is caught that sinks faster than Q / (L B); sinking speed by Ferguson and Church")
            .judged("running on the nozzle set with most flow, water as it runs")
            .source("Hazen 1904; Ferguson and Church, J. Sediment. Res. 74 (2004) 933")
            .source(COMMON_PRACTICE)
            .limit("grain", LENGTH, 0.3, "mm", COMMON_PRACTICE)
            .notApplicable("no-flow", "No water runs through the basin.")
            .passes("caught", "At {flow} sand of {value:mm} and coarser stays in the basin.")
            .fails(
                    "passes",
                    "At {flow} only sand of {value:mm} and coarser stays in the basin; finer sand than that"
                            + " grinds the runner. Good is {limit}.")
            .judge(Settling::judge)
            .wayOut("longer", "A basin {length:m} long.", Settling::longer)
            .build();

    private Settling() {}

    private static Outcome judge(Judgement j) {
        SettlingBasin basin = basin(j);
        Running running = Worst.most(j.solved().running(), r -> r.water().flow());
        double flow = running.water().flow();
        Spot spot = j.at("/intake/basin").with("flow", flow, VOLUME_FLOW);
        if (!(flow > 0)) {
            return spot.says("no-flow");
        }
        double grain = IntakeFlow.finestGrainCaught(basin, j.numbers().water(), flow);
        return spot.during(running).atMost(grain, j.limit("grain"));
    }

    private static SettlingBasin basin(Judgement j) {
        return j.at("/intake").given("/intake/basin", DesignParts.intake(j).basin());
    }

    private static Stream<Change> longer(Judgement j, Outcome.Fail failure) {
        double flow =
                Worst.most(j.solved().running(), r -> r.water().flow()).water().flow();
        double least = IntakeFlow.basinLength(
                basin(j), j.numbers().water(), j.limit("grain").value(), flow);
        double length = Math.ceil(least * 10) / 10;
        return Stream.of(Change.of("/intake/basin/length", m(length)).with("length", length, LENGTH));
    }
}
