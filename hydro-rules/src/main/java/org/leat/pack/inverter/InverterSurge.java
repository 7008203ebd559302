package org.leat.pack.inverter;

import static org.leat.check.Level.ERROR;
import static org.leat.check.RuleCard.COMMON_PRACTICE;
import static org.leat.quantity.QuantityKind.POWER;

import javax.measure.quantity.Power;
import org.leat.check.Rule;
import org.leat.pack.kit.FieldChanges;
import org.leat.pack.kit.Inverters;

/** Starting power against the inverter's surge power. */
final class InverterSurge {

    static final Rule RULE = Rule.of("inverter/surge", ERROR, "starting power against the inverter's surge power")
            .hurtsNobody()
            .why(
                    "A compressor or a pump takes several times its power for a second. An inverter that cannot give it trips, and the"
                            + " motor that does not start burns.")
            .formula("all loads at once + (starting factor − 1) · power of the one that starts hardest ≤ surge power")
            .judged("the hardest start while everything else runs")
            .source(COMMON_PRACTICE)
            .passes("enough", "The hardest start takes {value}.")
            .fails("too-little", "The hardest start takes {value}; the inverter gives {limit} for a moment.")
            .notApplicable("none", Inverters.NONE)
            .judge(Inverters.judge(
                    "/inverter/surge-power",
                    (j, inverter, spot) -> spot.atMost(Inverters.starting(j, spot), inverter.surgePower(), POWER)))
            .leastWayOut(
                    "larger",
                    "An inverter that gives {rating} for a moment.",
                    FieldChanges.raised("W", Power.class, 600, 1000, 1600, 2000, 3000, 4000, 6000, 10_000, 20_000))
            .build();

    private InverterSurge() {}
}
