package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leat.check.Report;
import org.leat.design.RegulatorKind;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.EnergyAccount;

/** Where the power of each nozzle set goes, for a person. */
final class WattsText {

    private WattsText() {}

    static List<String> lines(Report report, int width) {
        if (report.running().isEmpty()) {
            return List.of();
        }
        Table table = new Table();
        List<String> head = new ArrayList<>(List.of("arrives at"));
        report.running().forEach(r -> head.add(Plainly.of(r.nozzles().name())));
        table.row(head.toArray(String[]::new));
        for (EnergyAccount.Stage stage : EnergyAccount.Stage.values()) {
            List<String> row = new ArrayList<>(List.of(name(stage, report.regulator())));
            for (Running running : report.running()) {
                row.add(watts(running.operatingPoint().energy().at(stage)));
            }
            table.row(row.toArray(String[]::new));
        }
        List<String> lines = new ArrayList<>(table.lines(width));
        lines.add("regulator: " + name(report.regulator()));
        return lines;
    }

    private static String watts(double power) {
        return Math.abs(power) < 0.05
                ? "0 W"
                : String.format(Locale.ROOT, Math.abs(power) < 9.95 ? "%.1f W" : "%.0f W", power);
    }

    private static String name(RegulatorKind kind) {
        return switch (kind) {
            case NONE -> "none";
            case SERIES -> "in series, lets go of the turbine when the battery is full";
            case SHUNT -> "shunt, diverts into a dump load when the battery is full";
            case TRACKING -> "tracking, chooses the voltage of most power, lets go when the battery is full";
        };
    }

    private static String name(EnergyAccount.Stage stage, RegulatorKind regulator) {
        return switch (stage) {
            case WATER -> "water, gross head";
            case NOZZLE -> "nozzle, net head";
            case JET -> "jet";
            case SHAFT -> "runner shaft";
            case AIR_GAP -> "air gap";
            case TERMINALS -> "alternator terminals";
            case DIRECT_CURRENT -> "behind the bridge";
            case REGULATOR -> regulator == RegulatorKind.NONE ? "cable's end" : "regulator input";
            case BATTERY -> "battery poles";
            case STORED -> "stored in the battery";
        };
    }
}
