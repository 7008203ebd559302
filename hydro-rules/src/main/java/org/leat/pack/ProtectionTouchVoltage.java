package org.leat.pack;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Arg;
import org.leat.check.Comparison;
import org.leat.check.Edit;
import org.leat.check.Judgement;
import org.leat.check.LegacyRule;
import org.leat.check.Level;
import org.leat.check.Limit;
import org.leat.check.Outcome;
import org.leat.check.RuleCard;
import org.leat.check.Spot;
import org.leat.check.WayOut;
import org.leat.design.LiveParts;
import org.leat.design.Safeguards;
import org.leat.pack.Search.Candidate;
import org.leat.plant.cases.TouchVoltage;
import org.leat.quantity.QuantityKind;

/** Voltage in reach in any case, of the bus and between the alternator's leads, against the limits for touch. */
final class ProtectionTouchVoltage implements LegacyRule {

    private static final RuleCard CARD = RuleCard.of("protection/touch-voltage", Level.ERROR)
            .title("voltage that can be touched")
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
            .limit("extra-low", QuantityKind.VOLTAGE, 120, "V", "IEC 60364-4-41 cl. 414")
            .limit("reachable-dry", QuantityKind.VOLTAGE, 60, "V", "IEC 60364-4-41 cl. 414.4.5")
            .limit("reachable-wet", QuantityKind.VOLTAGE, 30, "V", "IEC 60364-4-41 cl. 414.4.5 (from memory)")
            .limit("extra-low-alternating", QuantityKind.VOLTAGE, 50, "V", "IEC 60364-4-41 cl. 414")
            .limit("reachable-dry-alternating", QuantityKind.VOLTAGE, 25, "V", "IEC 60364-4-41 cl. 414.4.5")
            .limit(
                    "reachable-wet-alternating",
                    QuantityKind.VOLTAGE,
                    12,
                    "V",
                    "IEC 60364-4-41 cl. 414.4.5 (from memory)")
            .message("low-enough", "cause")
            .message("beyond-extra-low", "cause")
            .message("in-reach", "cause")
            .message("low-enough-alternating", "cause")
            .message("beyond-extra-low-alternating", "cause")
            .message("in-reach-alternating", "cause")
            .message("insulated-alternating", "cause", "voltage")
            .message("low-voltage-rules")
            .message("insulate")
            .message("fewer-turns", "turns")
            .build();

    @Override
    public RuleCard card() {
        return CARD;
    }

    @Override
    public List<Outcome> judge(Judgement j) {
        if (j.cases().loadLost().isEmpty()) {
            return Open.unsolved(j);
        }
        HighestBusVoltage highest = HighestBusVoltage.lasting(j.cases());
        TouchVoltage leads = j.cases().touchVoltage();
        return List.of(
                judge(
                        j,
                        j.at("/safeguards/live-parts").during(highest.situation()),
                        highest.volts(),
                        "",
                        Arg.phrase("cause", highest.cause())),
                judge(
                        j,
                        j.at("/alternator/open-circuit").during(leads.alternatingAt()),
                        leads.alternating(),
                        "-alternating",
                        Arg.phrase("cause", "cause.runaway")));
    }

    private static Outcome judge(Judgement j, Spot spot, double volts, String current, Arg cause) {
        String low = "low-enough" + current;
        String beyond = "beyond-extra-low" + current;
        Comparison extraLow = Comparison.atMost(volts, j.limit("extra-low" + current));
        Safeguards safeguards = j.design().safeguards();
        LiveParts parts = safeguards == null ? null : safeguards.liveParts();
        boolean alternating = !current.isEmpty();
        if (alternating && parts == LiveParts.INSULATED && !extraLow.holds()) {
            // allowed behind insulation, but no longer for everybody's hands
            return spot.review("insulated-alternating", cause, Arg.of("voltage", volts, QuantityKind.VOLTAGE));
        }
        if (!extraLow.holds() || parts == LiveParts.INSULATED) {
            return spot.compare(extraLow, low, beyond, cause);
        }
        // a place not said to be dry is taken as wet: the stricter limit
        boolean dry = safeguards != null && Boolean.FALSE.equals(safeguards.wetPlace());
        Limit reach = j.limit((dry ? "reachable-dry" : "reachable-wet") + current);
        Comparison inReach = Comparison.atMost(volts, reach);
        return parts == null && !inReach.holds()
                ? spot.notGiven("/safeguards/live-parts")
                : spot.compare(inReach, low, "in-reach" + current, cause);
    }

    @Override
    public List<WayOut> waysOut(Judgement j, Outcome failure) {
        List<WayOut> ways = new ArrayList<>();
        if (j.design().safeguards() != null) {
            Search.first(
                            this,
                            j,
                            failure,
                            java.util.stream.Stream.of(
                                    Candidate.of("insulate", new Edit("/safeguards/live-parts", LiveParts.INSULATED))))
                    .ifPresent(ways::add);
        }
        Search.least(this, j, failure, OtherTurns.fewer(j, "fewer-turns")).ifPresent(ways::add);
        if (ways.isEmpty()) {
            ways.add(j.advice("low-voltage-rules"));
        }
        return ways;
    }
}
