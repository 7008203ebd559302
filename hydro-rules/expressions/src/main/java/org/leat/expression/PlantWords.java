package org.leat.expression;

import static org.leat.quantity.QuantityKind.CURRENT;
import static org.leat.quantity.QuantityKind.FREQUENCY;
import static org.leat.quantity.QuantityKind.LENGTH;
import static org.leat.quantity.QuantityKind.POWER;
import static org.leat.quantity.QuantityKind.PRESSURE;
import static org.leat.quantity.QuantityKind.RATIO;
import static org.leat.quantity.QuantityKind.RESISTANCE;
import static org.leat.quantity.QuantityKind.ROTATIONAL_SPEED;
import static org.leat.quantity.QuantityKind.SPEED;
import static org.leat.quantity.QuantityKind.TEMPERATURE;
import static org.leat.quantity.QuantityKind.TIME;
import static org.leat.quantity.QuantityKind.TORQUE;
import static org.leat.quantity.QuantityKind.VOLTAGE;
import static org.leat.quantity.QuantityKind.VOLUME_FLOW;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.leat.file.Names;
import org.leat.plant.Plant;
import org.leat.plant.cases.BatteryFull;
import org.leat.plant.cases.Closing;
import org.leat.plant.cases.LoadLost;
import org.leat.plant.cases.Running;
import org.leat.plant.cases.Situation;
import org.leat.plant.numbers.AlternatorNumbers;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.BatteryNumbers;
import org.leat.plant.numbers.PenstockNumbers;
import org.leat.plant.numbers.RunnerNumbers;
import org.leat.plant.numbers.SectionNumbers;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.solved.EnergyAccount;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.QuantityKind;

/** What expressions see of the plant as it is computed: each name once, with kind and meaning. */
final class PlantWords {

    static final Struct SITE = new Struct.Filling<>("site", "stream, head and weather", SiteNumbers.class)
            .amount("grossHead", LENGTH, "intake water level to nozzle axis", PlantWords::fall)
            .of("altitude", LENGTH, "above the sea", SiteNumbers::altitude)
            .of("atmosphericPressure", PRESSURE, "at that altitude", SiteNumbers::atmosphericPressure)
            .of("lowestWaterTemperature", TEMPERATURE, "of the stream", SiteNumbers::lowestWaterTemperature)
            .of("highestWaterTemperature", TEMPERATURE, "of the stream", SiteNumbers::highestWaterTemperature)
            .of("lowestAirTemperature", TEMPERATURE, "of the site", SiteNumbers::lowestAirTemperature)
            .of("highestAirTemperature", TEMPERATURE, "of the site", SiteNumbers::highestAirTemperature)
            .of("keptInStream", VOLUME_FLOW, "residual flow; zero where none is stated", SiteNumbers::keptInStream)
            .struct();

    /** Readings may give none, or next to none: that is no head of nought. */
    private static Amount fall(SiteNumbers site) {
        return site.falls()
                ? Amount.of(site.grossHead())
                : Amount.missing("/site/gross-head", "unknown/head-not-above-zero");
    }

    static final Struct SECTION = new Struct.Filling<>("section", "one section of the pipe", InPlant.class)
            .text("name", "as in the design", s -> s.numbers().name())
            .of("length", LENGTH, "along the pipe", s -> s.numbers().length())
            .of("outsideDiameter", LENGTH, "of the pipe", s -> s.numbers().outsideDiameter())
            .of("leastWall", LENGTH, "wall for strength", s -> s.numbers().leastWall())
            .of("bore", LENGTH, "inside diameter for losses", s -> s.numbers().bore())
            .of(
                    "fromElevation",
                    LENGTH,
                    "of the upper end above the nozzle axis",
                    s -> s.numbers().fromElevation())
            .of(
                    "toElevation",
                    LENGTH,
                    "of the lower end above the nozzle axis",
                    s -> s.numbers().toElevation())
            .of(
                    "highestWallTemperature",
                    TEMPERATURE,
                    "of the standing pipe on the hottest day",
                    s -> s.numbers().highestWallTemperature())
            .amount(
                    "rating",
                    PRESSURE,
                    "working pressure at 20 °C",
                    s -> s.numbers().rating())
            .amount(
                    "ratingHot",
                    PRESSURE,
                    "working pressure at its hottest wall",
                    s -> s.numbers().ratingHot())
            .amount(
                    "surgeRatingHot",
                    PRESSURE,
                    "allowed for a surge at its hottest wall",
                    s -> s.numbers().surgeRatingHot())
            .amount("waveSpeed", SPEED, "of pressure", s -> s.numbers().waveSpeed())
            .of("staticPressure", PRESSURE, "highest, all nozzles shut, water cold", InPlant::staticPressure)
            .of("velocity", SPEED, "fastest of the nozzle sets, running", InPlant::velocity)
            .of(
                    "frictionLoss",
                    LENGTH,
                    "head lost along it on the set open as built",
                    s -> s.running().get(0).water().sections().get(s.index()).frictionLoss())
            .amount("highestPressure", PRESSURE, "highest of every way the flow can stop", InPlant::highestPressure)
            .struct();

