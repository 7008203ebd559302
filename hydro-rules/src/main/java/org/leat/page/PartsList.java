package org.leat.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.design.BatteryBank;
import org.leat.design.Buckets;
import org.leat.design.Cable;
import org.leat.design.Conductor;
import org.leat.design.ConductorMaterial;
import org.leat.design.Design;
import org.leat.design.Fitting;
import org.leat.design.Pipe;
import org.leat.design.ProtectiveDevice;
import org.leat.design.Runner;
import org.leat.design.Screen;
import org.leat.design.Section;

/** What a design names, with quantities, to buy from: only what stands in the file, nothing chosen for the builder. */
final class PartsList {

    private final DataTable table = new DataTable("Parts that the design names", "part", "what", "how many");

    private PartsList() {}

    static DataTable of(Design design) {
        PartsList list = new PartsList();
        list.water(design);
        list.machine(design);
        list.electrics(design);
        return list.table;
    }

    private void add(String part, String what, String howMany) {
        table.row(part, what, howMany);
    }

    private void water(Design design) {
        if (design.intake() != null) {
            Screen screen = design.intake().screen();
            if (screen != null) {
                add("screen", of(screen), "1");
            }
            if (design.intake().vent() != null) {
                add("vent pipe", quantity("", design.intake().vent().bore(), " bore"), "1");
            }
        }
        for (Section section : design.penstock().sections()) {
            add("pipe, " + section.name(), of(section.pipe()), ShownText.stated(section.length()));
        }
        Map<String, Integer> fittings = new LinkedHashMap<>();
        for (Section section : design.penstock().sections()) {
            for (Fitting fitting : section.fittings()) {
                String what = ShownText.word(fitting.kind()) + quantity(", ", fitting.bore(), " bore") + " for "
                        + of(section.pipe());
                fittings.merge(what, fitting.count() == null ? 1 : fitting.count(), Integer::sum);
            }
        }
        fittings.forEach((what, count) -> add("fitting", what, Integer.toString(count)));
        Map<String, Integer> open = new LinkedHashMap<>();
        design.nozzles().open().forEach(bore -> open.merge(ShownText.stated(bore), 1, Integer::sum));
        design.nozzles().available().forEach(bore -> open.merge(ShownText.stated(bore), 0, Integer::sum));
        open.forEach(
                (bore, count) -> add("nozzle", bore + " bore", count == 0 ? "1 on hand" : Integer.toString(count)));
    }

    private void machine(Design design) {
        if (design.runner() != null) {
            Buckets buckets = design.runner().buckets();
            String cups = buckets == null
                    ? ""
                    : joined(
                            buckets.count() == null ? "" : buckets.count() + " buckets",
                            quantity("", buckets.width(), " wide"),
                            buckets.material() == null ? "" : buckets.material());
            add(
                    "runner",
                    joined(
                            runner(design.runner()),
                            quantity("pitch diameter ", design.runner().pitchDiameter(), ""),
                            cups),
                    "1");
        }
        add(
                "alternator",
                joined(
                        "permanent-magnet",
                        design.alternator().polePairs() == null
                                ? ""
                                : design.alternator().polePairs() + " pole pairs",
                        quantity("stands ", design.alternator().currentLimit(), " in a lead"),
                        quantity("", design.alternator().speedLimit(), "")),
                "1");
    }

