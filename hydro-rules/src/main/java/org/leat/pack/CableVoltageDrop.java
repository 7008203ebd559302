package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Limit;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.WayOut;
import org.leat.design.Cable;
import org.leat.design.Place;
import org.leat.electrics.VoltageDrop;
import org.leat.plant.numbers.CableNumbers;
import org.leat.quantity.QuantityKind;

/** Voltage lost in each run at its greatest lasting current. */
final class CableVoltageDrop implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("cable/voltage-drop", Level.WARNING)
            .title("voltage lost in the cable")
            .why("At 12 V a volt lost in a cable is a twelfth of everything the stream gives. Between battery and"
                    + " inverter it also makes the inverter cut off early.")
            .formula("direct: ΔV = 2 l I r; alternator run: ΔV = √3 l I r; as a share of the battery's resting voltage")
            .judged("running on the nozzle set with most current; battery full for the dump load; inverter at its"
                    + " continuous power")
            .source("IEC 60364-5-52 annex G as a guide (5 % for uses other than lighting); 2 % to an inverter: common"
                    + " practice")
            .source("IEC 60228 conductor resistances at working temperature")
            .limit("share", QuantityKind.RATIO, 5, "%", "IEC 60364-5-52 annex G")
            .limit("inverter-share", QuantityKind.RATIO, 2, "%", RuleCard.COMMON_PRACTICE)
            .message("small-enough", "run", "drop", "power")
            .message("too-much", "run", "drop", "power")
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
        for (CableNumbers numbers : j.plant().numbers().cables()) {
            Cable cable = j.design().cables().get(numbers.index());
            outcomes.add(judge(j, cable, numbers));
        }
        return outcomes.isEmpty() ? List.of(j.at("/cables").notGiven("/cables")) : outcomes;
    }

    private static Outcome judge(Judgement j, Cable cable, CableNumbers numbers) {
        CableLoad load = CableLoad.of(j, cable);
        var spot = j.at("/cables[" + numbers.index() + "]/conductor/area");
        if (load == null) {
            String missing = CableLoad.missing(j, cable);
            return missing == null ? spot.notApplicable("not-loaded") : spot.notGiven(missing);
        }
        double core = numbers.coreResistance();
        double drop = load.threePhase()
                ? VoltageDrop.threePhase(core, load.current())
                : VoltageDrop.direct(core, load.current());
        double lost = load.threePhase()
                ? VoltageDrop.threePhaseLoss(core, load.current())
                : VoltageDrop.directLoss(core, load.current());
        boolean inverter = cable.from() == Place.INVERTER || cable.to() == Place.INVERTER;
        Limit limit = j.limit(inverter ? "inverter-share" : "share");
        return spot.during(load.during())
                .compare(
                        Comparison.atMost(drop / j.plant().numbers().battery().restingVoltage(), limit),
                        "small-enough",
                        "too-much",
                        Runs.arg("run", cable),
                        Arg.of("drop", drop, QuantityKind.VOLTAGE),
                        Arg.of("power", lost, QuantityKind.POWER));
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        return Search.least(this, j, failure, CableAmpacity.thicker(failure.path(), j))
                .map(List::of)
                .orElse(List.of());
    }
}
