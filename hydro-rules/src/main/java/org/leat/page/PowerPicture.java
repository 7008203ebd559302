package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;

/** What each nozzle set gives at each flow, under the share of the year in which the stream has that flow. */
final class PowerPicture {

    private static final double LITRES = 1e3;
    private static final int STEPS = 12;

    /** A nozzle set, and its power at some flows that the stream may have. */
    private record Curve(NozzleGroup nozzles, double fullFlow, List<Double> flow, List<Double> power) {

        double flow(int step) {
            return flow.get(step);
        }

        double power(int step) {
            return power.get(step);
        }
    }

    private final Plant plant;
    private final List<StreamLevel> levels;
    private final List<Curve> curves = new ArrayList<>();

    private PowerPicture(Plant plant) {
        this.plant = plant;
        this.levels = plant.numbers().site().stream();
        double widest = 0;
        for (Running running : plant.solve().running()) {
            widest = Math.max(widest, running.water().fullPipeFlow());
        }
        for (Running running : plant.solve().running()) {
            curves.add(curve(running.nozzles(), running.water().fullPipeFlow(), 1.4 * widest));
        }
    }

    static Figure of(Plant plant) {
        PowerPicture picture = new PowerPicture(plant);
        String year = picture.levels.isEmpty()
                ? " The design says nothing of the stream, so nobody knows for how much of the year there is that flow."
                : " Above, the share of the year in which the stream leaves that much to the plant.";
        return new Figure(
                Topic.POWER,
                "Each set rises to its bend, the flow that fills the pipe; more water than that runs past. Look which line is highest"
                        + " at the flow of the dry season, and how steeply it falls left of its bend." + year,
                picture::draw,
                picture.tables());
    }

    private Curve curve(NozzleGroup nozzles, double fullFlow, double end) {
        double[] flow = new double[STEPS + 2];
        double[] power = new double[STEPS + 2];
        for (int i = 0; i <= STEPS; i++) {
            flow[i] = fullFlow * i / STEPS;
            power[i] = i == 0 ? 0 : batteryPower(nozzles, flow[i]);
        }
        flow[STEPS + 1] = end;
        power[STEPS + 1] = power[STEPS];
        return new Curve(
                nozzles,
                fullFlow,
                DoubleStream.of(flow).boxed().toList(),
                DoubleStream.of(power).boxed().toList());
    }

    private double batteryPower(NozzleGroup nozzles, double available) {
        return Math.max(
                0, plant.solve().running(nozzles, available).operatingPoint().batteryPower());
    }

    private void draw(Markup page) {
        double top = levels.isEmpty() ? 28 : 148;
        double foot = top + 210;
        Drawing on = Drawing.begin(
                page, Topic.POWER.id(), "Power of each nozzle set over the flow of the stream", foot + 42);
        double end = curves.get(0).flow(STEPS + 1);
        Scale x = Scale.even(0, end * LITRES, 44, 392);
        if (!levels.isEmpty()) {
            share(on, x, end);
        }
        double most = curves.stream().mapToDouble(c -> c.power(STEPS)).max().orElse(1);
        Plot plot = new Plot(on, x, Scale.even(0, 1.08 * Math.max(1, most), foot, top));
        plot.axes("flow that the stream leaves, L/s", "battery, W", 4);
        Legend key = new Legend();
        for (int i = 0; i < curves.size(); i++) {
            Curve curve = curves.get(i);
            double[] litres = scaled(curve.flow());
            plot.line(litres, curve.power().stream().mapToDouble(w -> w).toArray(), "line " + TorquePicture.series(i));
            plot.dot(curve.fullFlow() * LITRES, curve.power(STEPS), "dot");
            key.line(
                    "line " + TorquePicture.series(i),
                    curve.nozzles().name() + ": " + ShownText.watts(curve.power(STEPS)) + " from "
                            + ShownText.flow(curve.fullFlow()) + " on");
        }
        on.end();
        key.mark("dot", "the pipe is just full").write(page);
    }

    /** The share of the year above each flow. */
    private void share(Drawing on, Scale x, double end) {
        Plot plot = new Plot(on, x, Scale.even(0, 100, 108, 26));
        plot.axes("", "share of the year with at least that flow, %", 2);
        int steps = 60;
        double[] litres = new double[steps + 1];
        double[] share = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            litres[i] = LITRES * end * i / steps;
            share[i] = 100 * YearShare.with(levels, end * i / steps);
        }
        plot.line(litres, share, "line s-water");
    }

    private static double[] scaled(List<Double> flow) {
        return flow.stream().mapToDouble(each -> each * LITRES).toArray();
    }

    private List<DataTable> tables() {
        List<DataTable> tables = new ArrayList<>();
        List<String> head = new ArrayList<>(List.of("share of its flow"));
        curves.forEach(c -> head.add(c.nozzles().name()));
        DataTable power = new DataTable("Power at the battery, by the share of the flow that fills the pipe", head);
        for (int step : new int[] {3, 6, 9, 12}) {
            List<String> row = new ArrayList<>(List.of(ShownText.percent((double) step / STEPS)));
            curves.forEach(c -> row.add(ShownText.watts(c.power(step)) + " at " + ShownText.flow(c.flow(step))));
            power.row(row);
        }
        tables.add(power);
        if (!levels.isEmpty()) {
            DataTable stream =
                    new DataTable("The stream, less what must stay in it", "when", "flow", "left to the plant");
            for (StreamLevel level : levels) {
                stream.row(YearShare.told(level), ShownText.flow(level.flow()), ShownText.flow(level.available()));
            }
            tables.add(stream);
        }
        return tables;
    }
}
