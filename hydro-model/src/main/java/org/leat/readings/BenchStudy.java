package org.leat.readings;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.jspecify.annotations.Nullable;
import org.leat.design.Alternator;
import org.leat.design.Design;
import org.leat.design.OpenCircuit;
import org.leat.plant.Plant;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.quantity.Measured;
import org.leat.readings.MotorBench.Cannot;
import org.leat.readings.MotorBench.Constant;
import org.leat.readings.MotorBench.Fault;
import org.leat.readings.MotorBench.Kind;
import org.leat.readings.MotorBench.Lies;
import org.leat.readings.MotorBench.Ranked;
import org.leat.readings.MotorBench.Read;
import org.leat.readings.MotorBench.Twin;
import org.leat.readings.MotorBench.What;
import org.leat.readings.MotorBench.Why;

/** Fits the motor with nothing and with each fault to readings on the bench, and says what follows. */
final class BenchStudy {

    /** Median of inductance over resistance of a phase, s, and how far it may be off: logarithm, standard. Common practice. */
    private static final double TIME_CONSTANT = 2.2e-3;

    private static final double TIME_CONSTANT_SPREAD = 0.9;
    private static final double ANY = 3;
    private static final double WARMTH = 0.03;
    private static final double DRAG = 0.35;
    /** What a statement is good for beside its own tolerance, standard, shares. */
    private static final double STATED_VOLTS = 0.02;

    private static final double STATED_RESISTANCE = 0.05;
    private static final double STATED_INDUCTANCE = 0.15;
    /** A fault that moves the squares by less does not show. */
    private static final double SHOWS = 4;

    private static final double TOLD = 0.02;
    private static final double AS_LIKELY = 0.15;
    private static final double DETERMINED = 0.4;

    private final BenchReadings file;
    private final @Nullable Alternator alternator;
    private final @Nullable AlternatorNumbers numbers;
    private final @Nullable Integer counted;
    private final List<Cannot> cannot = new ArrayList<>();
    private final List<BenchTerm> terms = new ArrayList<>();
    private final BenchTerms meters;
    private final @Nullable BenchCoasting coasting;
    private final double inertiaShare;
    private final BenchFit.Task task;

    BenchStudy(BenchReadings file, @Nullable Design stated) {
        this.file = file;
        this.alternator = stated == null ? null : stated.alternator();
        this.numbers = stated == null ? null : Plant.of(stated).numbers().alternator();
        Integer statedPairs = alternator == null ? null : alternator.polePairs();
        this.counted = file.polePairs() == null ? statedPairs : file.polePairs();
        this.meters = new BenchTerms(file, counted);
        terms.addAll(meters.terms());
        cannot.addAll(meters.cannot());
        this.coasting = BenchCoasting.of(file, meters.speedShare(), cannot);
        Measured<?> inertia = file.inertia();
        this.inertiaShare =
                inertia == null || inertia.plusMinusSi() <= 0 ? 0.05 : inertia.plusMinusSi() / 2 / inertia.si();
        if (coasting != null && inertia == null) {
            cannot.add(new Cannot("/inertia", Why.NO_INERTIA, 0));
        }
        alone();
        List<BenchTerm> all = new ArrayList<>(terms);
        all.addAll(stated());
        this.task = task(all);
    }

    /** Of three rows or more, one that does not go with the others is left out. */
    private void alone() {
        FaultyMotor unit =
                new FaultyMotor(new double[FaultyMotor.PARAMETERS], Fault.NOTHING, 0, pairs(Fault.NOTHING, 0), 1);
        for (Kind kind : new Kind[] {Kind.VOLTS, Kind.FREQUENCY, Kind.BRIDGE_VOLTS}) {
            List<BenchTerm> rows = terms.stream().filter(t -> t.kind() == kind).toList();
            double middle = median(rows.stream()
                    .mapToDouble(t -> t.value() / t.shown().applyAsDouble(unit))
                    .toArray());
            for (BenchTerm term : rows) {
                double factor = term.value() / term.shown().applyAsDouble(unit) / middle;
                double spread = Math.max(0.2, 8 * term.standard() / term.value());
                if (rows.size() > 2 && Math.abs(Math.log(factor)) > spread) {
                    cannot.add(new Cannot(term.path(), BenchTerms.slip(factor), term.value()));
                    String row = term.path().substring(0, term.path().indexOf(']') + 1);
                    terms.removeIf(t -> t.path().startsWith(row + "/"));
                }
            }
        }
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted.length == 0 ? Double.NaN : sorted[sorted.length / 2];
    }