    static final Struct PENSTOCK = new Struct.Filling<>("penstock", "pipe from intake to nozzles", Plant.class)
            .of("length", LENGTH, "of all sections", p -> p.numbers().penstock().length())
            .amount(
                    "fittingsRating",
                    PRESSURE,
                    "working pressure of the weakest joint, valve or clamp",
                    p -> p.numbers().penstock().fittingsRating())
            .list("sections", SECTION, "from the intake down", InPlant::sections)
            .struct();

    static final Struct RUNNER = new Struct.Filling<>("runner", "wheel", RunnerNumbers.class)
            .text("kind", "how it turns the jet, in the file's word", r -> Names.ofConstant(r.kind()))
            .of("pitchDiameter", LENGTH, "of the circle the jet touches", RunnerNumbers::pitchDiameter)
            .of("bucketEfficiency", RATIO, "share of the momentum law's torque", RunnerNumbers::bucketEfficiency)
            .of("bestSpeedRatio", RATIO, "bucket speed over jet velocity of most power", RunnerNumbers::bestSpeedRatio)
            .struct();

    static final Struct ALTERNATOR = new Struct.Filling<>(
                    "alternator", "as its equivalent star", AlternatorNumbers.class)
            .whole("polePairs", "magnets of one polarity", AlternatorNumbers::polePairs)
            .of("gearRatio", RATIO, "alternator speed over runner speed", AlternatorNumbers::gearRatio)
            .of("phaseResistance", RESISTANCE, "at the running winding temperature", AlternatorNumbers::phaseResistance)
            .of("windingTemperature", TEMPERATURE, "while running", AlternatorNumbers::windingTemperature)
            .amount("currentLimit", CURRENT, "rms of one lead", AlternatorNumbers::currentLimit)
            .amount("speedLimit", ROTATIONAL_SPEED, "of its shaft", AlternatorNumbers::speedLimit)
            .struct();

    static final Struct BATTERY = new Struct.Filling<>("battery", "the whole bank", BatteryNumbers.class)
            .text("chemistry", "in the file's word", b -> Names.ofConstant(b.chemistry()))
            .whole("cellsInSeries", "from pole to pole", BatteryNumbers::cellsInSeries)
            .of("capacity", QuantityKind.CHARGE, "of the bank", BatteryNumbers::capacity)
            .of("stateOfCharge", RATIO, "at which running is judged", BatteryNumbers::stateOfCharge)
            .of("restingVoltage", VOLTAGE, "at that state of charge", BatteryNumbers::restingVoltage)
            .of("internalResistance", RESISTANCE, "of the bank", BatteryNumbers::internalResistance)
            .amount("chargeCurrentLimit", CURRENT, "of the bank", BatteryNumbers::chargeCurrentLimit)
            .amount("chargeVoltageLimit", VOLTAGE, "of the bank", BatteryNumbers::chargeVoltageLimit)
            .of("absorptionVoltage", VOLTAGE, "of the bank", BatteryNumbers::absorptionVoltage)
            .struct();

    static final Struct RUNNING = new Struct.Filling<>("running", "running on one nozzle set", Running.class)
            .text("nozzles", "name of the set", r -> r.nozzles().name())
            .of("flow", VOLUME_FLOW, "of all nozzles", r -> r.water().flow())
            .of(
                    "grossHead",
                    LENGTH,
                    "intake water level to nozzle axis",
                    r -> r.water().grossHead())
            .of(
                    "netHead",
                    LENGTH,
                    "just upstream of the nozzles",
                    r -> r.water().netHead())
            .of(
                    "frictionShare",
                    RATIO,
                    "head lost on the way over gross head",
                    r -> r.water().frictionShare())
            .yes(
                    "fullPipe",
                    "whether the stream keeps the pipe full",
                    r -> r.water().fullPipe())
            .of("jetVelocity", SPEED, "mean of the jets", r -> r.water().jetVelocity())
            .of("jetPower", POWER, "of all jets", r -> r.water().jetPower())
            .yes(
                    "held",
                    "whether the alternator holds the runner",
                    r -> r.operatingPoint().hold() == OperatingPoint.Hold.HELD)
            .of(
                    "speed",
                    ROTATIONAL_SPEED,
                    "of the runner",
                    r -> r.operatingPoint().speed())
            .of(
                    "alternatorSpeed",
                    ROTATIONAL_SPEED,
                    "of the alternator",
                    r -> r.operatingPoint().alternatorSpeed())
            .of(
                    "speedRatio",
                    RATIO,
                    "bucket speed over jet velocity",
                    r -> r.operatingPoint().speedRatio())
            .of(
                    "torque",
                    TORQUE,
                    "of the runner at its shaft",
                    r -> r.operatingPoint().torque())
            .of(
                    "frequency",
                    FREQUENCY,
                    "of the alternator",
                    r -> r.operatingPoint().frequency())
            .of(
                    "phaseCurrent",
                    CURRENT,
                    "rms of one lead",
                    r -> r.operatingPoint().phaseCurrent())
            .of(
                    "directCurrent",
                    CURRENT,
                    "behind the bridge",
                    r -> r.operatingPoint().directCurrent())
            .of(
                    "bridgeVoltage",
                    VOLTAGE,
                    "behind the bridge",
                    r -> r.operatingPoint().bus().bridge())
            .of(
                    "batteryVoltage",
                    VOLTAGE,
                    "at the battery's poles",
                    r -> r.operatingPoint().bus().battery())
            .of(
                    "batteryPower",
                    POWER,
                    "at the battery's poles",
                    r -> r.operatingPoint().energy().at(EnergyAccount.Stage.BATTERY))
            .struct();

