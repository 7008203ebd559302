package org.leat.pack.cable;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.design.DumpLoad;
import org.leat.design.DumpSide;
import org.leat.design.ElementPath;
import org.leat.design.LoadSupply;
import org.leat.design.Place;
import org.leat.pack.kit.Runs;

/** Whether the runs join what the rest of the design says. */
final class JoinedAsSaid {

    /** What lies on the turbine's side of a regulator that stands between bridge and battery. */
    private static final Set<Place> TURBINE = Set.of(Place.ALTERNATOR, Place.RECTIFIER);

    static final Rule RULE = Rule.of("cable/joined-as-said", ERROR, "whether the runs join what the design says")
            .why(
                    "A dump load that is drawn at the bridge and wired to the battery goes with the battery. An inverter wired"
                            + " before a tracking regulator gets the turbine's voltage. And of a run that nobody wrote down nothing"
                            + " is judged at all.")
            .formula(
                    "a dump load on the bridge's side is joined there; behind a tracking or series regulator nothing but the"
                            + " regulator and a dump load hangs at the bridge; alternator, bridge, battery, inverter, dump load"
                            + " and loads on the bus are each joined by a run")
            .judged("as built")
            .source(COMMON_PRACTICE)
            .passes("joined", "Every part is joined by a run, and each run as the design says.")
            .fails(
                    "wrong-side",
                    "The dump load is said to hang on the bridge's side, and its run leads from {run}: one of the two is not so.")
            .fails(
                    "before-regulator",
                    "The run from {run} joins what is made for the battery's voltage to the turbine's side of the regulator.")
            .open("no-run", "Cannot be judged: no run that joins the {part} is told, and nothing of it is judged.")
            .judgeAll(JoinedAsSaid::judge)
            .build();

    private JoinedAsSaid() {}

    private static List<Outcome> judge(Judgement j) {
        Design design = j.design();
        List<Cable> cables = design.cables();
        if (cables.isEmpty()) {
            return List.of(j.at("/cables").notGiven("/cables"));
        }
        List<Outcome> outcomes = new ArrayList<>();
        for (int i = 0; i < cables.size(); i++) {
            Cable cable = cables.get(i);
            Spot spot = j.at(ElementPath.item("/cables", cables, i)).with(Runs.arg("run", cable));
            DumpLoad dump = design.dumpLoad();
            if (dump != null && joins(cable, Place.DUMP_LOAD) && contradicts(dump, other(cable, Place.DUMP_LOAD))) {
                outcomes.add(spot.says("wrong-side"));
            }
            if (j.numbers().regulator().divides() && beforeRegulator(cable)) {
                outcomes.add(spot.says("before-regulator"));
            }
        }
        for (Place part : parts(design)) {
            if (cables.stream().noneMatch(cable -> joins(cable, part))) {
                outcomes.add(j.at("/cables")
                        .during(word(part))
                        .with("part", word(part))
                        .open("/cables", "no-run"));
            }
        }
        return outcomes.isEmpty() ? List.of(j.at("/cables").says("joined")) : outcomes;
    }

    /** One that is said to hang at the battery is refused by dump/side-of-bridge wherever its run leads. */
    private static boolean contradicts(DumpLoad dump, Place from) {
        return dump.side() == DumpSide.BRIDGE
                && (from == Place.BATTERY || from == Place.INVERTER || from == Place.LOADS);
    }

    private static boolean beforeRegulator(Cable cable) {
        return (TURBINE.contains(cable.from()) && supplied(cable.to()))
                || (TURBINE.contains(cable.to()) && supplied(cable.from()));
    }

    private static boolean supplied(Place place) {
        return place == Place.INVERTER || place == Place.LOADS;
    }

    private static List<Place> parts(Design design) {
        List<Place> parts = new ArrayList<>(List.of(Place.ALTERNATOR, Place.RECTIFIER, Place.BATTERY));
        if (design.inverter() != null) {
            parts.add(Place.INVERTER);
        }
        if (design.dumpLoad() != null) {
            parts.add(Place.DUMP_LOAD);
        }
        if (design.loads().stream().anyMatch(load -> load.supply() == LoadSupply.BUS)) {
            parts.add(Place.LOADS);
        }
        return parts;
    }

    private static boolean joins(Cable cable, Place place) {
        return cable.from() == place || cable.to() == place;
    }

    private static Place other(Cable cable, Place place) {
        return cable.from() == place ? cable.to() : cable.from();
    }

    private static String word(Place place) {
        return switch (place) {
            case ALTERNATOR -> "alternator";
            case RECTIFIER -> "bridge";
            case REGULATOR -> "regulator";
            case BATTERY -> "battery";
            case DUMP_LOAD -> "dump load";
            case INVERTER -> "inverter";
            case LOADS -> "loads";
        };
    }
}
