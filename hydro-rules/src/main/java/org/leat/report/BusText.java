package org.leat.report;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.leat.check.Report;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.BrokenBridge;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.cases.BusSituation.RegulatorFailedShort;
import org.leat.plant.cases.Day;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;

/** The highest voltage of the bus in each case, on the nozzle set that makes it, for a person. */
final class BusText {

    private BusText() {}

    static List<String> lines(Report report, int width) {
        Map<String, BusSituation> worst = new LinkedHashMap<>();
        for (BusSituation situation : report.bus().list()) {
            worst.merge(
                    CaseWords.of(situation),
                    situation,
                    (one, other) -> other.lastingVoltage() > one.lastingVoltage() ? other : one);
        }
        if (worst.isEmpty()) {
            return List.of();
        }
        boolean twoNodes = worst.values().stream().anyMatch(s -> s.batteryVoltage() != s.lastingVoltage());
        Table table = new Table();
        row(
                table,
                twoNodes,
                "case",
                "nozzle set",
                twoNodes ? "bridge" : "bus",
                "battery",
                "for a moment",
                "speed",
                "held by",
                "");
        worst.forEach((name, situation) -> row(
                table,
                twoNodes,
                name,
                PlainText.of(situation.nozzles().name()),
                show(situation.lastingVoltage(), QuantityKind.VOLTAGE),
                show(situation.batteryVoltage(), QuantityKind.VOLTAGE),
                moment(situation),
                show(situation.runnerSpeed(), QuantityKind.ROTATIONAL_SPEED),
                CaseWords.of(situation.holder()),
                remark(situation)));
        return new ArrayList<>(table.lines(width));
    }

    /** The battery's node is the bridge's where nothing stands between them. */
    private static void row(Table table, boolean twoNodes, String... cells) {
        List<String> shown = new ArrayList<>(List.of(cells));
        if (!twoNodes) {
            shown.remove(3);
        }
        table.row(shown.toArray(String[]::new));
    }

    private static String moment(BusSituation situation) {
        Amount moment = situation.momentVoltage();
        if (moment instanceof Amount.Known known) {
            return known.value() <= situation.lastingVoltage() ? "" : show(known.value(), QuantityKind.VOLTAGE);
        }
        return "unknown";
    }

    private static String remark(BusSituation situation) {
        if (situation instanceof BrokenBridge broken) {
            return String.format(
                    Locale.ROOT,
                    "%.0f %% of the current left%s",
                    100 * Math.max(0, broken.currentLeft()),
                    broken.held() ? "" : ", not held");
        }
        if (situation instanceof Day day && day.charging() == Day.Charging.REFUSED) {
            return "the battery must not be charged";
        }
        if (situation instanceof RegulatorFailedShort failed && failed.overcharges()) {
            return "after the battery was overcharged";
        }
        return situation instanceof BatteryFull full && full.answer() == BatteryFull.Answer.OVERCHARGED
                ? "after it was overcharged"
                : "";
    }

    private static String show(double si, QuantityKind kind) {
        return UsualUnits.show(si, kind);
    }
}