    private double ratio() {
        return median(terms.stream()
                .filter(t -> t.kind() == Kind.FREQUENCY)
                .mapToDouble(t -> t.value()
                        / t.shown()
                                .applyAsDouble(
                                        new FaultyMotor(new double[FaultyMotor.PARAMETERS], Fault.NOTHING, 0, 1, 1)))
                .toArray());
    }

    /** Pole pairs that there are under a fault. */
    private double pairs(Fault fault, int variant) {
        double seen = ratio();
        if (counted == null) {
            double factor = fault == Fault.SPEED_TWICE_OR_HALF ? variant == 0 ? 2 : 0.5 : 1;
            return Double.isNaN(seen) ? 1 : Math.max(1, Math.rint(seen * factor));
        }
        return fault == Fault.POLE_PAIRS_MISCOUNTED ? otherPairs().get(variant) : counted;
    }

    private List<Double> otherPairs() {
        Set<Double> others = new java.util.TreeSet<>();
        double seen = ratio();
        if (counted != null) {
            if (seen > counted / 2.0 - 1.5 && seen < 2.0 * counted + 2.5) {
                others.add(Math.max(1, Math.rint(seen)));
            }
            others.add(2.0 * counted);
            others.add(Math.max(1, Math.rint(counted / 2.0)));
            others.remove((double) counted);
        }
        return List.copyOf(others);
    }

    private List<BenchTerm> stated() {
        List<BenchTerm> stated = new ArrayList<>();
        Alternator says = alternator;
        AlternatorNumbers by = numbers;
        if (says == null || by == null) {
            return stated;
        }
        double perSpeed = Math.sqrt(3) * by.magnets().fluxLinkage() * by.polePairs() / Math.sqrt(2);
        double volts = says.openCircuit() instanceof OpenCircuit.VoltsAtSpeed read
                ? read.voltage().plusMinusSi() / 2 / read.voltage().si()
                : STATED_VOLTS;
        stated.add(new BenchTerm(
                Kind.STATED_VOLTS,
                -1,
                "/alternator/open-circuit",
                perSpeed,
                perSpeed * Math.hypot(volts, STATED_VOLTS),
                FaultyMotor::statedVolts));
        Measured<?> ohms = says.winding().resistanceBetweenLeads();
        double resistance = 2 * by.winding().resistanceCold();
        stated.add(new BenchTerm(
                Kind.STATED_RESISTANCE,
                -1,
                "/alternator/winding/resistance-between-leads",
                resistance,
                resistance * Math.hypot(ohms.plusMinusSi() / 2 / ohms.si(), STATED_RESISTANCE),
                FaultyMotor::statedResistance));
        if (says.winding().inductanceBetweenLeads() != null || says.winding().shortCircuitCurrent() != null) {
            double inductance = 2 * by.winding().inductance();
            stated.add(new BenchTerm(
                    Kind.STATED_INDUCTANCE,
                    -1,
                    "/alternator/winding/inductance-between-leads",
                    inductance,
                    inductance * STATED_INDUCTANCE,
                    FaultyMotor::statedInductance));
        }
        BenchCoasting slows = coasting;
        Measured<?> inertia = file.inertia();
        if (slows != null && inertia != null && (says.noLoadLoss() != null || says.spinDown() != null)) {
            double middle = (slows.fastest() + slows.slowest()) / 2;
            double torque = by.noLoad().constant() + by.noLoad().perSpeed() * middle;
            double found = inertia.si() * slows.at(middle) / torque;
            if (torque > 0 && found > 0) {
                stated.add(new BenchTerm(
                        Kind.DRAG,
                        -1,
                        "/alternator/no-load-loss",
                        found,
                        found * Math.hypot(inertiaShare, 0.05),
                        FaultyMotor::drag));
            }
        }
        return stated;
    }

