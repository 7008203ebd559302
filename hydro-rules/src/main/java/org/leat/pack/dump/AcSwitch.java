package org.leat.pack.dump;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;

import org.leat.check.Judgement;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.DumpLoad;
import org.leat.pack.kit.FieldChanges;

/** A thermostat or switch for alternating current in the dump load. */
final class AcSwitch {

    static final Rule RULE = Rule.of(
                    "dump/ac-switch", ERROR, "a thermostat or switch for alternating current in the dump load")
            .why(
                    "Water heaters come with a thermostat made for alternating current. On direct current its contacts draw an"
                            + " arc, weld or burn, and when it opens as it should the turbine is let go.")
            .formula("none in the circuit, as stated")
            .judged("as built")
            .source("IEC 60947-1: making and breaking capacity are stated for a.c. and d.c. apart")
            .source(COMMON_PRACTICE)
            .passes("without", "No thermostat or switch for alternating current sits in the circuit.")
            .fails(
                    "there",
                    "A thermostat or switch for alternating current sits in the circuit: on direct current it burns"
                            + " or welds.")
            .notApplicable("none", DumpLoads.NONE)
            .judge(DumpLoads.judge(AcSwitch::judge))
            .wayOut(
                    "take-out",
                    "Take it out, or let it drive a switch made for direct current.",
                    FieldChanges.to(false))
            .build();

    private AcSwitch() {}

    private static Outcome judge(Judgement j, DumpLoad dump) {
        Spot spot = j.at("/dump-load/alternating-current-switch");
        return spot.holds(!spot.given(dump.alternatingCurrentSwitch()));
    }
}
