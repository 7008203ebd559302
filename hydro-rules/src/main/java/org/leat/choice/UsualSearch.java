package org.leat.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.leat.catalogue.rows.PipeMaterial;
import org.leat.catalogue.rows.PipeStandard;
import org.leat.catalogue.tables.PipeCatalogue;
import org.leat.choice.UsualParts.Machine;
import org.leat.choice.UsualPlant.Duties;
import org.leat.design.Design;
import org.leat.design.DesignBuilder;
import org.leat.design.Site;
import org.leat.file.DesignReader;
import org.leat.file.DesignWriter;
import org.leat.file.ProblemText;
import org.leat.file.Reading;
import org.leat.law.Gravity;
import org.leat.plant.Plant;
import org.leat.plant.Screening;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.quantity.Si;

/**
 * Sets of usual parts for a place, the one that gives most first: pipes, jets and bores by the water, wheels and windings by the
 * speed, each solved; nothing is judged. Made for one survey, then thrown away.
 */
final class UsualSearch {

    private static final double WATER = 1000 * Gravity.STANDARD;

    /** Share of the year in which the widest nozzles have the water they take. */
    private static final double WETTER = 0.3;

    /** Share of the gross head beyond which a pipe is taken as too narrow to be worth solving, and water too fast for it, m/s. */
    private static final double MOST_FRICTION = 0.33;

    private static final double FASTEST = 3;
    private static final double SLOWEST = 0.15;
    private static final double NET = 0.9;
    private static final double VELOCITY = 0.97;
    private static final double SPEED_RATIO = 0.46;
    private static final double RUNAWAY = 1.93;

    /** Alternating volts between leads, rms, over direct volts behind the bridge. */
    private static final double BRIDGE = 1 / 1.35;

    /** Share of the head below which a wider pipe earns next to nothing. */
    private static final double LEAST_FRICTION = 0.05;

    /** Machines tried for one jet, the smallest that suits first. */
    private static final int MACHINES = 2;

    /** Of a jet's power behind the bridge, roughly; and over what a machine is usual for, at most. */
    private static final double TURNED = 0.6;

    private static final double OVERLOAD = 1.5;
    /** Current of a lead, rms, over that behind the bridge: the root of two thirds where each lead carries it a third of the time. */
    private static final double LEAD = Math.sqrt(2.0 / 3);

    /**
     * What a winding must stand over the direct current: a fuse in the leads that carries {@link #LEAD} of that for ever, 1.25 times as
     * large, surely opens from 1.6 times its rating on (IEC 60269-1, from memory), and a shorted diode with little water brings as much.
     */
    private static final double FUSED = 1.7;

    private static final int BORES = 3;
    private static final int KEPT = 5;

    private final UsualParts parts;
    private final UsualPlant plant;
    private final SurveyNumbers numbers;
    private final String name;
    private final String site;
    private final String loads;
    private final Map<String, PlantNumbers> machines = new TreeMap<>();
    private int solved;

    /**
     * A set of parts that was solved.
     *
     * @param parts the main ones
     * @param duties of the others
     * @param power with the widest nozzles and the most water, W
     * @param mean power of the year, W
     */
    record CandidatePlant(MainParts parts, Duties duties, double power, double mean) {}

    UsualSearch(UsualParts parts, UsualPlant plant, SiteSurvey survey, SurveyNumbers numbers) {
        this.parts = parts;
        this.plant = plant;
        this.numbers = numbers;
        String written = DesignWriter.yaml(DesignBuilder.builder(bare(survey.site()))
                .name(survey.name())
                .loads(survey.loads())
                .build());
        this.name = block(written, "name");
        this.site = block(written, "site");
        this.loads = block(written, "loads");
    }

    private static String block(String yaml, String name) {
        StringBuilder block = new StringBuilder();
        boolean inside = false;
        for (String line : yaml.split("\n", -1)) {
            if (!line.isEmpty() && Character.isLetter(line.charAt(0))) {
                inside = line.startsWith(name + ":");
            }
            if (inside) {
                block.append(line).append('\n');
            }
        }
        return block.toString();
    }

    private static Design design(String text) {
        Reading reading = DesignReader.read(text, "usual-plant.yaml");
        Design design = reading.design();
        if (design == null) {
            throw new IllegalStateException(
                    reading.problems().stream().map(ProblemText::line).toList().toString());
        }
        return design;
    }

