package org.leat.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import javax.measure.Quantity;
import javax.measure.quantity.Dimensionless;
import javax.measure.quantity.ElectricPotential;
import javax.measure.quantity.Length;
import javax.measure.quantity.Temperature;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.GrossHead;
import org.leat.design.OpenCircuit;
import org.leat.design.Section;
import org.leat.design.VoltageAs;
import org.leat.design.VoltageBetween;
import org.leat.file.DesignEdit;
import org.leat.file.DesignReader;
import org.leat.file.Reading;
import org.leat.plant.Plant;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.plant.numbers.PlantNumbers;
import org.leat.quantity.Celsius;
import org.leat.quantity.Measured;
import org.leat.quantity.Si;
import org.leat.readings.Channel;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.Expectations;
import org.leat.readings.Observation;
import org.leat.readings.PlantReadings;
import org.leat.readings.SetReadings;
import org.leat.readings.TakenReadings;

/**
 * What readings of a running plant tell of the fields of its design: each from readings that determine it by themselves, as far as
 * they do it better than what is stated. What agrees with the design within two standard uncertainties is left as it is.
 */
final class WaterFound {

    private static final MathContext THREE = new MathContext(3);
    /** Agreement, in standard uncertainties. */
    private static final double AGREES = 2;
    /** Of the loss in the pipe that must be known for a roughness, a share. */
    private static final double LOSS_KNOWN = 0.2;
    /** Of the power that iron, friction and copper leave open, a share; common practice. */
    private static final double MACHINE = 0.02;
    /** Bore and pitch diameter as measured by hand, a share; common practice. */
    private static final double BY_HAND = 0.005;

    /** What a measured constant is over what is stated, where no slip is behind it. */
    private static final double STRANGE = 1.3;

    private static final double WHOLE = 0.1;
    private static final double SMOOTHEST = 1e-6;
    private static final double ROUGHEST = 3e-3;

    private final Reading design;
    private final Design built;
    private final Expectations expected;
    private final PlantNumbers numbers;
    private final PlantReadings file;
    private final TakenReadings taken;
    private final List<Learned.Found> found = new ArrayList<>();
    private final List<Learned.Stays> stays = new ArrayList<>();
    private boolean flowDoubtful;

    WaterFound(Reading design, Design built, Expectations expected, PlantReadings file, TakenReadings taken) {
        this.design = design;
        this.built = built;
        this.expected = expected;
        this.numbers = expected.plant().numbers();
        this.file = file;
        this.taken = taken;
        head();
        nozzles();
        roughness();
        volts();
        runaway();
        efficiency();
        pairs();
        winding();
        battery();
    }

    List<Learned.Found> found() {
        return found;
    }

    List<Learned.Stays> stays() {
        return stays;
    }

    private void put(String path, Object value, String from) {
        found.add(new Learned.Found(path, value, from));
    }

    private void stays(String path, String why) {
        stays.add(new Learned.Stays(path, design.positions().of(path), why));
    }

    private void head() {
        Observation standing = reading(LoadState.SHUT, ReadingKind.STANDING_PRESSURE, null);
        if (standing == null) {
            return;
        }
        if (!(built.site().grossHead() instanceof GrossHead.Stated stated)) {
            stays("/site/gross-head", "it is gauged by readings of its own: put the pressure among them");
            return;
        }
        double weight = numbers.water().specificWeight();
        double half = 2 * standing.standard() / weight;
        if (Learned.knownBetter(stated.head(), half)) {
            stays("/site/gross-head", "it is stated with a smaller tolerance than the gauge tells");
            return;
        }
        put(
                "/site/gross-head",
                Learned.measured(standing.value() / weight, half, "m", Length.class),
                "standing pressure");
    }