    private BenchFit.Task task(List<BenchTerm> of) {
        FaultyMotor unit =
                new FaultyMotor(new double[FaultyMotor.PARAMETERS], Fault.NOTHING, 0, pairs(Fault.NOTHING, 0), 1);
        double volts = median(of.stream()
                .filter(t -> t.kind() == Kind.VOLTS && t.value() > 0)
                .mapToDouble(t -> t.value() / t.shown().applyAsDouble(unit))
                .toArray());
        double bridge = median(of.stream()
                .filter(t -> t.kind() == Kind.BRIDGE_VOLTS)
                .mapToDouble(t -> (t.value() + 1) / (t.shown().applyAsDouble(unit) + 1))
                .toArray());
        double stated =
                numbers == null ? 0.3 : Math.sqrt(1.5) * numbers.magnets().fluxLinkage() * numbers.polePairs();
        double perSpeed = volts > 0 ? volts : bridge > 0 ? bridge : stated;
        double ohms = median(of.stream()
                .filter(t -> t.kind() == Kind.RESISTANCE && t.value() > 0.5 * Math.abs(t.standard()) && mean(t, of))
                .mapToDouble(t -> t.value() / 2)
                .toArray());
        double resistance =
                ohms > 0 ? ohms : numbers == null ? 0.2 : numbers.winding().resistanceCold();
        List<BenchFit.Known> known = new ArrayList<>();
        known.add(new BenchFit.Known(Math.log(perSpeed), ANY));
        known.add(new BenchFit.Known(Math.log(resistance), ANY));
        known.add(new BenchFit.Known(Math.log(TIME_CONSTANT * resistance), TIME_CONSTANT_SPREAD));
        known.add(new BenchFit.Known(0, meters.voltmeter()));
        known.add(new BenchFit.Known(0, meters.counter()));
        known.add(new BenchFit.Known(0, meters.clamp()));
        known.add(new BenchFit.Known(0, meters.ohmmeter()));
        known.add(new BenchFit.Known(WARMTH, WARMTH));
        known.add(new BenchFit.Known(0, DRAG));
        known.add(new BenchFit.Known(0, 1));
        double highest = of.stream()
                .filter(t -> t.kind() == Kind.VOLTS)
                .mapToDouble(t -> t.shown().applyAsDouble(unit))
                .max()
                .orElse(1);
        return new BenchFit.Task(
                List.copyOf(of), List.copyOf(known), highest * pairs(Fault.NOTHING, 0) / (2 * Math.PI));
    }

    /** Whether a term is the mean of its pairs: the only one, or that before their differences. */
    private static boolean mean(BenchTerm term, List<BenchTerm> of) {
        return term.pair() < 0
                || of.stream().noneMatch(t -> !t.equals(term) && t.kind() == Kind.RESISTANCE && t.pair() < 0);
    }

    private BenchFit.Task sized(BenchFit.Task of, Fault fault) {
        List<BenchFit.Known> known = new ArrayList<>(of.known());
        known.set(FaultyMotor.SIZE, new BenchFit.Known(fault.typical() > 0 ? Math.log(fault.typical()) : 0, 1));
        return new BenchFit.Task(of.terms(), known, of.highest());
    }

    private int variants(Fault fault) {
        boolean stated = alternator != null;
        return switch (fault) {
            case PHASE_WEAK, SHORTED_TURNS, PHASE_REVERSED, PHASE_OPEN, JOINT_BAD -> 3;
            case SPEED_TWICE_OR_HALF, GEAR_OR_SLIP -> 2;
            case POLE_PAIRS_MISCOUNTED -> otherPairs().size();
            case STAR_FOR_DELTA -> stated ? 2 : 0;
            case MAGNETS_WEAK, ANOTHER_MOTOR, BEARING_DRAGS -> stated ? 1 : 0;
            default -> 1;
        };
    }

