package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import javax.measure.quantity.Area;
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
import org.leat.design.Cable;
import org.leat.law.Answer;
import org.leat.pack.Search.Candidate;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Lasting current of each run against what the cable carries as it is laid. */
final class CableAmpacity implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("cable/ampacity", Level.ERROR)
            .title("current against what the cable carries")
            .why("A cable run above its capacity overheats inside its wall or conduit. A turbine runs day and night, so"
                    + " the cable never cools.")
            .formula("greatest lasting current ≤ tabled capacity · ambient factor · grouping factor · parallel cores")
            .judged("running on the nozzle set with most current; battery full for the dump load; inverter at its"
                    + " continuous power")
            .source("IEC 60364-5-52 tables B.52.2 to B.52.5, B.52.14, B.52.17")
            .message("carries", "run")
            .message("overloaded", "run")
            .message("thicker", "area")
            .message("not-loaded")
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
        List<Outcome> outcomes = new ArrayList<>();
        List<Cable> cables = j.design().cables();
        for (int i = 0; i < cables.size(); i++) {
            outcomes.add(judge(j, cables.get(i), "/cables[" + i + "]"));
        }
        return outcomes.isEmpty() ? List.of(j.at("/cables").notGiven("/cables")) : outcomes;
    }

    private static Outcome judge(Judgement j, Cable cable, String path) {
        CableLoad load = CableLoad.of(j, cable);
        Spot spot = j.at(path + "/conductor/area");
        if (load == null) {
            String missing = CableLoad.missing(j, cable);
            return missing == null ? spot.notApplicable("not-loaded") : spot.notGiven(missing);
        }
        Spot during = spot.during(load.during());
        CableCapacity capacity = CableCapacity.of(cable, path, load);
        if (capacity.missing() != null) {
            return during.notGiven(capacity.missing());
        }
        if (capacity.answer() instanceof Answer.Outside outside) {
            return during.outsideOf(outside);
        }
        return during.compare(
                Comparison.atMost(load.current(), capacity.answer().orThrow(), QuantityKind.CURRENT),
                "carries",
                "overloaded",
                Runs.arg("run", cable));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Search.least(this, j, failure, thicker(failure.path(), j))
                .map(List::of)
                .orElse(List.of());
    }

    /** Larger standard cross-sections, IEC 60228, smallest first; the rule says {@code thicker}. */
    static Stream<Candidate> thicker(String path, Judgement j) {
        int index = Integer.parseInt(path.substring(path.indexOf('[') + 1, path.indexOf(']')));
        double now = Si.of(j.design().cables().get(index).conductor().area());
        return Stream.of(0.5, 0.75, 1.0, 1.5, 2.5, 4.0, 6.0, 10.0, 16.0, 25.0, 35.0, 50.0, 70.0, 95.0)
                .filter(area -> area * 1e-6 > now * 1.001)
                .map(area -> Candidate.of(
                        "thicker",
                        new Edit(path, Si.quantity(area, "mm²", Area.class)),
                        Arg.of("area", area * 1e-6, QuantityKind.AREA)));
    }
}
