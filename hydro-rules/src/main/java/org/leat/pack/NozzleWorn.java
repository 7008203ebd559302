package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import javax.measure.quantity.Time;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Message;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.Grit;
import org.leat.design.NozzleSet;
import org.leat.design.WornNozzle;
import org.leat.plant.cases.Running;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;

/** Nozzles that sand has worn wide. */
final class NozzleWorn implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("nozzle/worn", Level.NOTE)
            .title("nozzles that sand has worn wide")
            .why(
                    "Sand wears a nozzle with every hour of running, a soft one soonest. A wider one takes more water, so the"
                            + " stream runs short sooner, and its rough edge frays the jet, which costs power that is not counted"
                            + " here. Only a gauge in the bore tells: from hours and sand alone nobody can say how far it is.")
            .formula("area of the open nozzles as measured / area as drilled − 1 ≤ limit")
            .judged("nozzles open as built, flow and power solved anew with the most water the stream has")
            .source("IEC 62364:2019: wear goes with running time, sand and the softness of the surface (from memory)")
            .source(RuleCard.COMMON_PRACTICE)
            .limit("area", QuantityKind.RATIO, 10, "%", RuleCard.COMMON_PRACTICE)
            .message("sound", "flow", "power", "newFlow", "newPower")
            .message("wide", "flow", "power", "newFlow", "newPower")
            .message("measure")
            .message("renew")
            .message("hard-face")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        WornOpen worn = WornOpen.of(j);
        if (worn.missing() != null) {
            Spot spot = j.at("/nozzles");
            return List.of(
                    worn.missing().equals(WornOpen.PATH)
                            ? spot.notGiven(worn.missing())
                            : spot.open(worn.missing(), "measure"));
        }
        if (j.cases().running().isEmpty()) {
            return Open.unsolved(j);
        }
        Running drilled = j.cases().running().get(0);
        Running now = worn(j, worn);
        return List.of(j.at(WornOpen.PATH)
                .during(drilled)
                .compare(
                        Comparison.atMost(worn.growth(), j.limit("area")),
                        "sound",
                        "wide",
                        Arg.of("flow", now.water().flow(), QuantityKind.VOLUME_FLOW),
                        Arg.of("power", power(now), QuantityKind.POWER),
                        Arg.of("newFlow", drilled.water().flow(), QuantityKind.VOLUME_FLOW),
                        Arg.of("newPower", power(drilled), QuantityKind.POWER)));
    }

    private static Running worn(Judgement j, WornOpen worn) {
        return j.with(List.of(new Edit("/nozzles/open", worn.bores())))
                .cases()
                .running()
                .get(0);
    }

    private static double power(Running running) {
        return running.operatingPoint().batteryPower();
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        NozzleSet nozzles = j.design().nozzles();
        List<Edit> edits = new ArrayList<>();
        boolean soft = false;
        for (int i = 0; i < nozzles.worn().size(); i++) {
            WornNozzle worn = nozzles.worn().get(i);
            if (WornOpen.isOpen(nozzles, worn)) {
                edits.add(new Edit(WornOpen.at(i) + "/measured", worn.drilled()));
                edits.add(new Edit(WornOpen.at(i) + "/running-time", Si.quantity(0, "h", Time.class)));
                soft |= !Boolean.TRUE.equals(worn.hardFaced());
            }
        }
        double gain = power(j.cases().running().get(0)) - power(worn(j, WornOpen.of(j)));
        List<WayOut> ways = new ArrayList<>();
        ways.add(new WayOut(Message.of("renew"), edits, gain));
        if (soft && nozzles.grit() != null && nozzles.grit() != Grit.CLEAR) {
            ways.add(j.advice("hard-face"));
        }
        return ways;
    }
}
