package org.leat.pack;

import java.util.Collections;
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
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Runner;
import org.leat.law.Answer;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.Running;
import org.leat.plant.solve.Jet;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.turbine.JetSpacing;
import org.leat.turbine.RunnerType;

/** Number of jets against what one wheel can take. */
final class NozzleJetsInterfere implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("nozzle/jets-interfere", Level.WARNING)
            .title("number of jets on one wheel")
            .why(
                    "A bucket that still holds water from one jet when it meets the next spills both: each jet more then brings"
                            + " less than its share.")
            .formula("jets ≤ 2π / ((2π/z + φ s/R)/(1 − φ)), and the type's most; s two jet diameters")
            .judged("the set with most nozzles, at the speed it runs; jets spread evenly round the wheel")
            .source("kinematics of the water in the bucket, see the law")
            .source(RuleCard.COMMON_PRACTICE)
            .message("room", "jets")
            .message("crowded", "jets")
            .message("one-jet")
            .message("fewer", "jets", "bore")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running running = Worst.most(j.cases().running(), r -> r.water().jets().size());
        int jets = running.water().jets().size();
        Spot spot = j.at("/nozzles/open").during(running);
        if (jets == 1) {
            return List.of(spot.pass("one-jet"));
        }
        Runner runner = j.design().runner();
        if (runner == null || runner.buckets() == null || runner.buckets().count() == null) {
            return List.of(spot.notGiven("/runner/buckets/count"));
        }
        double jet =
                running.water().jets().stream().mapToDouble(Jet::diameter).max().orElseThrow();
        Answer spacing = JetSpacing.least(
                runner.buckets().count(),
                running.operatingPoint().speedRatio(),
                JetSpacing.usualPath(jet),
                Si.of(runner.pitchDiameter()) / 2);
        if (spacing instanceof Answer.Outside outside) {
            return List.of(spot.outsideOf(outside));
        }
        int most = RunnerType.valueOf(runner.kind().name()).maxJets();
        double room = Math.min(most, Math.floor(2 * Math.PI / spacing.orThrow() + 1e-9));
        return List.of(spot.compare(
                Comparison.atMost(jets, Math.max(1, room), QuantityKind.RATIO), "room", "crowded", Arg.of("jets", (long)
                        jets)));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        Comparison comparison = failure.comparison();
        if (comparison == null) {
            return List.of();
        }
        int jets = (int) comparison.high();
        double area = j.plant().numbers().nozzles().asBuilt().area();
        double millimetres = Math.rint(Math.sqrt(4 / Math.PI * area / jets) * 1e4) / 10;
        List<Edit> edits = List.of(
                new Edit("/nozzles/open", Collections.nCopies(jets, Si.quantity(millimetres, "mm", Length.class))),
                new Edit("/nozzles/sets", List.of()));
        Candidate fewer = new Candidate(
                "fewer",
                edits,
                List.of(Arg.of("jets", (long) jets), Arg.of("bore", millimetres / 1000, QuantityKind.LENGTH)));
        return Search.first(this, j, failure, Stream.of(fewer)).stream().toList();
    }
}