    /** The pipe's roughness from what is lost between standing and running water. */
    private void roughness() {
        Observation standing = reading(LoadState.SHUT, ReadingKind.STANDING_PRESSURE, null);
        Observation running = loaded(ReadingKind.RUNNING_PRESSURE, ReadingKind.FLOW);
        if (standing == null || running == null || flowDoubtful) {
            return;
        }
        String set = running.channel().nozzles();
        Observation flow = reading(running.channel().state(), ReadingKind.FLOW, set);
        Expectations here = corrected(set);
        if (here == null) {
            return;
        }
        double through = here.value(new Channel(set, LoadState.BUS, ReadingKind.FLOW));
        if (flow == null || !(flow.value() > 0)) {
            return;
        }
        // the same gauge read twice: its scale moves the loss, not the difference of two noises
        double scale = Math.pow(through / flow.value(), 2);
        double lost = (standing.value() - running.value()) * scale;
        double gauge = Math.min(standing.standard(), running.standard());
        double screen = 0.5 * numbers.water().specificWeight() * screenLoss(set);
        double uncertain =
                Math.hypot(Math.hypot(gauge * scale, screen), 2 * flow.standard() / flow.value() * Math.max(lost, 0));
        String longest = "/penstock/sections[" + longest().name() + "]/pipe/roughness";
        double now = lost(here, set);
        if (!(lost > 0)) {
            stays(longest, "running water shows no less pressure than standing: nothing is lost, which cannot be");
            return;
        }
        if (uncertain > LOSS_KNOWN * lost) {
            stays(
                    longest,
                    "the loss of " + UsualUnits.show(lost, org.leat.quantity.QuantityKind.PRESSURE)
                            + " is known to no better than "
                            + FaultWords.share(uncertain / lost));
            return;
        }
        if (Math.abs(lost - now) <= AGREES * uncertain) {
            return;
        }
        List<String> paths = built.penstock().sections().stream()
                .filter(s -> s.pipe().getClass() == longest().pipe().getClass())
                .map(s -> "/penstock/sections[" + s.name() + "]/pipe/roughness")
                .toList();
        DoubleUnaryOperator shown = k -> {
            Expectations there = with(paths, Si.quantity(1e3 * k, "mm", Length.class), set);
            double flows = there == null ? Double.NaN : there.value(new Channel(set, LoadState.BUS, ReadingKind.FLOW));
            return there == null ? Double.NaN : lost(there, set) * Math.pow(through / flows, 2);
        };
        OptionalDouble k = root(shown, lost, SMOOTHEST, ROUGHEST);
        if (k.isEmpty()) {
            stays(
                    longest,
                    lost < now
                            ? "less is lost than a smooth pipe of this bore and length loses: look at bore, length and gauge"
                            : "more is lost than any pipe's wall makes: look for screen, pinch, air or a valve half shut");
            return;
        }
        Quantity<Length> wall = Si.quantity(rounded(1e3 * k.getAsDouble()), "mm", Length.class);
        paths.forEach(path -> put(path, wall, "standing and running pressure and flow"));
    }

    private Section longest() {
        Section longest = built.penstock().sections().get(0);
        for (Section section : built.penstock().sections()) {
            longest = Si.of(section.length()) > Si.of(longest.length()) ? section : longest;
        }
        return longest;
    }

    private double screenLoss(String set) {
        return expected.plant().running(group(set)).water().screenLoss();
    }

    private NozzleGroup group(String name) {
        return expected.sets().get(Math.max(0, expected.indexOf(name)));
    }

    private static double lost(Expectations of, String set) {
        return of.value(Channel.standing()) - of.value(new Channel(set, LoadState.BUS, ReadingKind.RUNNING_PRESSURE));
    }

    /** What is expected of the design with what was found so far. */
    private @Nullable Expectations corrected(String set) {
        return with(List.of(), "", set);
    }

