package org.leat.choice;

import java.io.IOException;
import java.io.InputStream;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.leat.choice.UsualParts.Machine;
import org.leat.law.Gravity;
import org.leat.quantity.Si;

/**
 * The whole plant about its main parts: every other part in a size that is sold, large enough for what was solved. Proportions and
 * margins are common practice; whether they suffice is for the rules to say.
 */
final class UsualPlant {

    private static final double DENSITY = 1000;
    private static final double COPPER = 1.8e-8;
    private static final double HOUR = 3600;

    private static final double[] FUSES = {
        10, 16, 20, 25, 32, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315, 400, 500, 630
    };
    private static final double[] LEAD_FUSES = {
        2, 4, 6, 8, 10, 12, 16, 20, 25, 32, 35, 40, 50, 63, 80, 100, 125, 160, 200, 250, 315
    };
    private static final double[] AREAS = {4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150, 185, 240};
    private static final double[] VOLTS = {60, 80, 100, 125, 160, 200, 250, 300, 400, 600};
    private static final double[] E24 = {
        1, 1.1, 1.2, 1.3, 1.5, 1.6, 1.8, 2, 2.2, 2.4, 2.7, 3, 3.3, 3.6, 3.9, 4.3, 4.7, 5.1, 5.6, 6.2, 6.8, 7.5, 8.2, 9.1
    };

    private final Map<String, String> sections;

    private UsualPlant(Map<String, String> sections) {
        this.sections = sections;
    }

    /**
     * What the lesser parts are sized for.
     *
     * @param flow of the widest nozzles, m³/s
     * @param power into the battery, W
     * @param current behind the bridge, A
     * @param lead current of one lead of the alternator, rms, A
     * @param runaway highest voltage behind the bridge that lasts, V
     * @param full current while the battery is full, A
     */
    record Duties(double flow, double power, double current, double lead, double runaway, double full) {}

    static UsualPlant shipped() {
        try (InputStream in = Objects.requireNonNull(UsualPlant.class.getResourceAsStream("usual-plant.yaml"))) {
            Map<String, String> sections = new LinkedHashMap<>();
            String name = "";
            for (String line : new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .toList()) {
                if (!line.isEmpty() && Character.isLetter(line.charAt(0))) {
                    name = line.substring(0, line.indexOf(':'));
                }
                sections.merge(name, line + "\n", String::concat);
            }
            return new UsualPlant(sections);
        } catch (IOException e) {
            throw new IllegalStateException(e); // a resource of this artifact is always there
        }
    }

    /** {@return the sections of a design file with everything but site and loads, by name, in order} */
    Map<String, String> filled(MainParts parts, Duties duties, SurveyNumbers survey) {
        Map<String, String> values = new Sizes(parts, duties, survey).values;
        Map<String, String> filled = new LinkedHashMap<>();
        sections.forEach((name, text) -> {
            if (survey.inverter() || !name.equals("inverter")) {
                filled.put(name, fill(text, values, survey.inverter()));
            }
        });
        return filled;
    }

    private static String fill(String text, Map<String, String> values, boolean inverter) {
        StringBuilder out = new StringBuilder();
        boolean passing = true;
        for (String line : text.lines().toList()) {
            if (line.equals("<with inverter>")) {
                passing = inverter;
            } else if (line.equals("<end>")) {
                passing = true;
            } else if (passing) {
                out.append(filledLine(line, values)).append('\n');
            }
        }
        return out.toString();
    }

    private static String filledLine(String line, Map<String, String> values) {
        StringBuilder out = new StringBuilder();
        int at = 0;
        for (int open = line.indexOf('<'); open >= 0; open = line.indexOf('<', at)) {
            int close = line.indexOf('>', open);
            String name = line.substring(open + 1, close);
            out.append(line, at, open).append(Objects.requireNonNull(values.get(name), name));
            at = close + 1;
        }
        return out.append(line, at, line.length()).toString();
    }

    /** A number in at most four digits, as people write it. */
    static String number(double value) {
        return new BigDecimal(value)
                .round(new MathContext(4, RoundingMode.HALF_EVEN))
                .stripTrailingZeros()
                .toPlainString();
    }

    /** {@return the least size that is no less; the greatest where none is} */
    static double size(double least, double... series) {
        return DoubleStream.of(series)
                .filter(size -> size >= least - 1e-9)
                .findFirst()
                .orElse(series[series.length - 1]);
    }

    private static double resistance(double most) {
        double decade = Math.pow(10, Math.floor(Math.log10(most)));
        double within = most / decade * (1 + 1e-9);
        return decade * DoubleStream.of(E24).filter(r -> r <= within).max().orElse(1);
    }

    private static double up(double value, double step) {
        return Math.ceil(value / step - 1e-9) * step;
    }

    private static final class Sizes {

        private final MainParts parts;
        private final Duties duties;
        private final SurveyNumbers survey;
        private final Map<String, String> values = new TreeMap<>();

        Sizes(MainParts parts, Duties duties, SurveyNumbers survey) {
            this.parts = parts;
            this.duties = duties;
            this.survey = survey;
            intake();
            penstock();
            nozzles();
            runner();
            alternator();
            bus();
        }

