package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import org.leat.check.Report;
import org.leat.plant.cases.Running;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.EnergyAccount.Entry;
import org.leat.plant.solved.EnergyAccount.Stage;
import org.leat.report.CaseWords;

/** The power of the water flowing down to the battery, what is lost on the way leaving to the right. */
final class WattsPicture {

    /** W: less is the rounding of a sum. */
    private static final double NOTHING = 1e-6;

    private static final double LEFT = 8;
    private static final double BROADEST = 150;
    private static final double STEP = 36;
    private static final double TOP = 30;
    private static final double OUT = 186;

    private final Report report;
    private final Running built;

    private WattsPicture(Report report) {
        this.report = report;
        this.built = report.running().get(0);
    }

    static Figure of(Report report) {
        WattsPicture picture = new WattsPicture(report);
        return new Figure(
                Topic.WATTS,
                "The broadest branch to the right is where most is to be won. As built, with "
                        + picture.built.nozzles().name() + "; the other sets are in the table. Regulator: "
                        + CaseWords.of(report.regulator()) + ".",
                picture::draw,
                List.of(picture.table()));
    }

    private void draw(Markup page) {
        List<Entry> entries = built.operatingPoint().energy().entries();
        double whole = Math.max(1e-9, entries.get(0).power());
        double[] broad = entries.stream()
                .mapToDouble(entry -> BROADEST * Math.max(0, entry.power()) / whole)
                .toArray();
        double[] foot = new double[broad.length];
        foot[0] = TOP;
        for (int i = 1; i < broad.length; i++) {
            foot[i] = foot[i - 1] + Math.max(STEP, broad[i - 1] - broad[i] + 14);
        }
        double end = foot[broad.length - 1];
        Drawing on = Drawing.begin(
                page, Topic.WATTS.id(), "Power from the water to the battery and what is lost on the way", end + 42);
        on.text(LEFT, 18, "water " + ShownText.watts(entries.get(0).power()), "axis-name");
        on.path(trunk(broad, foot), "flow");
        for (int i = 1; i < broad.length; i++) {
            Entry entry = entries.get(i);
            double thick = Math.max(0.6, broad[i - 1] - broad[i]);
            branch(on, foot[i - 1], LEFT + broad[i], thick);
            double middle = foot[i - 1] + 8 + thick / 2;
            on.text(OUT + 10, middle + 3, lostIn(entry.stage()), "label");
            String share = ShownText.percent(Math.max(0, entry.lost()) / whole);
            on.text(
                    OUT + 10,
                    middle + 17,
                    entry.lost() > NOTHING ? "\u2212" + ShownText.watts(entry.lost()) + ", " + share : "nothing",
                    entry.lost() / whole > 0.1 ? "label-strong" : "label-soft");
        }
        Entry last = entries.get(broad.length - 1);
        on.text(
                LEFT,
                end + 32,
                "stored " + ShownText.watts(last.power()) + ", " + ShownText.percent(last.power() / whole)
                        + " of the water\u2019s",
                "axis-name");
        on.end();
    }

    /** What is left, narrower after each loss, with a point at its foot. */
    private static String trunk(double[] broad, double[] foot) {
        StringBuilder d = new StringBuilder("M" + Drawing.pair(LEFT, foot[0]));
        for (int i = 1; i < broad.length; i++) {
            d.append('L').append(Drawing.pair(LEFT + broad[i], foot[i - 1]));
            d.append('L').append(Drawing.pair(LEFT + broad[i], foot[i]));
        }
        double end = foot[foot.length - 1];
        d.append('L').append(Drawing.pair(LEFT + broad[broad.length - 1] / 2, end + 12));
        return d.append('L').append(Drawing.pair(LEFT, end)).append('Z').toString();
    }

    /** What leaves the trunk's right edge and turns to the right, as broad as it is strong. */
    private static void branch(Drawing on, double y, double x, double thick) {
        double high = y + 8;
        double low = high + thick;
        double outer = x + thick;
        double turn = Math.min(OUT - 4, outer + 8);
        on.path(
                "M" + Drawing.pair(x, y) + "L" + Drawing.pair(outer, y)
                        + "Q" + Drawing.pair(outer, high) + " " + Drawing.pair(turn, high)
                        + "L" + Drawing.pair(OUT, high) + "L" + Drawing.pair(OUT + 5, (high + low) / 2) + "L"
                        + Drawing.pair(OUT, low)
                        + "L" + Drawing.pair(turn, low) + "Q" + Drawing.pair(x, low) + " " + Drawing.pair(x, y) + "Z",
                "loss");
    }

    private static String lostIn(Stage stage) {
        return switch (stage) {
            case WATER -> "water";
            case NOZZLE -> "screen, pipe and fittings";
            case JET -> "nozzles";
            case SHAFT -> "runner and bearings";
            case AIR_GAP -> "iron and friction";
            case TERMINALS -> "copper of the winding";
            case DIRECT_CURRENT -> "diodes, cable before them";
            case REGULATOR -> "cable to the regulator";
            case BATTERY -> "regulator and its cable";
            case STORED -> "inside the battery";
        };
    }

    private DataTable table() {
        List<String> head = new ArrayList<>(List.of("arrives at"));
        report.running().forEach(r -> head.add(r.nozzles().name()));
        DataTable table = new DataTable("Power from the water to the battery", head);
        for (Stage stage : Stage.values()) {
            List<String> row = new ArrayList<>(List.of(CaseWords.of(stage, report.regulator())));
            for (Running running : report.running()) {
                EnergyAccount energy = running.operatingPoint().energy();
                double lost = energy.lostBefore(stage);
                row.add(ShownText.watts(energy.at(stage)) + (lost > 0 ? " (\u2212" + ShownText.watts(lost) + ")" : ""));
            }
            table.row(row);
        }
        return table;
    }
}