    /**
     * What is expected of the design with what was found so far and another value in some fields; null where it cannot be read or
     * solved.
     */
    private @Nullable Expectations with(List<String> paths, Object value, String set) {
        List<DesignEdit> edits = new ArrayList<>();
        for (Learned.Found one : found) {
            DesignEdit edit = paths.contains(one.path()) ? null : Learned.edit(design, one);
            if (edit != null) {
                edits.add(edit);
            }
        }
        for (String path : paths) {
            DesignEdit edit = Learned.edit(design, new Learned.Found(path, value, ""));
            if (edit == null) {
                return null;
            }
            edits.add(edit);
        }
        Design other = DesignReader.read(DesignEdit.apply(design.text(), edits), design.source())
                .design();
        Plant plant = other == null ? null : Plant.of(other);
        if (plant == null
                || !plant.unsolvable().isEmpty()
                || plant.solve().running().isEmpty()) {
            return null;
        }
        List<NozzleGroup> only = plant.numbers().nozzles().sets().stream()
                .filter(s -> s.name().equals(set))
                .toList();
        return only.isEmpty() ? null : Expectations.of(plant, only);
    }

    /** Where a rising or falling number passes a value between two ends, by false position and halving. */
    private static OptionalDouble root(DoubleUnaryOperator of, double wanted, double low, double high) {
        double a = low;
        double b = high;
        double atA = of.applyAsDouble(a) - wanted;
        double atB = of.applyAsDouble(b) - wanted;
        if (!(atA * atB < 0)) {
            return OptionalDouble.empty();
        }
        for (int n = 0; n < 14; n++) {
            double c = n % 2 == 0 ? a + (b - a) * atA / (atA - atB) : (a + b) / 2;
            double atC = of.applyAsDouble(c) - wanted;
            if (!Double.isFinite(atC)) {
                return OptionalDouble.empty();
            }
            if (atA * atC <= 0) {
                b = c;
                atB = atC;
            } else {
                a = c;
                atA = atC;
            }
        }
        return OptionalDouble.of((a + b) / 2);
    }

    /** Jet velocity or area from flow and pressure of one set: what the model makes of both, corrected by what was read. */
    private void nozzles() {
        Observation running = loaded(ReadingKind.RUNNING_PRESSURE, ReadingKind.FLOW);
        if (running == null || !(running.value() > 0)) {
            return;
        }
        String set = running.channel().nozzles();
        LoadState state = running.channel().state();
        Observation flow = reading(state, ReadingKind.FLOW, set);
        if (flow == null) {
            return;
        }
        double ratio = flow.value()
                / expected.value(flow.channel())
                / Math.sqrt(running.value() / expected.value(running.channel()));
        double share = Math.hypot(
                Math.hypot(flow.standard() / flow.value(), running.standard() / running.value() / 2), 2 * BY_HAND);
        boolean area = numbers.nozzles().contractionCoefficient() < 0.999;
        String path = "/nozzles/" + (area ? "contraction-coefficient" : "velocity-coefficient");
        double now = area
                ? numbers.nozzles().contractionCoefficient()
                : numbers.nozzles().velocityCoefficient();
        if (Math.abs(ratio - 1) <= AGREES * share) {
            return;
        }
        if (now * ratio > 1) {
            flowDoubtful = true;
            stays(
                    path,
                    "flow and pressure would make it " + rounded(now * ratio)
                            + ", more than one: look at bore, bucket and gauge");
            return;
        }
        put(path, rounded(now * ratio), "flow and running pressure");
    }

    private static double rounded(double value) {
        return new BigDecimal(value).round(THREE).doubleValue();
    }

    private void runaway() {
        Observation speed = reading(LoadState.OPEN, ReadingKind.SPEED, null);
        if (speed == null || built.runner() == null) {
            return;
        }
        String set = speed.channel().nozzles();
        Observation running = reading(LoadState.OPEN, ReadingKind.RUNNING_PRESSURE, set);
        if (running == null || !(running.value() > 0)) {
            return;
        }
        double read = speed.value() / Math.sqrt(running.value());
        double share = Math.hypot(
                Math.hypot(speed.standard() / speed.value(), running.standard() / running.value() / 2), 2 * BY_HAND);
        DoubleUnaryOperator shown = x -> overJet(with(List.of("/runner/runaway-factor"), x, set), speed, running);
        double now = overJet(corrected(set), speed, running);
        if (Math.abs(read / now - 1) <= AGREES * share) {
            return;
        }
        String path = "/runner/runaway-factor";
        OptionalDouble factor = root(shown, read, 1.6, 2);
        if (factor.isEmpty()) {
            stays(path, "no wheel of this pitch diameter runs away so: look at diameter, gauge and counter");
        } else {
            put(path, rounded(factor.getAsDouble()), "speed with open leads");
        }
    }