        private void put(String name, double value, String unit) {
            values.put(name, number(value) + (unit.isEmpty() ? "" : " " + unit));
        }

        private double bore() {
            return parts.outside() * (1 - 2 / parts.sdr());
        }

        private double submergence() {
            double velocity = duties.flow() / (Math.PI / 4 * bore() * bore());
            double froude = velocity / Math.sqrt(Gravity.STANDARD * bore());
            return Math.min(0.6 * survey.head(), Math.max(0.45, up(1.5 * bore() * (1 + 2.3 * froude), 0.05)));
        }

        private void intake() {
            double hole = size(0, 1);
            for (double each : new double[] {1, 1.5, 2, 3, 4, 5}) {
                hole = each <= 1e3 * parts.bores().get(0) / 3 + 1e-9 ? each : hole;
            }
            double area = duties.flow() / 0.3;
            put("hole", hole, "mm");
            put("holes", up(area / (Math.PI / 4 * hole * hole * 1e-6), 100), "");
            put("surface", up(2.6 * area * 1e4, 50), "cm²");
            put("submergence", submergence(), "m");
            double scale = Math.max(1, Math.sqrt(duties.flow() / 2.6e-3));
            put("basin-length", up(1.8 * scale, 0.1), "m");
            put("basin-width", up(0.9 * scale, 0.1), "m");
            put("vent", size(0.45e3 * bore(), 25, 32, 40, 50, 63, 75, 90), "mm");
        }

        private void penstock() {
            double pressure = DENSITY * Gravity.STANDARD * survey.head();
            double area = Math.PI / 4 * parts.outside() * parts.outside();
            double top = survey.head() - submergence() - 0.05;
            put("filling-time", up(survey.pipe() / 100, 1), "h");
            put("rated-fittings", size(pressure * 2.2 / 1e5, 10, 16, 25), "bar");
            put("anchors", Math.max(6, up(6.5 * pressure * area / 1e3, 1)), "kN");
            put("expansion", Math.max(100, up(2.5 * survey.pipe(), 50)), "mm");
            put("outside", 1e3 * parts.outside(), "mm");
            put("sdr", parts.sdr(), "");
            put("inlet-sdr", parts.inletSdr(), "");
            values.put("top", metres(top));
            values.put("below-top", metres(top - Math.min(0.3, 0.2 * top)));
            put("closing", Math.max(15, up(survey.pipe() / 8, 5)), "s");
            values.put("run", metres(survey.pipe() - 2));
        }

        private static String metres(double value) {
            return BigDecimal.valueOf(Math.round(value * 100), 2)
                            .stripTrailingZeros()
                            .toPlainString() + " m";
        }

        private void nozzles() {
            put("drilled", 1e3 * parts.open(), "mm");
            String open = number(1e3 * parts.open()) + " mm";
            values.put("open", String.join(", ", Collections.nCopies(parts.openJets(), open)));
            List<String> sets = new ArrayList<>();
            for (double bore : parts.bores()) {
                String one = number(1e3 * bore) + " mm";
                for (int jets = 1; jets <= parts.jets(); jets++) {
                    sets.add("{ open: [" + String.join(", ", Collections.nCopies(jets, one)) + "] }");
                }
            }
            values.put("sets", String.join(", ", sets));
            values.put(
                    "available",
                    parts.bores().stream().map(d -> number(1e3 * d) + " mm").collect(Collectors.joining(", ")));
            put("branch", size(3.2e3 * parts.widest(), 20, 25, 32, 40, 50, 63, 75, 90), "mm");
        }

        private void runner() {
            double width = Math.rint(2.95e3 * parts.widest());
            double scale = width / 36;
            double pitch = 1e3 * parts.pitch();
            put("pitch", pitch, "mm");
            put("wheel-mass", Math.max(0.6, 2.6 * pitch / 180 * pitch / 180 * Math.max(0.6, scale)), "kg");
            double clear = up(4.2e3 * parts.widest() + 15 * scale, 10) + 10;
            put("tailwater", clear + 60, "mm");
            put("flood", clear, "mm");
            put("bucket-count", Math.rint(15 + pitch / (2e3 * parts.widest())), "");
            put("bucket-width", width, "mm");
            put("bucket-length", Math.rint(29 * scale), "mm");
            put("bucket-depth", Math.rint(11 * scale), "mm");
            put("bucket-mass", 24 * scale * scale * scale, "g");
            put("root-width", Math.rint(22 * scale), "mm");
            put("root-thickness", Math.rint(9 * scale), "mm");
            put("lever-arm", Math.rint(19 * scale), "mm");
            values.put("bucket-material", survey.head() > 60 ? "bronze-cast" : "aluminium-cast");
            put("bearing", size(14 * Math.sqrt(Math.max(1, duties.power() / 440)), 14, 20.3, 27, 35.1, 46.2), "kN");
            double shaft = size(20 * pitch / 180, 15, 17, 20, 25, 30, 35, 40);
            put("shaft", shaft, "mm");
            put("bolt", size(0.3 * shaft, 5, 6, 8, 10, 12), "mm");
            put("bolt-circle", 3 * shaft, "mm");
        }

