package org.leat.report;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.Amount;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** The operating table, and alternatives beside it, for a person. */
final class OperatingText {

    private OperatingText() {}

    static List<String> lines(Report report, int width) {
        if (!report.unsolved().isEmpty()) {
            List<String> why = new ArrayList<>();
            for (Amount.Unknown unknown : report.unsolved()) {
                why.add("The plant cannot be solved without " + PlainText.of(Wording.place(unknown.path())) + ".");
            }
            return why;
        }
        if (report.running().isEmpty()) {
            return List.of();
        }
        Table table = new Table();
        table.row("nozzle set", "flow", "net head", "speed", "bus", "current", "battery", "speed ratio", "");
        for (Running running : report.running()) {
            OperatingPoint o = running.operatingPoint();
            table.row(
                    PlainText.of(running.nozzles().name()) + (running.nozzles().asBuilt() ? " (open)" : ""),
                    show(running.water().flow(), QuantityKind.VOLUME_FLOW)
                            + (running.water().fullPipe() ? "" : "*"),
                    show(running.water().netHead(), QuantityKind.LENGTH),
                    show(o.speed(), QuantityKind.ROTATIONAL_SPEED),
                    show(o.bus().bridge(), QuantityKind.VOLTAGE),
                    show(o.directCurrent(), QuantityKind.CURRENT),
                    show(o.batteryPower(), QuantityKind.POWER),
                    show(o.speedRatio(), QuantityKind.RATIO),
                    hold(o.hold()));
        }
        List<String> lines = new ArrayList<>(table.lines(width));
        if (report.running().stream().anyMatch(r -> !r.water().fullPipe())) {
            lines.add("* the stream does not keep the pipe full");
        }
        return lines;
    }

    private static String hold(OperatingPoint.Hold hold) {
        return switch (hold) {
            case HELD -> "held";
            case NOT_HELD -> "not held";
            case BELOW_CUT_IN -> "below cut-in";
            case DOES_NOT_START -> "does not start";
        };
    }

    static List<String> alternatives(Report report, int width) {
        if (report.alternatives().isEmpty()) {
            return List.of();
        }
        Table table = new Table();
        table.row("choice", "errors", "warnings", "open", "battery");
        row(table, "as designed", report);
        for (Report alternative : report.alternatives()) {
            row(table, PlainText.of(alternative.alternative()), alternative);
        }
        return table.lines(width);
    }

    private static void row(Table table, String name, Report report) {
        table.row(
                name,
                Long.toString(report.failures(Level.ERROR)),
                Long.toString(report.failures(Level.WARNING)),
                Long.toString(report.count(Kind.OPEN)),
                report.running().isEmpty()
                        ? "unknown"
                        : show(report.running().get(0).operatingPoint().batteryPower(), QuantityKind.POWER));
    }

    private static String show(double si, QuantityKind kind) {
        return UsualUnits.show(si, kind);
    }
}
