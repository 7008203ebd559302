package org.leat.pack.nozzle;

import static org.leat.check.Level.WARNING;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.mm;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.RATIO;

import java.util.Collections;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.Worst;
import org.leat.plant.cases.Running;
import org.leat.plant.duties.JetLimits;

/** Number of jets against what one wheel can take. */
final class JetsInterfere {

    static final Rule RULE = Rule.of("nozzle/jets-interfere", WARNING, "number of jets on one wheel")
            .why(
                    "A bucket that still holds water from one jet when it meets the next spills both: each jet more then brings"
                            + " less than its share.")
            .formula("jets ≤ 2π / ((2π/z + φ s/R)/(1 − φ)), and the type's most; s two jet diameters")
            .judged("the set with most nozzles, at the speed it runs; jets spread evenly round the wheel")
            .source("kinematics of the water in the bucket, see the law")
            .source(COMMON_PRACTICE)
            .passes("room", "{jets} jets have room on this wheel.")
            .fails(
                    "crowded",
                    "{jets} jets are more than this wheel has room for, {limit}: buckets meet the next jet"
                            + " before they are empty.")
            .passes("one-jet", "A single jet meets no other.")
            .judge(JetsInterfere::judge)
            .wayOut("fewer", "{jets} jets from nozzles of {bore:mm}.", JetsInterfere::fewer)
            .build();

    private JetsInterfere() {}

    private static Outcome judge(Judgement j) {
        Running running = Worst.most(j.solved().running(), r -> r.water().jets().size());
        int jets = running.water().jets().size();
        Spot spot = j.at("/nozzles/open").during(running);
        if (jets == 1) {
            return spot.says("one-jet");
        }
        int count = spot.given("/runner/buckets/count", DesignParts.buckets(j).count());
        double room = spot.known(JetLimits.jets(running, j.numbers().runner(), count));
        return spot.with("jets", jets).atMost(jets, room, RATIO);
    }

    private static Stream<Change> fewer(Judgement j, Outcome.Fail failure) {
        int jets = (int) failure.limit();
        double area = j.numbers().nozzles().asBuilt().area();
        double millimetres = Math.rint(Math.sqrt(4 / Math.PI * area / jets) * 1e4) / 10;
        return Stream.of(Change.of("/nozzles/open", Collections.nCopies(jets, mm(millimetres)))
                .and("/nozzles/sets", List.of())
                .with("jets", jets)
                .with("bore", millimetres / 1000, LENGTH));
    }
}