    int solved() {
        return solved;
    }

    /** {@return the text of the design file, without what comes before the format} */
    String text(MainParts main, Duties duties) {
        Map<String, String> filled = new LinkedHashMap<>(plant.filled(main, duties, numbers));
        StringBuilder text = new StringBuilder("format: 1\n" + name + site);
        filled.forEach((part, section) -> {
            if (part.equals("protection")) {
                text.append(loads);
            }
            text.append(section);
        });
        return text.toString();
    }

    /** A design with this site, as small as one can be. */
    static Design bare(Site site) {
        return DesignBuilder.builder(design("""
                format: 1
                name: x
                site: { gross-head: 10 m }
                penstock:
                  sections:
                    - name: run
                      pipe: { kind: polyethylene, material: pe100, outside-diameter: 63 mm, sdr: 11 }
                      length: 10000 m
                nozzles: { open: [ 10 mm ] }
                alternator:
                  open-circuit: { kind: volts-at-speed, voltage: 21 V, speed: 1000 rpm }
                  winding: { resistance-between-leads: 1 ohm }
                battery: { chemistry: lithium-iron-phosphate, cells-in-series: 8, capacity: 100 Ah }
                """)).site(site).build();
    }

    Design design(MainParts main, Duties duties) {
        return design(text(main, duties));
    }

    /** {@return every set worth judging, that which gives most in the year first} */
    List<CandidatePlant> candidates() {
        List<CandidatePlant> all = new ArrayList<>();
        for (MainParts water : waters()) {
            all.addAll(turned(water));
        }
        all.sort(Comparator.comparingDouble(CandidatePlant::power).reversed());
        List<CandidatePlant> kept = new ArrayList<>();
        Map<MainParts, Plant> waters = new LinkedHashMap<>();
        Map<String, Integer> alike = new TreeMap<>();
        for (CandidatePlant each : all) {
            MainParts main = each.parts();
            String kind = main.outside() + " " + main.cells() + " "
                    + Si.of(main.machine().size());
            if (alike.merge(kind, 1, Integer::sum) > KEPT) {
                continue;
            }
            Plant near = waters.computeIfAbsent(
                    each.parts().withWheel(0.18, parts.machines().get(0), 1, 8), this::plant);
            PlantNumbers whole = whole(near, each.parts());
            OptionalDouble mean = Screening.near(near).meanPower(whole);
            solved++;
            kept.add(new CandidatePlant(each.parts(), each.duties(), each.power(), mean.orElse(0)));
        }
        kept.sort(Comparator.comparingDouble(CandidatePlant::mean).reversed());
        return kept;
    }

    /** Pipes with the widest bores that the stream fills and the pipe lets pass. */
    private List<MainParts> waters() {
        List<MainParts> waters = new ArrayList<>();
        double jet = VELOCITY * Math.sqrt(2 * Gravity.STANDARD * NET * numbers.head());
        double most = numbers.available(WETTER) * 1.02;
        for (double outside : PipeCatalogue.sizes(PipeStandard.ISO_4427)) {
            double sdr = ratio(outside);
            if (outside < 0.032 || outside > 0.2 || sdr == 0) {
                continue;
            }
            List<MainParts> found = new ArrayList<>();
            double widest = 0;
            for (int jets : parts.jets()) {
                found.addAll(bores(outside, sdr, jets, jet, most));
            }
            for (MainParts each : found) {
                widest = Math.max(widest, friction(each, jet));
            }
            waters.addAll(found);
            if (!found.isEmpty() && widest < LEAST_FRICTION) {
                break;
            }
        }
        return waters;
    }

    /** The thinnest wall whose rating leaves a third for blows; 0 where none does. */
    private double ratio(double outside) {
        for (double sdr : new double[] {17, 11, 7.4}) {
            double rating =
                    PipeCatalogue.polyethylene(PipeMaterial.PE100, outside, sdr).nominalPressure();
            if (rating >= 1.33 * WATER * numbers.head()) {
                return sdr;
            }
        }
        return 0;
    }

    private double friction(MainParts main, double jet) {
        double ratio = main.jets() * square(main.widest()) / square(main.outside() * (1 - 2 / main.sdr()));
        return lost(ratio * jet, main.outside() * (1 - 2 / main.sdr()));
    }

