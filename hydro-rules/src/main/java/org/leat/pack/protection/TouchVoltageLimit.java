package org.leat.pack.protection;

import static org.leat.check.Level.ERROR;
import static org.leat.check.NamedLimit.Safer.LOWER;
import static org.leat.quantity.QuantityKind.VOLTAGE;

import java.util.List;
import java.util.stream.Stream;
import org.leat.check.Arg;
import org.leat.check.Change;
import org.leat.check.Judgement;
import org.leat.check.Limit;
import org.leat.check.Outcome;
import org.leat.check.Rule;
import org.leat.check.Spot;
import org.leat.design.LiveParts;
import org.leat.design.Safeguards;
import org.leat.pack.kit.BusNode;
import org.leat.pack.kit.DesignParts;
import org.leat.pack.kit.HighestBusVoltage;
import org.leat.pack.kit.StandardSizes;
import org.leat.pack.kit.VoltageCause;
import org.leat.pack.kit.WindingTurns;
import org.leat.plant.cases.TouchVoltage;

/** Voltage in reach in any case, of the bus and between the alternator's leads, against the limits for touch. */
final class TouchVoltageLimit {

    static final Rule RULE = Rule.of("protection/touch-voltage", ERROR, "voltage that can be touched")
            .why("A 48 V plant reaches more than 100 V when its load is lost. Wet hands and a wet floor lower what a"
                    + " body stands, and direct current does not let go.")
            .formula("highest bus voltage of any case against 120 V d.c., voltage between the alternator's leads at"
                    + " runaway against 50 V a.c. (extra-low voltage); with live parts in reach 60 V d.c. and 25 V a.c."
                    + " dry, 30 V and 12 V wet")
            .judged(
                    "battery full, removed or opened by its management, dump load lost, load lost; each nozzle set on hand")
            .source(
                    "IEC 61558-1 / IEC 60364-4-41 cl. 414: extra-low voltage 120 V ripple-free d.c., 50 V"
                            + " a.c.; no basic protection needed to 60 V d.c. and 25 V a.c. dry, 30 V and 12 V otherwise (clause 414.4.5, from memory)")
            .limit("extra-low", VOLTAGE, 120, "V", "IEC 60364-4-41 cl. 414", LOWER)
            .limit("reachable-dry", VOLTAGE, 60, "V", "IEC 60364-4-41 cl. 414.4.5", LOWER)
            .limit("reachable-wet", VOLTAGE, 30, "V", "IEC 60364-4-41 cl. 414.4.5 (from memory)", LOWER)
            .limit("extra-low-alternating", VOLTAGE, 50, "V", "IEC 60364-4-41 cl. 414", LOWER)
            .limit("reachable-dry-alternating", VOLTAGE, 25, "V", "IEC 60364-4-41 cl. 414.4.5", LOWER)
            .limit("reachable-wet-alternating", VOLTAGE, 12, "V", "IEC 60364-4-41 cl. 414.4.5 (from memory)", LOWER)
            .passes("low-enough", "The bus reaches {value} ({cause}).")
            .fails(
                    "beyond-extra-low",
                    "The bus reaches {value} ({cause}), more than extra-low voltage ({limit}): the rules for low voltage and"
                            + " a qualified person are needed.")
            .fails(
                    "in-reach",
                    "The bus reaches {value} ({cause}) and live parts can be touched; the limit here is {limit}.")
            .passes("low-enough-alternating", "The alternator's leads reach {value} rms ({cause}).")
            .fails(
                    "beyond-extra-low-alternating",
                    "The alternator's leads reach {value} rms ({cause}), more than extra-low voltage ({limit} a.c.): the rules"
                            + " for low voltage and a qualified person are needed.")
            .fails(
                    "in-reach-alternating",
                    "The alternator's leads reach {value} rms ({cause}) and live parts can be touched; the limit here is"
                            + " {limit} a.c.")
            .review(
                    "insulated-alternating",
                    "The alternator's leads reach {voltage} rms ({cause}), more than 50 V a.c.: behind insulation that is a"
                            + " low-voltage circuit, for the rules for low voltage and a qualified person to look at.")
            .judgeAll(TouchVoltageLimit::judge)
            .wayOut(
                    "insulate",
                    "Cover every live part so that it takes a tool to reach it.",
                    TouchVoltageLimit::insulate)
            .leastWayOut("fewer-turns", WindingTurns.ALONE, WindingTurns::fewer)
            .lastAdvice(
                    "low-voltage-rules",
                    "Make the turbine side a low-voltage circuit: cable, boxes and terminals marked for {voltage} or more,"
                            + " covers that take a tool, frame and pipe bonded to earth; planned and tested by a qualified"
                            + " person.",
                    StandardSizes.standing("voltage"))
            .build();

    private TouchVoltageLimit() {}

    private static List<Outcome> judge(Judgement j) {
        HighestBusVoltage bridge = HighestBusVoltage.lasting(j.solved(), BusNode.BRIDGE);
        HighestBusVoltage battery = HighestBusVoltage.lasting(j.solved(), BusNode.BATTERY);
        HighestBusVoltage highest = battery.volts() > bridge.volts() ? battery : bridge;
        TouchVoltage leads = j.solved().touchVoltage();
        Spot bus = j.at("/safeguards/live-parts").during(highest.situation());
        Spot lead = j.at("/alternator/open-circuit").during(leads.alternatingAt());
        return j.all(
                () -> judge(j, bus.with(Arg.phrase("cause", highest.cause())), highest.volts(), ""),
                () -> judge(
                        j, lead.with(Arg.phrase("cause", VoltageCause.RUNAWAY)), leads.alternating(), "-alternating"));
    }

    private static Outcome judge(Judgement j, Spot spot, double volts, String current) {
        Limit extraLow = j.limit("extra-low" + current);
        Safeguards safeguards = DesignParts.safeguards(j);
        LiveParts parts = safeguards.liveParts();
        if (!current.isEmpty() && parts == LiveParts.INSULATED && volts > extraLow.value()) {
            // allowed behind insulation, but no longer for everybody's hands
            return spot.with("voltage", volts, VOLTAGE).says("insulated-alternating");
        }
        if (volts > extraLow.value() || parts == LiveParts.INSULATED) {
            return spot.saying("low-enough" + current, "beyond-extra-low" + current)
                    .atMost(volts, extraLow);
        }
        // a place not said to be dry is taken as wet: the stricter limit
        boolean dry = Boolean.FALSE.equals(safeguards.wetPlace());
        Limit reach = j.limit((dry ? "reachable-dry" : "reachable-wet") + current);
        if (volts > reach.value()) {
            spot.given("/safeguards/live-parts", parts);
        }
        return spot.saying("low-enough" + current, "in-reach" + current).atMost(volts, reach);
    }

    private static Stream<Change> insulate(Judgement j, Outcome.Fail failure) {
        return j.design().safeguards() == null
                ? Stream.empty()
                : Stream.of(Change.of("/safeguards/live-parts", LiveParts.INSULATED));
    }
}