    static final Struct LOAD_LOST = new Struct.Filling<>(
                    "loadLost", "nozzles open, nothing connected to the alternator", LoadLost.class)
            .text("nozzles", "name of the set", l -> l.nozzles().name())
            .of("speed", ROTATIONAL_SPEED, "of the runner, run away", LoadLost::speed)
            .of("alternatorSpeed", ROTATIONAL_SPEED, "of the alternator", LoadLost::alternatorSpeed)
            .of("frequency", FREQUENCY, "of the alternator", LoadLost::frequency)
            .of("lineVoltage", VOLTAGE, "rms between two leads", LoadLost::lineVoltage)
            .of("directVoltage", VOLTAGE, "settled behind the bridge", LoadLost::directVoltage)
            .struct();

    static final Struct BATTERY_FULL = new Struct.Filling<>(
                    "batteryFull", "the battery takes no more", BatteryFull.class)
            .text("nozzles", "name of the set", b -> b.nozzles().name())
            .text("answer", "diverted, dump-too-small, runaway or overcharged", b -> Names.ofConstant(b.answer()))
            .of("lastingVoltage", VOLTAGE, "that lasts on the bus", BatteryFull::lastingVoltage)
            .of("runnerSpeed", ROTATIONAL_SPEED, "of the runner", BatteryFull::runnerSpeed)
            .of("turbineCurrent", CURRENT, "the turbine gives at absorption voltage", BatteryFull::turbineCurrent)
            .of("turbinePower", POWER, "the turbine gives at absorption voltage", BatteryFull::turbinePower)
            .struct();

    static final Struct STOP = new Struct.Filling<>("stop", "the flow stopped", Closing.class)
            .text("nozzles", "name of the set that was open", c -> c.nozzles().name())
            .text(
                    "cause",
                    "valve, nozzle-shut, nozzle-plugged, inlet-shut or screen-blocked",
                    c -> Names.ofConstant(c.cause()))
            .of("closingTime", TIME, "it takes; zero at once", Closing::closingTime)
            .of("velocityChange", SPEED, "in the last section", Closing::velocityChange)
            .amount("highestPressure", PRESSURE, "in any section", c -> highest(c.sections()))
            .struct();

    private PlantWords() {}

    static Amount highest(List<Amount> pressures) {
        double highest = Double.NEGATIVE_INFINITY;
        for (Amount pressure : pressures) {
            if (!(pressure instanceof Amount.Known known)) {
                return pressure;
            }
            highest = Math.max(highest, known.value());
        }
        return Amount.of(highest);
    }

    /** {@return each situation as a view; a plant that cannot be solved has none, and says why} */
    static <T extends Situation> List<View> views(Plant plant, Struct struct, Function<Plant, List<T>> situations) {
        solved(plant);
        List<View> views = new ArrayList<>();
        for (T situation : situations.apply(plant)) {
            views.add(new View(struct, situation, "/", situation.id()));
        }
        return views;
    }

    /** An empty list would let a condition on all of them hold: a check that could not be made is no pass. */
    static void solved(Plant plant) {
        if (!plant.unsolvable().isEmpty()) {
            throw new MissingValueException(plant.unsolvable().get(0));
        }
    }

    /** A section within its plant. */
    record InPlant(Plant plant, int index) {

        static List<View> sections(Plant plant) {
            PenstockNumbers penstock = plant.numbers().penstock();
            List<View> views = new ArrayList<>();
            for (int i = 0; i < penstock.sections().size(); i++) {
                views.add(new View(
                        SECTION,
                        new InPlant(plant, i),
                        penstock.sections().get(i).path(),
                        ""));
            }
            return views;
        }

        SectionNumbers numbers() {
            return plant.numbers().penstock().sections().get(index);
        }

        List<Running> running() {
            solved(plant);
            return plant.solve().running();
        }

        double staticPressure() {
            solved(plant);
            return plant.solve().shut().sections().get(index);
        }

        double velocity() {
            double fastest = 0;
            for (Running running : running()) {
                fastest =
                        Math.max(fastest, running.water().sections().get(index).velocity());
            }
            return fastest;
        }

        Amount highestPressure() {
            solved(plant);
            List<Amount> all = new ArrayList<>();
            for (Closing stop : plant.solve().closing()) {
                all.add(stop.peak(index).highest());
            }
            return highest(all);
        }
    }
}
