package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.leat.check.Report;
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
        report.running().forEach(r -> head.add(PlainText.of(r.nozzles().name())));
        table.row(head.toArray(String[]::new));
        for (EnergyAccount.Stage stage : EnergyAccount.Stage.values()) {
            List<String> row = new ArrayList<>(List.of(CaseWords.of(stage, report.regulator())));
            for (Running running : report.running()) {
                row.add(watts(running.operatingPoint().energy().at(stage)));
            }
            table.row(row.toArray(String[]::new));
        }
        List<String> lines = new ArrayList<>(table.lines(width));
        lines.add("regulator: " + CaseWords.of(report.regulator()));
        return lines;
    }

    private static String watts(double power) {
        return Math.abs(power) < 0.05
                ? "0 W"
                : String.format(Locale.ROOT, Math.abs(power) < 9.95 ? "%.1f W" : "%.0f W", power);
    }
}