    private record Tried(Fault fault, BenchFit best, double evidence, boolean shows) {}

    private @Nullable Tried tried(BenchFit.Task of, Fault fault, @Nullable BenchFit nothing) {
        BenchFit.Task sized = sized(of, fault);
        BenchFit best = null;
        double sum = 0;
        int variants = variants(fault);
        List<BenchFit> fits = new ArrayList<>();
        for (int v = 0; v < variants; v++) {
            BenchFit fit = sized.fit(fault, v, pairs(fault, v), fault.typical());
            if (fit != null) {
                fits.add(fit);
                best = best == null || fit.evidence() > best.evidence() ? fit : best;
            }
        }
        if (best == null) {
            return null;
        }
        for (BenchFit fit : fits) {
            sum += Math.exp(fit.evidence() - best.evidence());
        }
        boolean shows = nothing == null || best.squares() < nothing.squares() - SHOWS || shows(of, fault, nothing);
        return new Tried(fault, best, best.evidence() + Math.log(sum / variants), shows);
    }

    /** Whether a fault of its usual size would move these readings. */
    private boolean shows(BenchFit.Task of, Fault fault, BenchFit nothing) {
        double[] at = of.known().stream().mapToDouble(BenchFit.Known::mean).toArray();
        System.arraycopy(nothing.at(), 0, at, 0, FaultyMotor.VOLTMETER);
        at[FaultyMotor.SIZE] = fault.typical() > 0 ? Math.log(fault.typical()) : 0;
        int ways = fault == Fault.POLE_PAIRS_MISCOUNTED || fault == Fault.STAR_FOR_DELTA ? variants(fault) : 1;
        for (int v = 0; v < ways; v++) {
            FaultyMotor faulty = of.motor(at, fault, v, pairs(fault, v));
            BenchFit taken = of.fit(Fault.NOTHING, 0, pairs(Fault.NOTHING, 0), 0, faulty);
            if (taken != null && taken.squares() > SHOWS) {
                return true;
            }
        }
        return false;
    }

    MotorBench result() {
        boolean drag = task.terms().stream().anyMatch(t -> t.kind() == Kind.DRAG);
        if (terms.isEmpty() && !drag) {
            return new MotorBench(
                    slowing(),
                    List.of(),
                    List.of(new Ranked(Fault.NOTHING, -1, 1, 0, 0, 0)),
                    false,
                    List.of(),
                    List.of(),
                    List.of(),
                    cannot);
        }
        BenchFit nothing = task.fit(Fault.NOTHING, 0, pairs(Fault.NOTHING, 0), 0);
        List<Tried> tried = new ArrayList<>();
        Set<Fault> unseen = EnumSet.noneOf(Fault.class);
        for (Fault fault : Fault.values()) {
            Tried one = variants(fault) == 0 ? null : tried(task, fault, fault == Fault.NOTHING ? null : nothing);
            if (one == null || !one.shows()) {
                unseen.add(fault);
            } else {
                tried.add(one);
            }
        }
        tried.sort(Comparator.comparingDouble(
                (Tried t) -> -t.evidence() - Math.log(t.fault().weight())));
        double top = score(tried.get(0));
        double all = tried.stream().mapToDouble(t -> Math.exp(score(t) - top)).sum();
        List<Ranked> ranked = new ArrayList<>();
        for (Tried one : tried) {
            double probability = Math.exp(score(one) - top) / all;
            if (ranked.isEmpty() || probability >= TOLD) {
                ranked.add(ranked(one, probability));
            }
        }
        Tried first = tried.get(0);
        BenchFurtherReading next = new BenchFurtherReading(task, first.best(), fastest());
        List<Twin> twins = new ArrayList<>();
        for (Tried one : tried.subList(1, tried.size())) {
            if (first.fault() != Fault.NOTHING && Math.exp(score(one) - top) > AS_LIKELY) {
                twins.add(new Twin(one.fault(), next.between(one.best())));
            }
        }
        List<BenchFit> others = new ArrayList<>();
        tried.subList(1, tried.size()).stream()
                .filter(t -> Math.exp(score(t) - top) / all >= TOLD)
                .forEach(t -> others.add(t.best()));
        // with something wrong, what does not show would come on top of it: no other answer
        for (Fault fault : unseen) {
            if (variants(fault) > 0 && first.fault() == Fault.NOTHING) {
                BenchFit fit = sized(task, fault).fit(fault, 0, pairs(fault, 0), fault.typical());
                if (fit != null) {
                    others.add(fit);
                }
            }
        }
        int free = (int) task.terms().stream()
                .filter(t -> t.pair() < 0 || t.kind() == Kind.AMPS)
                .count();
        boolean unexplained = first.best().squares() > free + 6 + 5 * Math.sqrt(2.0 * Math.max(1, free));
        return new MotorBench(
                constants(first),
                nothing == null ? List.of() : read(nothing),
                ranked,
                unexplained,
                List.copyOf(unseen),
                twins,
                next.best(others),
                cannot);
    }

