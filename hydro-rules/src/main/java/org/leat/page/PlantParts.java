package org.leat.page;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.check.Report;
import org.leat.design.Cable;
import org.leat.design.Design;
import org.leat.design.DeviceKind;
import org.leat.design.DumpSide;
import org.leat.design.ElementPath;
import org.leat.design.Fitting;
import org.leat.design.Place;
import org.leat.design.ProtectiveDevice;
import org.leat.design.Section;
import org.leat.plant.Plant;
import org.leat.plant.cases.Running;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.plant.solved.OperatingPoint;
import org.leat.quantity.QuantityKind;
import org.leat.report.UsualUnits;

/** The parts of a plant in the order in which power passes them. */
final class PlantParts {

    /** What runs in the line above a part. */
    enum Line {
        WATER,
        SHAFT,
        THREE_PHASE,
        DIRECT,
        MAINS
    }

    /**
     * One part.
     *
     * @param symbol how it is drawn
     * @param name what it is called
     * @param numbers what there is to say of it, a line each
     * @param place its place in the design, as findings name it
     * @param line what comes to it from above
     * @param branch whether it hangs on the line instead of lying in it
     */
    record Part(Symbols symbol, String name, List<String> numbers, String place, Line line, boolean branch) {
        Part {
            numbers = numbers.stream().filter(n -> !n.isEmpty()).toList();
        }

        /** {@return whether a finding at that path is about this part} */
        boolean holds(String path) {
            return path.equals(place) || path.startsWith(place + "/");
        }
    }

    private final Design design;
    private final Plant plant;
    private final @Nullable Running running;
    private final List<Part> parts = new ArrayList<>();
    private final TreeSet<Integer> cablesLeft = new TreeSet<>();
    private final TreeSet<Integer> devicesLeft = new TreeSet<>();

    private PlantParts(Report report, Plant plant) {
        this.design = plant.design();
        this.plant = plant;
        this.running = report.running().isEmpty() || !report.unsolved().isEmpty()
                ? null
                : report.running().get(0);
        for (int i = 0; i < design.cables().size(); i++) {
            cablesLeft.add(i);
        }
        for (int i = 0; i < design.devices().size(); i++) {
            devicesLeft.add(i);
        }
    }

    static List<Part> of(Report report, Plant plant) {
        PlantParts all = new PlantParts(report, plant);
        all.water();
        all.machine();
        all.bus();
        all.inverter();
        all.whatIsLeft();
        return List.copyOf(all.parts);
    }

    private void add(Symbols symbol, String name, String place, Line line, String... numbers) {
        parts.add(new Part(symbol, name, List.of(numbers), place, line, false));
    }

    private void branch(Symbols symbol, String name, String place, String... numbers) {
        parts.add(new Part(symbol, name, List.of(numbers), place, Line.DIRECT, true));
    }

    private static String joined(String... said) {
        return List.of(said).stream().filter(s -> !s.isEmpty()).collect(Collectors.joining(", "));
    }

    private void water() {
        List<StreamLevel> levels = plant.numbers().site().stream();
        String flow = levels.isEmpty()
                ? "its flow is not told"
                : levels.size() == 1
                        ? ShownText.flow(levels.get(0).flow())
                        : ShownText.flow(levels.get(levels.size() - 1).flow()) + " to "
                                + ShownText.flow(levels.get(0).flow());
        double kept = design.site().stream() == null
                ? 0
                : plant.numbers().site().flows().kept();
        add(Symbols.STREAM, "stream", "/site", Line.WATER, flow, kept > 0 ? ShownText.flow(kept) + " stays in it" : "");
        if (design.intake() != null) {
            String screen = design.intake().screen() == null
                    ? ""
                    : PartsList.of(design.intake().screen());
            add(
                    Symbols.SCREEN,
                    "intake",
                    "/intake",
                    Line.WATER,
                    screen,
                    joined(
                            prefixed("", design.intake().submergence(), " under water"),
                            design.intake().vent() == null
                                    ? ""
                                    : "vent of "
                                            + ShownText.stated(
                                                    design.intake().vent().bore())));
        }
        for (Section section : design.penstock().sections()) {
            String valves = section.fittings().stream()
                    .filter(f -> f.closingTime() != null)
                    .map(PlantParts::valve)
                    .collect(Collectors.joining(", "));
            add(
                    Symbols.PIPE,
                    "pipe, " + section.name() + ": " + ShownText.stated(section.length()),
                    ElementPath.named("/penstock/sections", section.name(), 0),
                    Line.WATER,
                    PartsList.of(section.pipe()),
                    valves);
        }
        add(
                Symbols.NOZZLE,
                "nozzles " + plant.numbers().nozzles().asBuilt().name(),
                "/nozzles",
                Line.WATER,
                running == null
                        ? ""
                        : ShownText.flow(running.water().flow()) + " at "
                                + ShownText.length(running.water().netHead()) + " net head of "
                                + ShownText.length(running.water().grossHead()));
    }