    private static double square(double x) {
        return x * x;
    }

    /** Share of the head that the pipe takes, roughly. */
    private double lost(double velocity, double bore) {
        return 0.02 * numbers.pipe() / bore * velocity * velocity / (2 * Gravity.STANDARD) / numbers.head();
    }

    private List<MainParts> bores(double outside, double sdr, int jets, double jet, double most) {
        double bore = outside * (1 - 2 / sdr);
        double area = Math.PI / 4 * bore * bore;
        List<Double> fit = new ArrayList<>();
        List<Double> sizes = parts.nozzles().stream().map(Si::of).toList();
        double greatest =
                Si.of(parts.machines().get(parts.machines().size() - 1).size());
        for (double d : sizes) {
            double flow = jets * Math.PI / 4 * d * d * jet;
            double velocity = flow / area;
            double friction = 0.02 * numbers.pipe() / bore * velocity * velocity / (2 * Gravity.STANDARD);
            boolean turned = TURNED * NET * WATER * flow * numbers.head() < OVERLOAD * greatest;
            if (turned
                    && flow <= most
                    && velocity <= FASTEST
                    && velocity >= SLOWEST
                    && friction <= MOST_FRICTION * numbers.head()) {
                fit.add(d);
            }
        }
        List<MainParts> found = new ArrayList<>();
        for (double widest : fit.subList(Math.max(0, fit.size() - BORES), fit.size())) {
            List<Double> onHand = onHand(sizes, widest);
            double inlet = Math.min(11, sdr);
            MainParts made = new MainParts(
                    outside,
                    sdr,
                    inlet,
                    jets,
                    onHand,
                    widest,
                    jets,
                    0.18,
                    parts.machines().get(0),
                    1,
                    8);
            found.add(withOpen(made, jet));
        }
        return found;
    }

    /** Down to three quarters of the widest: the buckets suit no thinner jet. */
    private static List<Double> onHand(List<Double> sizes, double widest) {
        List<Double> onHand = new ArrayList<>();
        for (double share : new double[] {0.75, 0.86, 1}) {
            double nearest = sizes.get(0);
            for (double d : sizes) {
                nearest = Math.abs(d - share * widest) < Math.abs(nearest - share * widest) ? d : nearest;
            }
            if (!onHand.contains(nearest)) {
                onHand.add(nearest);
            }
        }
        return onHand;
    }

    /** The set of most water that the stream fills for as much of the year as the pipe must stay full; else that of least. */
    private MainParts withOpen(MainParts made, double jet) {
        double flow = 1.02 * numbers.available(numbers.fullPipeShare());
        MainParts open = made.withOpen(made.bores().get(0), 1);
        double most = 0;
        for (double d : made.bores()) {
            for (int jets = 1; jets <= made.jets(); jets++) {
                double taken = jets * Math.PI / 4 * d * d * jet;
                if (taken > most && taken <= flow) {
                    most = taken;
                    open = made.withOpen(d, jets);
                }
            }
        }
        return open;
    }

    private Plant plant(MainParts main) {
        return Plant.of(design(main, estimated(main)));
    }

    private Duties estimated(MainParts main) {
        double d = main.widest();
        double jet = VELOCITY * Math.sqrt(2 * Gravity.STANDARD * NET * numbers.head());
        double flow = main.jets() * Math.PI / 4 * d * d * jet;
        double power = 0.55 * WATER * flow * numbers.head();
        double volts = 3.3 * main.cells();
        return new Duties(flow, power, power / volts, LEAD * power / volts, 2.2 * volts, power / volts);
    }

