package org.leat.season;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeMap;
import org.apiguardian.api.API;
import org.leat.catalogue.tables.CellChemistryCatalogue;
import org.leat.plant.Plant;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.NozzleGroup;

/**
 * Power at the battery's poles of each nozzle set, against the water there is and the battery's state of charge: the plant solved at
 * points that are halved until what lies between them is straight enough, and straight between them. Immutable; some hundred
 * solutions when it is made, none after.
 */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class PowerTable {

    /** Error of what lies between points, of the set's greatest power, that is aimed at. */
    private static final double AIM = 0.004;

    private static final int MOST_POINTS = 400;
    private static final double[] CHARGE = {0, 0.5, 1};

    private final List<Row> rows;
    private final double error;

    private PowerTable(List<Row> rows, double error) {
        this.rows = List.copyOf(rows);
        this.error = error;
    }

    /** One set: power at each flow and state of charge, and the flow that fills its pipe. */
    private static final class Row {

        private final NozzleGroup set;
        private final double full;
        private final double[] flows;
        private final double[][] powers;

        Row(NozzleGroup set, double full, TreeMap<Double, double[]> points) {
            this.set = set;
            this.full = full;
            this.flows =
                    points.keySet().stream().mapToDouble(Double::doubleValue).toArray();
            this.powers = points.values().toArray(double[][]::new);
        }

        double power(double available, double charge) {
            double flow = Math.min(available, full);
            if (flow <= flows[0]) {
                return 0;
            }
            int low = 0;
            int high = flows.length - 1;
            while (high - low > 1) {
                int middle = (low + high) >>> 1;
                if (flows[middle] <= flow) {
                    low = middle;
                } else {
                    high = middle;
                }
            }
            double along = (flow - flows[low]) / (flows[high] - flows[low]);
            return (1 - along) * at(powers[low], charge) + along * at(powers[high], charge);
        }

        private static double at(double[] power, double charge) {
            double place = charge * (CHARGE.length - 1);
            int low = Math.min(CHARGE.length - 2, (int) place);
            return power[low] + (place - low) * (power[low + 1] - power[low]);
        }
    }

    /**
     * {@return the table of a plant}
     *
     * @throws IllegalStateException where the plant cannot be solved: see {@link Plant#unsolvable()}
     */
    public static PowerTable of(Plant plant) {
        List<Plant> charged = new ArrayList<>();
        for (double charge : CHARGE) {
            BatteryNumbers battery = plant.numbers().battery();
            double volts =
                    battery.cellsInSeries() * CellChemistryCatalogue.openCircuitVoltage(battery.chemistry(), charge);
            charged.add(plant.withBattery(battery.withStateOfCharge(charge).withRestingVoltage(volts)));
        }
        List<Row> rows = new ArrayList<>();
        double worst = 0;
        for (NozzleGroup set : plant.numbers().nozzles().sets()) {
            double full = plant.running(set).water().fullPipeFlow();
            TreeMap<Double, double[]> points = new TreeMap<>();
            points.put(0.0, new double[CHARGE.length]);
            // so little that no jet turns the wheel
            double least = full / 50;
            points.put(least, powers(charged, set, least));
            points.put(full, powers(charged, set, full));
            double greatest = Math.max(1e-9, points.get(full)[1]);
            worst = Math.max(worst, halve(charged, set, points, least, full, greatest));
            rows.add(new Row(set, full, points));
        }
        return new PowerTable(rows, worst);
    }

    /**
     * {@return a table that was measured, or made by other means: one set, straight between its points}
     *
     * @param flows what the stream had, m³/s, rising from 0; the last fills the pipe
     * @param watts at the battery's poles, whatever its charge
     */
    public static PowerTable ofPoints(NozzleGroup set, double[] flows, double[] watts) {
        TreeMap<Double, double[]> points = new TreeMap<>();
        for (int i = 0; i < flows.length; i++) {
            if (!(flows[i] >= 0 && watts[i] >= 0) || (i > 0 && !(flows[i] > flows[i - 1]))) {
                throw new IllegalArgumentException("flows rise and neither they nor powers are below nil");
            }
            points.put(flows[i], new double[] {watts[i], watts[i], watts[i]});
        }
        if (points.size() < 2 || points.firstKey() != 0) {
            throw new IllegalArgumentException("a table begins at no flow and has a second point");
        }
        return new PowerTable(List.of(new Row(set, points.lastKey(), points)), 0);
    }

    /** Halves a stretch until the middle lies straight between its ends; {@return the greatest error left}. */
    private static double halve(
            List<Plant> charged, NozzleGroup set, TreeMap<Double, double[]> points, double from, double to, double of) {
        double middle = (from + to) / 2;
        double[] solved = powers(charged, set, middle);
        double error = 0;
        for (int i = 0; i < solved.length; i++) {
            double straight = (points.get(from)[i] + points.get(to)[i]) / 2;
            error = Math.max(error, Math.abs(straight - solved[i]) / of);
        }
        points.put(middle, solved);
        if (error <= AIM || points.size() >= MOST_POINTS || to - from < 1e-4 * points.lastKey()) {
            return error;
        }
        return Math.max(halve(charged, set, points, from, middle, of), halve(charged, set, points, middle, to, of));
    }

    private static double[] powers(List<Plant> charged, NozzleGroup set, double flow) {
        double[] powers = new double[charged.size()];
        for (int i = 0; i < powers.length; i++) {
            powers[i] = Math.max(
                    0,
                    charged.get(i).solve().running(set, flow).operatingPoint().batteryPower());
        }
        return powers;
    }

    /** {@return the sets, in the design's order} */
    public List<NozzleGroup> sets() {
        return rows.stream().map(row -> row.set).toList();
    }

    /** {@return the flow that fills the pipe of a set, m³/s} */
    public double fullFlow(int set) {
        return rows.get(set).full;
    }

    /**
     * {@return power at the battery's poles, W}
     *
     * @param set in the order of {@link #sets()}
     * @param available what the stream has for the plant, m³/s
     * @param charge state of the battery, from 0 to 1
     */
    public double power(int set, double available, double charge) {
        return rows.get(set).power(available, charge);
    }

    /** {@return the set that gives most at a flow, with the battery half full; the first of equals} */
    public int best(double available) {
        int best = 0;
        for (int i = 1; i < rows.size(); i++) {
            best = power(i, available, 0.5) > power(best, available, 0.5) ? i : best;
        }
        return best;
    }

    /** {@return greatest error of what lies between its points, of the greatest power of the set; estimated at the middles} */
    public double error() {
        return error;
    }
}