    private static String valve(Fitting fitting) {
        return ShownText.word(fitting.kind()) + " closes in " + ShownText.stated(fitting.closingTime());
    }

    private static String prefixed(String before, @Nullable Quantity<?> quantity, String after) {
        return quantity == null ? "" : before + ShownText.stated(quantity) + after;
    }

    /** {@return what marks a number that the design does not state; "" where it does} */
    private String assumed(String field) {
        return plant.assumptions().stream().anyMatch(a -> a.path().equals(field)) ? " assumed" : "";
    }

    private void machine() {
        OperatingPoint at = running == null ? null : running.operatingPoint();
        add(
                Symbols.RUNNER,
                PartsList.runner(design.runner()) + ", "
                        + UsualUnits.show(plant.numbers().runner().pitchDiameter(), QuantityKind.LENGTH)
                        + assumed("/runner/pitch-diameter"),
                "/runner",
                Line.WATER,
                at == null ? "" : ShownText.speed(at.speed()) + ", " + ShownText.torque(at.torque()));
        add(
                Symbols.GENERATOR,
                "alternator",
                "/alternator",
                Line.SHAFT,
                at == null
                        ? ""
                        : ShownText.amps(at.phaseCurrent()) + " in each lead, "
                                + UsualUnits.show(at.frequency(), QuantityKind.FREQUENCY),
                joined(
                        prefixed("stands ", design.alternator().currentLimit(), ""),
                        prefixed("", design.alternator().speedLimit(), "")));
        between(Line.THREE_PHASE, Place.ALTERNATOR, Place.RECTIFIER, Place.REGULATOR, Place.BATTERY);
        add(
                Symbols.RECTIFIER,
                "rectifier",
                "/rectifier",
                Line.THREE_PHASE,
                at == null ? "" : ShownText.volts(at.bus().bridge()) + ", " + ShownText.amps(at.directCurrent()),
                design.rectifier() == null
                        ? ""
                        : joined(
                                prefixed("blocks ", design.rectifier().repetitivePeakReverseVoltage(), ""),
                                prefixed("carries ", design.rectifier().averageCurrent(), "")));
    }

    private void bus() {
        boolean onBattery = design.dumpLoad() != null && design.dumpLoad().side() == DumpSide.BATTERY;
        if (!onBattery) {
            dump(Place.RECTIFIER, Place.REGULATOR);
        }
        between(Line.DIRECT, Place.RECTIFIER, Place.REGULATOR, Place.BATTERY);
        if (design.regulator() != null) {
            add(
                    Symbols.REGULATOR,
                    "charge regulator, " + ShownText.word(design.regulator().kind()),
                    "/regulator",
                    Line.DIRECT,
                    joined(
                            prefixed("input to ", design.regulator().inputVoltageLimit(), ""),
                            prefixed("charges to ", design.regulator().absorptionVoltage(), "")));
            between(Line.DIRECT, Place.REGULATOR, Place.BATTERY);
        }
        OperatingPoint at = running == null ? null : running.operatingPoint();
        branch(
                Symbols.BATTERY,
                "battery, " + design.battery().cellsInSeries() + " cells, "
                        + ShownText.stated(design.battery().capacity()),
                "/battery",
                ShownText.word(design.battery().chemistry()),
                at == null
                        ? ""
                        : ShownText.watts(at.batteryPower()) + " at "
                                + ShownText.volts(at.bus().battery()));
        if (onBattery) {
            dump(Place.BATTERY, Place.BATTERY);
        }
    }

