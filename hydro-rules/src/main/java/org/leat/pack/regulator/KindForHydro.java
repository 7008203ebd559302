package org.leat.pack.regulator;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;

import java.util.List;
import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.design.RegulatorKind;
import org.leat.plant.cases.BatteryFull;

/** A regulator that lets go of the turbine. */
final class KindForHydro {

    static final Rule RULE = Rule.of("regulator/kind-for-hydro", ERROR, "a regulator that lets go of the turbine")
            .why(
                    "A regulator made to disconnect its source when the battery is full takes the load off the turbine: wheel and voltage run away every time the battery is charged. A turbine needs its surplus diverted.")
            .formula(
                    "series or tracking regulator without a dump load on the bridge's side: the case battery full equals load lost")
            .judged("battery full")
            .source(COMMON_PRACTICE)
            .passes("diverts", "The surplus goes into a dump load.")
            .fails(
                    "no-surplus-path",
                    "When the battery is full the regulator lets go of the turbine and nothing takes the surplus:"
                            + " wheel and voltage run away.")
            .fails("nothing-limits", "Nothing limits the battery's voltage: it is overcharged day and night.")
            .judge(KindForHydro::judge)
            .wayOut(
                    "add-dump",
                    "A dump load of {resistance} for {power} on the bridge's side of the battery's fuse, switched on at {trigger} there"
                            + " by a controller, through a switch for {switch} of direct current.",
                    AddedDumpLoad::changes)
            .build();

    private KindForHydro() {}

    private static Outcome judge(Judgement j) {
        boolean regulated = j.design().regulator() != null;
        DumpLoad dump = j.design().dumpLoad();
        if (!regulated && dump == null) {
            return j.at("/battery").notGiven("/regulator/kind");
        }
        Spot spot = j.at(regulated ? "/regulator/kind" : "/battery").during("battery-full");
        RegulatorKind kind = j.numbers().regulator().kind();
        if (dump == null) {
            return spot.says(kind == RegulatorKind.NONE ? "nothing-limits" : "no-surplus-path");
        }
        // a dump load that hangs where nothing reaches it, or that nothing switches on, does not count
        List<BatteryFull> full = j.solved().batteryFull();
        if (kind == RegulatorKind.NONE) {
            spot.given("/dump-load/trigger-voltage", dump.triggerVoltage());
            return spot.says("diverts");
        }
        return spot.holds(full.stream().noneMatch(f -> f.answer() == BatteryFull.Answer.RUNAWAY));
    }
}