    /** Speed over the root of the pressure: what the jet's velocity leaves. */
    private static double overJet(@Nullable Expectations there, Observation speed, Observation running) {
        return there == null ? Double.NaN : there.value(speed.channel()) / Math.sqrt(there.value(running.channel()));
    }

    /** Amps over flow: what the wheel makes of it. */
    private static double overFlow(@Nullable Expectations there, Channel amps, Observation flow) {
        return there == null ? Double.NaN : there.value(amps) / there.value(flow.channel());
    }

    private void efficiency() {
        if (built.runner() == null || flowDoubtful) {
            return;
        }
        Observation amps = reading(LoadState.BUS, ReadingKind.BATTERY_AMPS, null);
        if (amps == null) {
            amps = reading(LoadState.BUS, ReadingKind.BRIDGE_AMPS, null);
        }
        Channel at = amps == null ? null : amps.channel();
        Observation flow = at == null ? null : reading(LoadState.BUS, ReadingKind.FLOW, at.nozzles());
        if (at == null || amps == null || flow == null || !(flow.value() > 0) || !(amps.value() > 0)) {
            return;
        }
        double share = Math.hypot(Math.hypot(amps.standard() / amps.value(), flow.standard() / flow.value()), MACHINE);
        double read = amps.value() / flow.value();
        double now = overFlow(corrected(at.nozzles()), at, flow);
        if (Math.abs(read / now - 1) <= AGREES * share) {
            return;
        }
        String path = "/runner/measured-efficiency";
        OptionalDouble efficiency = root(
                x -> overFlow(
                        with(List.of(path), Si.quantity(100 * x, "%", Dimensionless.class), at.nozzles()), at, flow),
                read,
                0.2,
                0.92);
        if (efficiency.isEmpty()) {
            stays(path, "no wheel makes these amps of this flow: look at clamp, bucket and what else takes or gives");
        } else {
            put(
                    path,
                    Si.quantity(rounded(100 * efficiency.getAsDouble()), "%", Dimensionless.class),
                    "amps and flow on the bus");
        }
    }

    private void volts() {
        Observation volts = reading(LoadState.OPEN, ReadingKind.LEAD_VOLTS, null);
        Observation speed = volts == null
                ? null
                : reading(LoadState.OPEN, ReadingKind.SPEED, volts.channel().nozzles());
        if (volts == null || speed == null || speed.value() <= 0 || volts.value() <= 0) {
            return;
        }
        String path = "/alternator/open-circuit/voltage";
        if (!(built.alternator().openCircuit() instanceof OpenCircuit.VoltsAtSpeed stated)) {
            stays("/alternator/open-circuit", "it is the maker's speed per volt: write volts at a speed in its place");
            return;
        }
        if (stated.between() == VoltageBetween.BRIDGE_OUTPUT || stated.as() == VoltageAs.DIRECT) {
            stays(path, "it is stated behind a bridge: write it between the leads first");
            return;
        }
        double form = (stated.as() == VoltageAs.PEAK ? Math.sqrt(2) : 1)
                / (stated.between() == VoltageBetween.LEAD_AND_STAR_POINT ? Math.sqrt(3) : 1);
        double ratio =
                Si.of(stated.speed()) / (speed.value() * numbers.alternator().gearRatio());
        double value = volts.value() * ratio * form;
        double share = Math.hypot(volts.standard() / volts.value(), speed.standard() / speed.value());
        double times = value / Si.of(stated.voltage().value());
        if (Math.abs(Math.log(times)) > Math.log(STRANGE)) {
            stays(path, "it would be " + rounded(times) + " times what is stated: read volts and speed again");
            return;
        }
        if (Learned.knownBetter(
                stated.voltage(), 2 * share * Si.of(stated.voltage().value()))) {
            stays(path, "it is stated with a smaller tolerance than these meters tell");
            return;
        }
        Measured<ElectricPotential> measured = Learned.measured(value, 2 * share * value, "V", ElectricPotential.class);
        put(path, measured, "open leads at the water");
    }