        private void alternator() {
            Machine machine = parts.machine();
            double turns = parts.turns();
            put("volts", Si.of(machine.voltage()) * turns, "V");
            put("resistance", Si.of(machine.resistance()) * turns * turns, "Ω");
            put("inductance", 1e3 * Si.of(machine.inductance()) * turns * turns, "mH");
            put("pole-pairs", machine.polePairs(), "");
            put("current-limit", Si.of(machine.current()) / turns, "A");
            put("speed-limit", Si.of(machine.speedLimit()) * 30 / Math.PI, "rpm");
            put("no-load", Si.of(machine.noLoad()), "W");
            put("thermal-resistance", Si.of(machine.thermalResistance()), "K/W");
        }

        private void bus() {
            int cells = parts.cells();
            double nominal = 3.2 * cells;
            double current = duties.current();
            double device = size(1.3 * duties.runaway(), VOLTS);
            double inverter = size(1.2 * survey.together(), 300, 500, 800, 1000, 1500, 2000, 3000, 5000, 8000);
            inverter =
                    Math.max(inverter, size(survey.starting() / 2, 300, 500, 800, 1000, 1500, 2000, 3000, 5000, 8000));
            double drawn = inverter / (0.9 * nominal);
            double capacity = capacity(nominal, current, survey.inverter() ? drawn : 0);
            put("reverse", size(2.6 * duties.runaway(), 200, 400, 600, 800, 1000, 1200), "V");
            double bridge = size(5 * current, 35, 60, 100, 150, 200, 300, 400, 600, 800);
            put("bridge-current", bridge, "A");
            put("slope", 0.24 / bridge * 1e3, "mΩ");
            put("junction", Math.min(1.1, Math.floor(10 * 55 / (1.9 * Math.max(1, current))) / 10 + 0.05), "K/W");
            double fuse = size(1.5 * current, FUSES);
            double drop = 2 * survey.cable() * current * COPPER / (0.025 * nominal) * 1e6;
            put("phase-area", area(1.1 * current, 0), "mm²");
            put("run-area", area(fuse, drop), "mm²");
            put("battery-fuse", fuse, "A");
            put("lead-fuse", size(1.26 * duties.lead(), LEAD_FUSES), "A");
            put("cable", survey.cable(), "m");
            put("regulator-current", size(1.6 * current, 10, 20, 30, 40, 60, 80, 100, 150, 200, 300), "A");
            put("electronics", device, "V");
            put("device-volts", device, "V");
            put("absorption", 3.5 * cells, "V");
            put("second-trigger", 4.4 * cells, "V");
            put("float", 3.375 * cells, "V");
            put("cut-off", 3.0 * cells, "V");
            double cold = resistance(3.5 * cells / (1.4 * duties.full()) / 1.045);
            double dumped = 3.5 * cells / cold;
            put("dump", cold, "Ω");
            put("dump-hot", 1.045 * cold, "Ω");
            double label = size(1.45 * 3.5 * cells, 24, 48, 96);
            put("dump-power", Math.rint(label * label / (1.045 * cold) / 10) * 10, "W");
            put("dump-volts", label, "V");
            double dumpFuse = size(1.5 * dumped, FUSES);
            put("dump-fuse", dumpFuse, "A");
            put("switch", size(1.5 * dumpFuse, 30, 40, 60, 80, 100, 120, 150, 200, 300, 400, 600), "A");
            put("dump-area", area(dumpFuse, 0), "mm²");
            put("cells", cells, "");
            put("capacity", capacity, "Ah");
            put("internal", 1.5 * cells * 200 / capacity, "mΩ");
            put("charge-current", 0.5 * capacity, "A");
            put("charge-volts", 3.65 * cells, "V");
            put("management-current", Math.max(0.75 * capacity, up(1.3 * drawn, 10)), "A");
            put("inverter-from", 2.625 * cells, "V");
            put("inverter-to", 4.0 * cells, "V");
            put("inverter", inverter, "W");
            put("inverter-surge", 2 * inverter, "W");
            put("inverter-standing", Math.max(4, Math.rint(inverter * 0.0053)), "W");
            double inverterFuse = size(1.4 * drawn, FUSES);
            put("inverter-fuse", inverterFuse, "A");
            put("inverter-area", area(inverterFuse, 0), "mm²");
        }

        /** For the charging current at half an hour's rate, two thirds of a day's use, and what the inverter draws. */
        private double capacity(double nominal, double current, double drawn) {
            double use = 0.67 * survey.daily() / 0.9 / (0.8 * nominal) / HOUR;
            double least = Math.max(Math.max(2.3 * current, use), drawn);
            return size(least, 50, 100, 150, 200, 280, 400, 560, 840, 1120);
        }

        /** Flexible copper in insulation for 90 °C on a wall, grouped as stated; the rules reckon it by the tables. */
        private static double area(double carried, double drop) {
            double least = Math.pow(carried / 11.5, 1 / 0.65);
            return size(Math.max(least, drop), AREAS);
        }
    }
}
