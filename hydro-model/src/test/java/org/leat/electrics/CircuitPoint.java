package org.leat.electrics;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** One stored run of the circuit simulator (circuit simulation, ngspice 39.3): a row of circuits/results.csv. */
record CircuitPoint(Map<String, String> row) {

    /** Forward line of the near-ideal junction with 0.8 V in series, as measured on the simulator's waveforms. */
    static final DiodeLine DIODE = new DiodeLine(0.8135, 0.005);

    static Stream<CircuitPoint> where(Predicate<CircuitPoint> wanted) {
        List<CircuitPoint> points = new ArrayList<>();
        try (BufferedReader in = new BufferedReader(new InputStreamReader(
                CircuitPoint.class.getResourceAsStream("/circuits/results.csv"), StandardCharsets.UTF_8))) {
            List<String> lines =
                    in.lines().filter(line -> !line.startsWith("#")).toList();
            String[] names = lines.get(0).split(",", -1);
            for (String line : lines.subList(1, lines.size())) {
                String[] cells = line.split(",", -1);
                Map<String, String> row = new LinkedHashMap<>();
                for (int i = 0; i < names.length; i++) {
                    row.put(names[i], cells[i]);
                }
                points.add(new CircuitPoint(row));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return points.stream().filter(wanted);
    }

    /** Points with a straight-line diode whose load is a battery or a bare resistor. */
    static Stream<CircuitPoint> steady() {
        return where(p -> (p.load().equals("batt") || p.load().equals("res")) && !p.id().endsWith("_exp"));
    }

    String id() {
        return row.get("id");
    }

    String load() {
        return row.get("load");
    }

    double at(String column) {
        String cell = row.get(column);
        return cell.isEmpty() ? 0 : Double.parseDouble(cell);
    }

    double speed() {
        return at("rpm") * Math.PI / 30;
    }

    AlternatorConstants alternator() {
        double perSpeed = EmfConstant.fromLineRms(at("ell"), speed());
        return AlternatorConstants.fromLeads((int) at("p"), perSpeed, 2 * at("R"), 2 * at("L"));
    }

    /** Battery with its resistance; a bare resistor is a bus of no voltage. */
    BatteryClamp bus() {
        return new BatteryClamp(alternator(), 0, DIODE, at("VB"), load().equals("res") ? at("RL") : at("RB"));
    }

    @Override
    public String toString() {
        return id();
    }
}