    private void pairs() {
        for (Observation hertz : taken.readings()) {
            Channel at = hertz.channel();
            Observation speed =
                    at.what() == ReadingKind.FREQUENCY ? reading(at.state(), ReadingKind.SPEED, at.nozzles()) : null;
            if (speed != null && speed.value() > 0) {
                double pairs = 2
                        * Math.PI
                        * hertz.value()
                        / (speed.value() * numbers.alternator().gearRatio());
                int whole = (int) Math.rint(pairs);
                Integer stated = built.alternator().polePairs();
                if (Math.abs(pairs - whole) > WHOLE || whole < 1) {
                    stays(
                            "/alternator/pole-pairs",
                            "frequency and speed would make it " + rounded(pairs)
                                    + ", no whole number: look at counter and gear");
                } else if (stated != null && (stated == 2 * whole || whole == 2 * stated)) {
                    stays(
                            "/alternator/pole-pairs",
                            "frequency and speed would make it " + whole
                                    + ": does the counter show twice the speed, or half?");
                } else if (stated == null || stated != whole) {
                    put("/alternator/pole-pairs", whole, "frequency and speed");
                }
                return;
            }
        }
    }

    private void winding() {
        Observation spread = reading(LoadState.OPEN, ReadingKind.LEAD_SPREAD, null);
        if (spread != null) {
            double percent = new BigDecimal(100 * spread.value())
                    .setScale(1, RoundingMode.HALF_UP)
                    .doubleValue();
            put(
                    "/alternator/winding/spread-of-voltages",
                    Si.quantity(percent, "%", Dimensionless.class),
                    "open leads at the water");
        }
        double hottest = Double.NaN;
        for (SetReadings set : file.sets()) {
            Quantity<Temperature> read = set.windingTemperature();
            if (read != null && set.state() == LoadState.BUS) {
                hottest = Double.isNaN(hottest) ? Si.of(read) : Math.max(hottest, Si.of(read));
            }
        }
        if (!Double.isNaN(hottest)) {
            String path = "/alternator/winding/temperature";
            if (built.alternator().thermalResistance() != null
                    && built.alternator().winding().temperature() == null) {
                stays(path, "the design works it out from the thermal resistance, for the hottest day");
            } else {
                put(path, Si.quantity(Math.rint(Celsius.of(hottest)), "°C", Temperature.class), "hours on the bus");
            }
        }
    }

    private void battery() {
        BatteryFound.Answer answer = new BatteryFound(taken)
                .resistance(
                        numbers.battery().internalResistance(), built.battery().internalResistance() != null);
        answer.found().ifPresent(found::add);
        answer.stays().ifPresent(why -> stays(BatteryFound.path(), why));
    }

    /** The first reading of a kind on the bus whose set has another of a second kind. */
    private @Nullable Observation loaded(ReadingKind what, ReadingKind with) {
        for (Observation seen : taken.readings()) {
            Channel at = seen.channel();
            if (at.state() == LoadState.BUS && at.what() == what && reading(at.state(), with, at.nozzles()) != null) {
                return seen;
            }
        }
        return null;
    }

    private @Nullable Observation reading(LoadState state, ReadingKind what, @Nullable String nozzles) {
        for (Observation seen : taken.readings()) {
            if (seen.channel().state() == state
                    && seen.channel().what() == what
                    && (nozzles == null || nozzles.equals(seen.channel().nozzles()))) {
                return seen;
            }
        }
        return null;
    }
}