    private static double score(Tried one) {
        return one.evidence() + Math.log(one.fault().weight());
    }

    private double fastest() {
        double fastest = 0;
        for (BenchReadings.Row row : file.readings()) {
            Measured<?> speed = row.speed();
            fastest = speed == null ? fastest : Math.max(fastest, speed.si());
        }
        return fastest > 0 ? fastest : 50;
    }

    private static int lead(Fault fault, int variant) {
        return switch (fault) {
            case PHASE_WEAK, SHORTED_TURNS, PHASE_REVERSED, PHASE_OPEN, JOINT_BAD -> variant;
            default -> -1;
        };
    }

    private Ranked ranked(Tried one, double probability) {
        BenchFit fit = one.best();
        Fault fault = one.fault();
        int lead = lead(fault, fit.variant());
        if (fault == Fault.POLE_PAIRS_MISCOUNTED) {
            return new Ranked(fault, lead, probability, fit.pairs(), fit.pairs(), fit.pairs());
        }
        if (fault == Fault.STAR_FOR_DELTA || fault == Fault.SPEED_TWICE_OR_HALF) {
            double way = fit.variant() == 0 ? 1 : -1;
            return new Ranked(fault, lead, probability, way, way, way);
        }
        if (fault.typical() <= 0) {
            return new Ranked(fault, lead, probability, 0, 0, 0);
        }
        double at = fit.at()[FaultyMotor.SIZE];
        double wide = 2 * fit.standard(FaultyMotor.SIZE);
        double sign = fault == Fault.GEAR_OR_SLIP && fit.variant() == 1 ? -1 : 1;
        double low = shown(fault, Math.exp(sign * (at - sign * wide)));
        double high = shown(fault, Math.exp(sign * (at + sign * wide)));
        return new Ranked(
                fault, lead, probability, shown(fault, Math.exp(sign * at)), Math.min(low, high), Math.max(low, high));
    }

    private static double shown(Fault fault, double size) {
        return switch (fault) {
            case PHASE_WEAK, SHORTED_TURNS, MAGNETS_WEAK, METER_LOSES_WITH_FREQUENCY -> FaultyMotor.share(size);
            default -> size;
        };
    }

    private List<Read> read(BenchFit nothing) {
        FaultyMotor sound = task.motor(nothing.at(), Fault.NOTHING, 0, nothing.pairs());
        return task.terms().stream()
                .map(t -> new Read(
                        t.kind(), t.pair(), t.path(), t.value(), t.shown().applyAsDouble(sound), t.standard()))
                .toList();
    }

