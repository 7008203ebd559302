package org.leat.pack.nozzle;

import static org.leat.check.Level.NOTE;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.Quantities.hours;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Change;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Grit;
import org.leat.design.NozzleSet;
import org.leat.design.WornNozzle;
import org.leat.pack.kit.NozzleWear;
import org.leat.plant.cases.Running;

/** Nozzles that sand has worn wide. */
final class WornNozzles {

    static final Rule RULE = Rule.of("nozzle/worn", NOTE, "nozzles that sand has worn wide")
            .why(
                    "Sand wears a nozzle with every hour of running, a soft one soonest. A wider one takes more water, so the"
                            + " stream runs short sooner, and its rough edge frays the jet, which costs power that is not counted"
                            + " here. Only a gauge in the bore tells: from hours and sand alone nobody can say how far it is.")
            .formula("area of the open nozzles as measured / area as drilled − 1 ≤ limit")
            .judged("nozzles open as built, flow and power solved anew with the most water the stream has")
            .source("IEC 62364:2019: wear goes with running time, sand and the softness of the surface (from memory)")
            .source(COMMON_PRACTICE)
            .limit("area", RATIO, 10, "%", COMMON_PRACTICE)
            .passes(
                    "sound",
                    "The open nozzles have grown by {value:%} in area: they pass {flow} and bring {power},"
                            + " new ones {newFlow} and {newPower}.")
            .fails(
                    "wide",
                    "The open nozzles have grown by {value:%} in area; good is {limit:%}. They pass {flow}"
                            + " and bring {power} at best, new ones {newFlow} and {newPower}.")
            .open(
                    "measure",
                    "An open nozzle has been in use and its bore has not been measured since: hours and sand"
                            + " alone do not tell how far it is worn.")
            .judge(WornNozzles::judge)
            .wayOut("renew", "New nozzles of the drilled bores.", WornNozzles::renew)
            .advice(
                    "hard-face",
                    "New ones of hardened steel, hard metal or ceramic last longer in this sand.",
                    WornNozzles::hardFace)
            .build();

    private WornNozzles() {}

    private static Outcome judge(Judgement j) {
        NozzleWear worn = NozzleWear.of(j);
        if (worn.missing() != null) {
            Spot spot = j.at("/nozzles");
            return worn.missing().equals(NozzleWear.PATH)
                    ? spot.notGiven(worn.missing())
                    : spot.open(worn.missing(), "measure");
        }
        Running drilled = j.solved().running().get(0);
        Running now = asWorn(j, worn);
        return j.at(NozzleWear.PATH)
                .during(drilled)
                .with("flow", now.water().flow(), VOLUME_FLOW)
                .with("power", power(now), POWER)
                .with("newFlow", drilled.water().flow(), VOLUME_FLOW)
                .with("newPower", power(drilled), POWER)
                .atMost(worn.growth(), j.limit("area"));
    }

    private static Running asWorn(Judgement j, NozzleWear worn) {
        return j.with(List.of(new Edit("/nozzles/open", worn.bores())))
                .solved()
                .running()
                .get(0);
    }

    private static double power(Running running) {
        return running.operatingPoint().batteryPower();
    }

    /** The design is solved as drilled, so that the plant as it runs now is what the new nozzles gain on. */
    private static Stream<Change> renew(Judgement j, Outcome.Fail failure) {
        List<WornNozzle> worn = j.design().nozzles().worn();
        List<Edit> edits = new ArrayList<>();
        for (int i = 0; i < worn.size(); i++) {
            if (isOpen(j, worn.get(i))) {
                edits.add(new Edit(NozzleWear.at(i) + "/measured", worn.get(i).drilled()));
                edits.add(new Edit(NozzleWear.at(i) + "/running-time", hours(0)));
            }
        }
        double drilled = power(j.solved().running().get(0));
        return Stream.of(Change.of(edits).gaining(drilled - power(asWorn(j, NozzleWear.of(j)))));
    }

    private static Stream<Change> hardFace(Judgement j, Outcome.Fail failure) {
        NozzleSet nozzles = j.design().nozzles();
        boolean soft =
                nozzles.worn().stream().anyMatch(worn -> isOpen(j, worn) && !Boolean.TRUE.equals(worn.hardFaced()));
        return soft && nozzles.grit() != null && nozzles.grit() != Grit.CLEAR
                ? Stream.of(Change.advice())
                : Stream.empty();
    }

    private static boolean isOpen(Judgement j, WornNozzle worn) {
        return NozzleWear.isOpen(j.design().nozzles(), worn);
    }
}