    private List<CandidatePlant> turned(MainParts water) {
        Plant near = plant(water);
        double widest = water.widest();
        Running full = near.solve().running().stream()
                .filter(r -> r.nozzles().bores().get(0) > 0.999 * widest
                        && r.nozzles().bores().size() == water.jets())
                .findFirst()
                .orElseThrow();
        double velocity = full.water().jetVelocity();
        double fastest = near.solve().running().stream()
                .mapToDouble(r -> r.water().jetVelocity())
                .max()
                .orElse(velocity);
        double jetPower = full.water().jetPower();
        List<CandidatePlant> found = new ArrayList<>();
        for (double pitch : parts.wheels().stream().map(Si::of).toList()) {
            if (pitch < 9 * widest || pitch > 90 * widest) {
                continue;
            }
            double speed = SPEED_RATIO * 2 * velocity / pitch;
            double runaway = RUNAWAY * SPEED_RATIO * 2 * fastest / pitch;
            int machinesTried = 0;
            for (Machine machine : parts.machines()) {
                double size = Si.of(machine.size());
                boolean suits = TURNED * jetPower < OVERLOAD * size
                        && TURNED * jetPower > 0.15 * size
                        && machinesTried < MACHINES
                        && runaway < Si.of(machine.speedLimit());
                machinesTried += suits ? 1 : 0;
                for (int cells : suits ? parts.cells() : List.<Integer>of()) {
                    found.addAll(wound(near, water.withWheel(pitch, machine, 1, cells), speed, jetPower));
                }
            }
        }
        return found;
    }

    /** The two or three windings about the one that reaches the bus at the speed at which the wheel turns best. */
    private List<CandidatePlant> wound(Plant near, MainParts main, double speed, double jetPower) {
        double reached = (3.35 * main.cells() + 1.9) * BRIDGE;
        double atListed =
                Si.of(main.machine().voltage()) * speed / Si.of(main.machine().speed());
        double wanted = 1.08 * reached / atListed;
        List<CandidatePlant> found = new ArrayList<>();
        for (double turns : parts.turns().stream().map(Si::of).toList()) {
            double current = TURNED * jetPower / (3.35 * main.cells());
            if (turns < 0.82 * wanted
                    || turns > 1.3 * wanted
                    || FUSED * current > Si.of(main.machine().current()) / turns) {
                continue;
            }
            MainParts whole = main.withWheel(main.pitch(), main.machine(), turns, main.cells());
            CandidatePlant candidate = solved(near, whole);
            if (candidate != null) {
                found.add(candidate);
            }
        }
        return found;
    }

    private @Nullable CandidatePlant solved(Plant near, MainParts main) {
        solved++;
        if (!(Screening.near(near).solve(whole(near, main)) instanceof Screening.Solved solved)) {
            return null;
        }
        Screening.OnSet best = solved.best();
        double limit = Si.of(main.machine().current()) / main.turns();
        if (!(best.batteryPower() > 0) || FUSED * best.directCurrent() > limit) {
            return null;
        }
        Duties duties = new Duties(
                best.flow(),
                best.batteryPower(),
                best.directCurrent(),
                LEAD * best.directCurrent(),
                2.2 * best.bridgeVoltage(),
                best.directCurrent());
        return new CandidatePlant(main, duties, best.batteryPower(), 0);
    }

    /** The water of one plant with the electric side of another. */
    private PlantNumbers whole(Plant near, MainParts main) {
        PlantNumbers electric = machines.computeIfAbsent(
                Si.of(main.machine().size()) + " " + main.turns() + " " + main.cells(),
                key -> Plant.of(design(main, estimated(main))).numbers());
        PlantNumbers water = near.numbers();
        return water.withRunner(water.runner().withPitchDiameter(main.pitch()))
                .withAlternator(electric.alternator())
                .withRectifier(electric.rectifier())
                .withBusResistance(electric.busResistance())
                .withRegulator(electric.regulator())
                .withBattery(electric.battery());
    }

    /** {@return what the lesser parts have to stand, of the plant as it was solved} */
    static Duties duties(Plant plant) {
        double power = 0;
        double current = 0;
        double lead = 0;
        double flow = 0;
        for (Running running : plant.solve().running()) {
            power = Math.max(power, running.operatingPoint().batteryPower());
            current = Math.max(current, running.operatingPoint().directCurrent());
            lead = Math.max(lead, running.operatingPoint().phaseCurrent());
            flow = Math.max(flow, running.water().flow());
        }
        double runaway = 0;
        for (LoadLost lost : plant.solve().loadLost()) {
            runaway = Math.max(runaway, lost.directVoltage());
        }
        double full = current;
        for (BatteryFull each : plant.solve().batteryFull()) {
            full = Math.max(full, each.turbineCurrent());
        }
        return new Duties(flow, power, current, lead, runaway, full);
    }
}
