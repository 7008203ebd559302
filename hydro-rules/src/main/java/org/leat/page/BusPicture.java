package org.leat.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.leat.check.Finding;
import org.leat.check.Kind;
import org.leat.check.Level;
import org.leat.check.Report;
import org.leat.design.Design;
import org.leat.plant.cases.BusSituation;
import org.leat.plant.numbers.Amount;
import org.leat.quantity.QuantityKind;
import org.leat.report.CaseWords;

/** One upright axis of volts: on its left what each case makes of the bus, on its right what each part stands. */
final class BusPicture {

    private static final double AXIS = 202;
    private static final double BROAD = 12;
    private static final double ROW = 16;
    private static final int LONGEST = 29;

    /** A name and a voltage at the axis. */
    private record Mark(String name, double volts, boolean bad) {
        String label() {
            return ShownText.volts(volts) + " " + name;
        }
    }

    private final List<BusSituation> worst;
    private final List<BusLimits.Limit> limits;
    private final Set<String> badCases;
    private final Set<String> badPlaces;

    private BusPicture(List<BusSituation> worst, List<BusLimits.Limit> limits, Report report) {
        this.worst = worst;
        this.limits = limits;
        List<Finding> failing = report.worstFirst(Kind.FAIL).stream()
                .filter(f -> f.outcome().level() != Level.NOTE)
                .filter(f -> f.outcome().comparison() != null
                        && f.outcome().comparison().kind() == QuantityKind.VOLTAGE)
                .toList();
        this.badCases = failing.stream().map(f -> f.outcome().during()).collect(Collectors.toSet());
        this.badPlaces = failing.stream().map(f -> f.outcome().path()).collect(Collectors.toSet());
    }

    static Figure of(Report report, Design design) {
        Map<String, BusSituation> worst = new LinkedHashMap<>();
        for (BusSituation situation : report.bus().list()) {
            worst.merge(
                    CaseWords.of(situation),
                    situation,
                    (one, other) -> other.lastingVoltage() > one.lastingVoltage() ? other : one);
        }
        List<BusLimits.Limit> limits = BusLimits.of(design).stream()
                .sorted(Comparator.comparingDouble(BusLimits.Limit::volts))
                .toList();
        BusPicture picture = new BusPicture(List.copyOf(worst.values()), limits, report);
        return new Figure(
                Topic.BUS,
                "A case on the left must stay below what it meets on the right. Look at the highest of the left, and at what on the"
                        + " right stands lower; each case is shown on the nozzle set that makes the most of it. The axis grows"
                        + " by equal factors; its volts are those behind the bridge."
                        + (picture.twoNodes()
                                ? " The regulator gives the battery\u2019s side, the inverter with it, a voltage of its own: its"
                                        + " highest is marked as such."
                                : ""),
                picture::draw,
                List.of(picture.cases(), picture.stands()));
    }

    private List<Mark> left() {
        List<Mark> marks = new ArrayList<>();
        for (BusSituation situation : worst) {
            boolean bad = badCases.contains(situation.id());
            marks.add(new Mark(shortly(situation), situation.lastingVoltage(), bad));
            if (situation.momentVoltage() instanceof Amount.Known moment
                    && moment.value() != situation.lastingVoltage()) {
                marks.add(new Mark(shortly(situation) + ", briefly", moment.value(), bad));
            }
        }
        if (twoNodes()) {
            worst.stream()
                    .max(Comparator.comparingDouble(BusSituation::batteryVoltage))
                    .ifPresent(most -> marks.add(
                            new Mark("battery side at most", most.batteryVoltage(), badCases.contains(most.id()))));
        }
        return marks;
    }

    /** Whether a regulator stands between bridge and battery, so that each has a voltage of its own. */
    private boolean twoNodes() {
        return worst.stream().anyMatch(s -> s.batteryVoltage() != s.lastingVoltage());
    }

    /** A case in so few words that they stand beside the axis. */
    private static String shortly(BusSituation situation) {
        return CaseWords.of(situation)
                .replace("battery management", "management")
                .replace(", battery full", "");
    }

    private List<Mark> right() {
        return limits.stream()
                .map(limit -> new Mark(limit.name(), limit.volts(), badPlaces.contains(limit.path())))
                .toList();
    }