    private void electrics(Design design) {
        if (design.rectifier() != null) {
            add(
                    "rectifier, three-phase bridge",
                    joined(
                            quantity("blocks ", design.rectifier().repetitivePeakReverseVoltage(), ""),
                            quantity("carries ", design.rectifier().averageCurrent(), "")),
                    "1");
            if (design.rectifier().capacitance() != null) {
                add(
                        "capacitor",
                        joined(
                                quantity("", design.rectifier().capacitance(), ""),
                                quantity("", design.rectifier().capacitorVoltage(), "")),
                        "1");
            }
        }
        for (Cable cable : design.cables()) {
            add(
                    "cable, " + ShownText.word(cable.from()) + " to " + ShownText.word(cable.to()),
                    joined(of(cable.conductor()), quantity("rated ", cable.ratedVoltage(), "")),
                    quantity("a run of ", cable.length(), ""));
        }
        if (design.regulator() != null) {
            add(
                    "charge regulator",
                    joined(
                            ShownText.word(design.regulator().kind()),
                            quantity("input to ", design.regulator().inputVoltageLimit(), ""),
                            quantity("", design.regulator().currentRating(), "")),
                    "1");
        }
        if (design.dumpLoad() != null) {
            add(
                    "dump load",
                    joined(
                            quantity("", design.dumpLoad().resistance(), ""),
                            quantity("", design.dumpLoad().powerRating(), ""),
                            quantity("", design.dumpLoad().ratedVoltage(), "")),
                    "1");
            if (design.dumpLoad().fuse() != null) {
                add(
                        "fuse of the dump load",
                        joined(
                                quantity("", design.dumpLoad().fuse(), ""),
                                quantity("", design.dumpLoad().fuseDirectVoltage(), " d.c.")),
                        "1");
            }
        }
        BatteryBank battery = design.battery();
        add(
                "battery",
                joined(
                        ShownText.word(battery.chemistry()),
                        battery.cellsInSeries() + " cells in series",
                        quantity("", battery.capacity(), " in all")),
                battery.strings() == null
                        ? "strings not told"
                        : battery.strings() == 1 ? "1 string" : battery.strings() + " strings");
        if (design.inverter() != null) {
            add(
                    "inverter",
                    joined(
                            quantity("", design.inverter().continuousPower(), ""),
                            quantity("surge ", design.inverter().surgePower(), ""),
                            quantity("input to ", design.inverter().inputVoltageLimit(), "")),
                    "1");
        }
        for (ProtectiveDevice device : design.devices()) {
            add(
                    ShownText.word(device.kind()),
                    joined(
                            device.name(),
                            quantity("", device.ratedCurrent(), ""),
                            quantity("", device.directVoltage(), " d.c."),
                            quantity("breaks ", device.breakingCapacity(), "")),
                    "1");
        }
    }

    /** {@return a pipe in words} */
    static String of(Pipe pipe) {
        if (pipe instanceof Pipe.Polyethylene pe) {
            return joined(
                    "polyethylene " + ShownText.word(pe.material()).toUpperCase(java.util.Locale.ROOT),
                    quantity("", pe.outsideDiameter(), ""),
                    pe.sdr() == null ? quantity("wall ", pe.wall(), "") : "SDR " + plain(pe.sdr()));
        }
        if (pipe instanceof Pipe.PvcU pvc) {
            return joined(
                    "PVC-U",
                    quantity("", pvc.outsideDiameter(), ""),
                    quantity("", pvc.pressureRating(), ""),
                    quantity("wall ", pvc.wall(), ""));
        }
        if (pipe instanceof Pipe.Steel steel) {
            return joined("steel", quantity("", steel.outsideDiameter(), ""), quantity("wall ", steel.wall(), ""));
        }
        if (pipe instanceof Pipe.Hose hose) {
            return joined("hose", quantity("", hose.bore(), " bore"), quantity("", hose.pressureRating(), ""));
        }
        Pipe.OtherPipe custom = (Pipe.OtherPipe) pipe;
        return joined(
                "pipe of one\u2019s own", quantity("", custom.bore(), " bore"), quantity("wall ", custom.wall(), ""));
    }

    /** {@return a kind of runner in words} */
    static String runner(@Nullable Runner runner) {
        if (runner == null || runner.kind() == null) {
            return "runner";
        }
        return switch (runner.kind()) {
            case PELTON -> "Pelton runner";
            case TURGO -> "Turgo runner";
            case CUPS -> "runner of cups";
            case FLAT -> "runner of flat paddles";
        };
    }

    /** {@return a screen in words} */
    static String of(Screen screen) {
        if (screen instanceof Screen.DrilledHoles drilled) {
            return "screen of " + drilled.holes() + " holes of " + ShownText.stated(drilled.holeDiameter());
        }
        if (screen instanceof Screen.Mesh mesh) {
            return "mesh of " + ShownText.stated(mesh.area()) + quantity(", openings of ", mesh.opening(), "");
        }
        Screen.Bars bars = (Screen.Bars) screen;
        return "bars" + quantity(", gaps of ", bars.spacing(), "") + quantity(", ", bars.area(), "");
    }

    /** {@return a conductor in words} */
    static String of(Conductor conductor) {
        return joined(
                (conductor.parallel() == null || conductor.parallel() == 1 ? "" : conductor.parallel() + " \u00d7 ")
                        + ShownText.stated(conductor.area()),
                conductor.material() == null || conductor.material() == ConductorMaterial.COPPER
                        ? ""
                        : ShownText.word(conductor.material()),
                conductor.stranding() == null ? "" : ShownText.word(conductor.stranding()));
    }

    private static String plain(double number) {
        return java.math.BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private static String quantity(String before, @Nullable Quantity<?> quantity, String after) {
        return quantity == null ? "" : before + ShownText.stated(quantity) + after;
    }

    private static String joined(String... said) {
        List<String> kept = new ArrayList<>(List.of(said));
        kept.removeIf(String::isEmpty);
        return kept.stream().collect(Collectors.joining(", "));
    }
}
