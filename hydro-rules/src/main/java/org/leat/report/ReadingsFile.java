package org.leat.report;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.apiguardian.api.API;
import org.leat.plant.numbers.NozzleGroup;
import org.leat.readings.Channel;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.Expectations;

/** Writes a file of readings with nothing filled in: one line for each reading, what is expected beside it as a comment. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class ReadingsFile {

    private static final List<ReadingKind> ON_BUS = List.of(
            ReadingKind.RUNNING_PRESSURE,
            ReadingKind.FLOW,
            ReadingKind.SPEED,
            ReadingKind.LEAD_VOLTS,
            ReadingKind.BRIDGE_VOLTS,
            ReadingKind.BATTERY_VOLTS,
            ReadingKind.BRIDGE_AMPS,
            ReadingKind.BATTERY_AMPS,
            ReadingKind.LEAD_AMPS,
            ReadingKind.WINDING_TEMPERATURE);

    private static final List<ReadingKind> OPEN =
            List.of(ReadingKind.RUNNING_PRESSURE, ReadingKind.FLOW, ReadingKind.SPEED, ReadingKind.LEAD_VOLTS);

    private ReadingsFile() {}

    /** Writes the file of a plant: take the # away from what was read, and put the number in. */
    public static void empty(Expectations expected, Appendable out) throws IOException {
        List<NozzleGroup> sets = new ArrayList<>(expected.sets());
        sets.sort(Comparator.comparingDouble(NozzleGroup::area));
        List<String> lines = new ArrayList<>();
        lines.add("# What was read at the water. Take the # away from what you read and write your number;");
        lines.add(
                "# put how well it is known behind it, as 3.1 bar ± 0.05 bar, where you know. Behind the second #: expected.");
        lines.add("format: 1");
        lines.add("# day: 2031-05-30");
        lines.add("# gauge-above-nozzle: 0.2 m");
        lines.add("# standing-pressure: 0 bar  # " + show(expected, Channel.standing(), sets.get(0)));
        lines.add("sets:");
        set(lines, expected, sets.get(0), LoadState.OPEN, OPEN);
        for (NozzleGroup set : sets) {
            set(lines, expected, set, LoadState.BUS, ON_BUS);
        }
        for (String line : lines) {
            out.append(line).append('\n');
        }
    }

    private static void set(
            List<String> lines, Expectations expected, NozzleGroup set, LoadState state, List<ReadingKind> what) {
        lines.add("  - nozzles: \""
                + PlainText.of(set.name()).replace("\\", "\\\\").replace("\"", "\\\"") + "\"");
        lines.add("    leads: " + (state == LoadState.OPEN ? "open" : "bus"));
        for (ReadingKind one : what) {
            Channel channel = new Channel(set.name(), state, one);
            if (expected.known(channel)) {
                String unit =
                        UsualUnits.show(expected.value(channel), one.kind()).replaceFirst("^[-−\\d.]+ ?", "");
                String blank = "0 " + unit;
                lines.add("    # " + field(one) + ": "
                        + (one == ReadingKind.LEAD_VOLTS ? "[" + blank + ", " + blank + ", " + blank + "]" : blank)
                        + "  # "
                        + show(expected, channel, set));
            }
        }
    }

    private static String show(Expectations expected, Channel channel, NozzleGroup set) {
        return channel.state() == LoadState.SHUT
                ? UsualUnits.show(
                        expected.value(new Channel(set.name(), LoadState.SHUT, channel.what())),
                        channel.what().kind())
                : UsualUnits.show(expected.value(channel), channel.what().kind());
    }

    /** {@return the field of the file that holds it} */
    static String field(ReadingKind what) {
        return switch (what) {
            case STANDING_PRESSURE -> "standing-pressure";
            case RUNNING_PRESSURE -> "running-pressure";
            case MIDWAY_PRESSURE -> "midway-pressure";
            case FLOW -> "flow";
            case INTAKE_FLOW -> "intake-flow";
            case SPEED -> "speed";
            case FREQUENCY -> "frequency";
            case LEAD_VOLTS, LEAD_SPREAD -> "volts-between-leads";
            case BRIDGE_VOLTS -> "bridge-volts";
            case BATTERY_VOLTS -> "battery-volts";
            case BRIDGE_AMPS -> "bridge-amps";
            case BATTERY_AMPS -> "battery-amps";
            case LEAD_AMPS -> "lead-amps";
            case WINDING_TEMPERATURE -> "winding-temperature";
        };
    }
}