    private void draw(Markup page) {
        List<Mark> left = left();
        List<Mark> right = right();
        double height = Math.max(280, 60 + ROW * Math.max(left.size(), right.size()));
        Drawing on = Drawing.begin(
                page, Topic.BUS.id(), "Voltage of the bus in each case against what each part stands", height);
        List<Mark> all = new ArrayList<>(left);
        all.addAll(right);
        double most = all.stream().mapToDouble(Mark::volts).max().orElse(1);
        double least =
                all.stream().mapToDouble(Mark::volts).filter(v -> v > 0).min().orElse(1);
        Scale y = Scale.logarithmic(Math.max(0.9 * least, most / 1e3), 1.08 * most, height - 10, 40);
        gauge(on, y);
        on.text(AXIS - 10, 18, "what each case makes", "axis-name end");
        on.text(AXIS + BROAD + 10, 18, "what each part stands", "axis-name");
        labels(on, left, y, -1, height);
        labels(on, right, y, 1, height);
        on.end();
        new Legend()
                .mark("dot", "a case, or a limit")
                .mark("dot-bad", "one that an error or a warning is about")
                .write(page);
    }

    /** A staff gauge: every other step dark. */
    private static void gauge(Drawing on, Scale y) {
        on.rectangle(AXIS, y.end(), BROAD, y.start() - y.end(), "gauge");
        List<Double> ticks = new ArrayList<>(y.ticks(5));
        ticks.add(0, y.from());
        ticks.add(y.to());
        for (int i = 0; i + 1 < ticks.size(); i += 2) {
            double top = y.at(ticks.get(i + 1));
            on.rectangle(AXIS, top, BROAD / 2, y.at(ticks.get(i)) - top, "gauge-dark");
        }
        for (int i = 1; i + 1 < ticks.size(); i += 2) {
            double top = y.at(ticks.get(i + 1));
            on.rectangle(AXIS + BROAD / 2, top, BROAD / 2, y.at(ticks.get(i)) - top, "gauge-dark");
        }
    }

    private static void labels(Drawing on, List<Mark> marks, Scale y, int side, double height) {
        double[] wanted = marks.stream().mapToDouble(m -> y.at(m.volts())).toArray();
        double[] placed = LabelSpacing.of(wanted, ROW, 40, height - 10);
        double edge = side < 0 ? AXIS : AXIS + BROAD;
        for (int i = 0; i < placed.length; i++) {
            Mark mark = marks.get(i);
            on.line(edge, wanted[i], edge + side * 12, placed[i], mark.bad() ? "lead-bad" : "lead");
            on.circle(edge, wanted[i], 3.5, mark.bad() ? "dot-bad" : "dot");
            on.text(
                    edge + side * 15,
                    placed[i] + 4,
                    Drawing.shortened(mark.label(), LONGEST),
                    (mark.bad() ? "label-bad" : "label") + (side < 0 ? " end" : ""));
        }
    }

    private DataTable cases() {
        DataTable table = new DataTable(
                "Bus voltage, case by case",
                cells(
                        "case",
                        "nozzle set",
                        twoNodes() ? "bridge" : "bus",
                        "battery side",
                        "for a moment",
                        "speed",
                        "held by"));
        for (BusSituation situation : worst) {
            table.row(cells(
                    CaseWords.of(situation),
                    situation.nozzles().name(),
                    ShownText.volts(situation.lastingVoltage()),
                    ShownText.volts(situation.batteryVoltage()),
                    situation.momentVoltage() instanceof Amount.Known known
                            ? ShownText.volts(known.value())
                            : ShownText.UNKNOWN,
                    ShownText.speed(situation.runnerSpeed()),
                    CaseWords.of(situation.holder())));
        }
        return table;
    }

    /** A row, the battery's side left out where it is the bridge's. */
    private List<String> cells(String... all) {
        List<String> cells = new ArrayList<>(List.of(all));
        if (!twoNodes()) {
            cells.remove(3);
        }
        return cells;
    }

    private DataTable stands() {
        DataTable table = new DataTable("What each part stands, as the design states it", "part", "stands");
        for (BusLimits.Limit limit : limits) {
            table.row(limit.name(), ShownText.volts(limit.volts()));
        }
        return table;
    }
}