    private List<Constant> constants(Tried first) {
        boolean byStated = first.fault().lies() == Lies.IN_WHAT_IS_STATED
                || first.fault() == Fault.MAGNETS_WEAK
                || first.fault() == Fault.BEARING_DRAGS;
        boolean miscounted = first.fault() == Fault.POLE_PAIRS_MISCOUNTED;
        Fault fault = byStated && !miscounted ? Fault.NOTHING : first.fault();
        int variant = byStated && !miscounted ? 0 : first.best().variant();
        BenchFit.Task own = sized(new BenchFit.Task(List.copyOf(terms), task.known(), task.highest()), fault);
        BenchFit fit = own.fit(fault, variant, pairs(fault, variant), fault.typical());
        List<Constant> constants = new ArrayList<>();
        if (fit == null) {
            return constants;
        }
        FaultyMotor motor = own.motor(fit.at(), fault, variant, fit.pairs());
        boolean volts = has(Kind.VOLTS) || has(Kind.BRIDGE_VOLTS);
        if (volts) {
            double value = motor.perSpeed();
            constants.add(new Constant(What.VOLTS_PER_SPEED, value, value * fit.standard(FaultyMotor.VOLTS)));
        }
        if (has(Kind.FREQUENCY) || file.polePairs() != null) {
            constants.add(new Constant(What.POLE_PAIRS, fit.pairs(), 0));
        }
        if (has(Kind.RESISTANCE)) {
            double value = (motor.fourWires(0) + motor.fourWires(1) + motor.fourWires(2)) / 3;
            double share = Math.hypot(fit.standard(FaultyMotor.RESISTANCE), value > 1e3 ? 1 : 0);
            constants.add(new Constant(What.RESISTANCE, value, value * share));
        }
        if (volts && has(Kind.AMPS) && fit.standard(FaultyMotor.INDUCTANCE) < DETERMINED) {
            double value = 2 * motor.phaseInductance();
            constants.add(new Constant(What.INDUCTANCE, value, value * fit.standard(FaultyMotor.INDUCTANCE)));
        }
        constants.addAll(slowing());
        spread(What.SPREAD_OF_VOLTAGES, BenchReadings.Row::volts, constants);
        spread(What.SPREAD_OF_RESISTANCES, BenchReadings.Row::ohms, constants);
        return constants;
    }

    private boolean has(Kind kind) {
        return terms.stream().anyMatch(t -> t.kind() == kind);
    }

    private void spread(
            What what, java.util.function.Function<BenchReadings.Row, double[]> of, List<Constant> constants) {
        double[] sums = new double[3];
        int rows = 0;
        for (int i = 0; i < file.readings().size(); i++) {
            double[] three = of.apply(file.readings().get(i));
            String here = "/readings[" + i + "]/";
            double mean = (three[0] + three[1] + three[2]) / 3;
            if (mean > 0
                    && cannot.stream().noneMatch(c -> c.path().startsWith(here))
                    && cannot.stream()
                            .noneMatch(c -> c.path().contains("-ab")
                                    || c.path().contains("-bc")
                                    || c.path().contains("-ca"))) {
                for (int p = 0; p < 3; p++) {
                    sums[p] += three[p] / mean;
                }
                rows++;
            }
        }
        if (rows > 0) {
            double most = Arrays.stream(sums).max().orElse(1);
            double least = Arrays.stream(sums).min().orElse(1);
            constants.add(new Constant(what, (most - least) / most, 0.005 / Math.sqrt(rows)));
        }
    }

    private List<Constant> slowing() {
        BenchCoasting slows = coasting;
        Measured<?> inertia = file.inertia();
        if (slows == null || inertia == null) {
            return List.of();
        }
        double j = inertia.si();
        double constant = j * slows.constant();
        double growing = j * slows.growing();
        return List.of(
                new Constant(
                        What.CONSTANT_TORQUE,
                        constant,
                        Math.hypot(j * slows.constantStandard(), constant * inertiaShare)),
                new Constant(
                        What.GROWING_TORQUE, growing, Math.hypot(j * slows.growingStandard(), growing * inertiaShare)));
    }
}