    private void dump(Place one, Place other) {
        if (design.dumpLoad() != null) {
            between(Line.DIRECT, Place.DUMP_LOAD, one, other);
            branch(
                    Symbols.RESISTOR,
                    "dump load",
                    "/dump-load",
                    joined(
                            prefixed("", design.dumpLoad().resistance(), ""),
                            prefixed("stands ", design.dumpLoad().powerRating(), "")),
                    joined(
                            prefixed("from ", design.dumpLoad().triggerVoltage(), ""),
                            prefixed("fuse ", design.dumpLoad().fuse(), "")));
        }
    }

    private void inverter() {
        between(Line.DIRECT, Place.INVERTER, Place.BATTERY, Place.RECTIFIER, Place.REGULATOR);
        if (design.inverter() != null) {
            add(
                    Symbols.INVERTER,
                    "inverter",
                    "/inverter",
                    Line.DIRECT,
                    prefixed("gives ", design.inverter().continuousPower(), ""),
                    prefixed("input to ", design.inverter().inputVoltageLimit(), ""));
        }
        Line line = design.inverter() == null ? Line.DIRECT : Line.MAINS;
        between(line, Place.LOADS, Place.INVERTER, Place.BATTERY, Place.REGULATOR, Place.RECTIFIER);
        if (!design.loads().isEmpty()) {
            List<String> told = new ArrayList<>();
            for (var load : design.loads().subList(0, Math.min(3, design.loads().size()))) {
                told.add((load.count() == null || load.count() == 1 ? "" : load.count() + " \u00d7 ")
                        + ShownText.stated(load.power()) + " " + load.name());
            }
            int more = design.loads().size() - told.size();
            add(
                    Symbols.SOCKET,
                    "sockets",
                    "/loads",
                    line,
                    String.join(", ", told),
                    more > 0 ? "and " + more + " more" : "");
        }
    }

    /** Cables and protective devices between one place and any of others, each once. */
    private void between(Line line, Place one, Place... others) {
        for (Place other : others) {
            for (int i : List.copyOf(devicesLeft)) {
                ProtectiveDevice device = design.devices().get(i);
                if (joins(device.from(), device.to(), one, other)) {
                    devicesLeft.remove(i);
                    device(device, i, line);
                }
            }
            for (int i : List.copyOf(cablesLeft)) {
                Cable cable = design.cables().get(i);
                if (joins(cable.from(), cable.to(), one, other)) {
                    cablesLeft.remove(i);
                    cable(cable, i, line);
                }
            }
        }
    }

    private static boolean joins(Place from, Place to, Place one, Place other) {
        return (from == one && to == other) || (from == other && to == one);
    }

    private void cable(Cable cable, int index, Line line) {
        add(
                Symbols.CABLE,
                ShownText.word(cable.from()) + "\u2013" + ShownText.word(cable.to()) + " cable",
                ElementPath.item("/cables", design.cables(), index),
                line,
                joined(ShownText.stated(cable.length()), PartsList.of(cable.conductor())));
    }

    private void device(ProtectiveDevice device, int index, Line line) {
        Symbols symbol = device.kind() == DeviceKind.FUSE
                ? Symbols.FUSE
                : device.kind() == DeviceKind.BREAKER ? Symbols.BREAKER : Symbols.SWITCH;
        add(
                symbol,
                device.name(),
                ElementPath.named("/protection", device.name(), index),
                line,
                joined(
                        ShownText.word(device.kind()),
                        ShownText.stated(device.ratedCurrent()),
                        prefixed("", device.directVoltage(), " d.c.")));
    }

    private void whatIsLeft() {
        for (int i : devicesLeft) {
            device(design.devices().get(i), i, Line.DIRECT);
        }
        for (int i : cablesLeft) {
            cable(design.cables().get(i), i, Line.DIRECT);
        }
    }
}
