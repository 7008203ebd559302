package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.readings.MotorBench;
import org.leat.readings.MotorBench.Cannot;
import org.leat.readings.MotorBench.Constant;
import org.leat.readings.MotorBench.Ranked;
import org.leat.readings.MotorBench.Read;

/** Writes what a bench tells of a motor, and an empty file of readings for one. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class BenchWriter {

    private static final double EXPECTED = 2;

    private static final String EMPTY = """
            # What was read of a motor on the bench. Take the # away from what you read and write your number; put
            # how well it is known behind it, as 21.3 V ± 0.2 V, where you know. Add as many lines as you like.
            # Power leads A, B, C: name them yourself. A machine that turns makes voltage: cover the clips, one hand.
            format: 1
            # name: the motor
            # day: 2031-05-30
            # meters: { volts: 1 %, amps: 2 %, speed: 1 %, resistance: 1 % }
            # pole-pairs: 0            # counted by hand or by hall pulses
            temperature: 20 °C         # of the room and of the winding that lay in it: write yours
            # inertia: 0 kg·m²         # of all that coasts: half m r² for a disc, m r² for a ring
            readings:
              # at rest, four wires: volts over amperes of 1 to 5 A
              - { resistance-ab: 0 Ω, resistance-bc: 0 Ω, resistance-ca: 0 Ω }
              # turned by a drill or lathe, nothing connected: three speeds
              - { speed: 0 rpm, frequency: 0 Hz, volts-ab: 0 V, volts-bc: 0 V, volts-ca: 0 V }
              - { speed: 0 rpm, frequency: 0 Hz, volts-ab: 0 V, volts-bc: 0 V, volts-ca: 0 V }
              - { speed: 0 rpm, frequency: 0 Hz, volts-ab: 0 V, volts-bc: 0 V, volts-ca: 0 V }
              # the same with a bridge and a small capacitor on the leads: direct volts, nothing else connected
              # - { speed: 0 rpm, bridge-volts: 0 V }
              # all three leads shorted through a clamp, slow and fast; seconds only, the drill jerks
              # - { speed: 0 rpm, amps-a: 0 A, amps-b: 0 A, amps-c: 0 A }
              # - { speed: 0 rpm, amps-a: 0 A, amps-b: 0 A, amps-c: 0 A }
              # the drive taken off at speed, leads apart: time since then
              # - { time: 0 s, speed: 0 rpm }
              # - { time: 0 s, speed: 0 rpm }
              # - { time: 0 s, speed: 0 rpm }
            """;

    /** Standard uncertainties beyond which a slip of the hand is looked for. */
    private static final double FAR = 6;

    private final Wording wording;

    /** Writes in the words of a rulebook. */
    public BenchWriter(Rulebook rulebook) {
        this.wording = new Wording(rulebook);
    }

    /** Writes a file of readings with nothing filled in. */
    public static void empty(Appendable out) throws IOException {
        out.append(EMPTY);
    }

    /** {@return why a reading is left out, in words} */
    public static String why(Cannot cannot) {
        return BenchWords.cannot(cannot);
    }

    /** Writes for a person. */
    public void text(MotorBench motor, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>();
        if (!motor.constants().isEmpty()) {
            boolean sound = BenchWords.look(motor.first().fault()).isEmpty();
            lines.add("The motor by these readings" + (sound ? "" : ", if it is as the first answer below says"));
            Table table = new Table();
            for (Constant constant : motor.constants()) {
                String[] shown = BenchWords.value(constant);
                table.row("  " + BenchWords.name(constant.what()), shown[0], shown[1]);
            }
            lines.addAll(table.lines());
            lines.add("");
        }
        if (!motor.read().isEmpty()) {
            lines.add("Readings against a sound motor of the same constants");
            lines.addAll(table(motor).lines());
            lines.add("");
        }
        lines.addAll(wrong(motor));
        if (!motor.next().isEmpty()) {
            lines.add("");
            lines.add("What to read next, the reading that tells most first");
            motor.next().forEach(test -> lines.add("  " + BenchWords.test(test)));
        }
        lines.add("");
        lines.add(wording.phrase("caution").replace('\n', ' '));
        for (String line : Columns.wrapped(lines)) {
            out.append(line.stripTrailing()).append('\n');
        }
    }

    private static Table table(MotorBench motor) {
        Table table = new Table();
        table.row("  what", "read", "expected", "off by", "");
        int alike = 0;
        for (Read read : motor.read()) {
            double off = read.off();
            boolean ofPair = read.kind() == MotorBench.Kind.VOLTS_OF_PAIR
                    || (read.kind() == MotorBench.Kind.RESISTANCE && Math.abs(read.expected()) < 1e-9);
            if (ofPair && Math.abs(off) <= EXPECTED) {
                alike++;
                continue;
            }
            double like = Math.max(Math.abs(read.value()), Math.abs(read.expected()));
            table.row(
                    "  " + BenchWords.name(read),
                    BenchWords.show(read.value(), like, read.kind()),
                    BenchWords.show(Math.abs(read.expected()) < 1e-9 ? 0 : read.expected(), like, read.kind()),
                    String.format(Locale.ROOT, "%+.1f u", off),
                    Math.abs(off) <= EXPECTED ? "as expected" : Math.abs(off) <= 3 ? "a little off" : "off");
        }
        if (alike > 0) {
            table.row("  single pairs as their mean: " + alike);
        }
        return table;
    }

    private static List<String> wrong(MotorBench motor) {
        List<String> lines = new ArrayList<>();
        if (!motor.judged()) {
            lines.add("What is wrong");
            lines.add("  Not known: no reading is here, or left, that would show a fault.");
            return lines;
        }
        lines.add(motor.unexplained() ? "No single fault explains these readings. The nearest:" : "What is wrong");
        Table table = new Table();
        for (Ranked ranked : motor.ranked()) {
            String size = BenchWords.size(ranked);
            table.row(
                    "  " + BenchWords.name(ranked) + (size.isEmpty() ? "" : ": " + size),
                    FaultWords.probability(ranked.probability()));
        }
        lines.addAll(table.lines());
        if (motor.unexplained()) {
            motor.read().stream()
                    .filter(read -> Math.abs(read.off()) > FAR && read.kind() != MotorBench.Kind.DRAG)
                    .map(read -> BenchWords.slip(read))
                    .filter(told -> !told.isEmpty())
                    .distinct()
                    .forEach(told -> lines.add("  Read again: " + told));
            lines.add("  A reading may be wrong as well: take those that are most off again.");
            return lines;
        }
        String look = BenchWords.look(motor.first().fault());
        if (!look.isEmpty()) {
            lines.add("  " + look);
        }
        for (MotorBench.Twin twin : motor.twins()) {
            MotorBench.Test by = twin.by();
            lines.add("  These readings cannot tell it from: " + BenchWords.name(twin.fault()) + ". "
                    + (by == null
                            ? "No reading does; look: " + BenchWords.look(twin.fault())
                            : "What would: " + BenchWords.test(by) + "."));
        }
        List<String> unseen = motor.unseen().stream().map(BenchWords::name).toList();
        if (!unseen.isEmpty()) {
            lines.add("  Not to be seen in these readings: " + String.join("; ", unseen) + ".");
        }
        boolean read = motor.constant(MotorBench.What.RESISTANCE) != null;
        if (look.isEmpty() && read && !motor.unseen().contains(MotorBench.Fault.TEST_LEADS_COUNTED)) {
            lines.add("  Not excluded where four wires were not used: "
                    + BenchWords.name(MotorBench.Fault.TEST_LEADS_COUNTED) + ".");
        }
        return lines;
    }

    private record Known(
            String what,
            @Nullable BigDecimal value,
            @Nullable BigDecimal standardUncertainty,
            String text) {}

    private record Reading(
            String what,
            String path,
            String unit,
            @Nullable BigDecimal read,
            @Nullable BigDecimal expected,
            @Nullable BigDecimal standardUncertainty,
            @Nullable BigDecimal off,
            boolean asExpected) {}

    private record Wrong(
            String fault,
            String text,
            String lead,
            @Nullable BigDecimal probability,
            @Nullable BigDecimal size,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            String sizeText,
            String liesIn,
            String look) {}

    private record Apart(String fault, @Nullable String reading) {}

    private record Out(String path, String why, @Nullable BigDecimal read, String text) {}

    /** Writes for a program: values in SI. */
    public void json(MotorBench motor, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writeStartObject();
            json.writePOJOField(
                    "constants",
                    motor.constants().stream()
                            .map(c -> new Known(
                                    word(c.what()),
                                    Numbers.of(c.value()),
                                    Numbers.of(c.standard()),
                                    BenchWords.name(c.what())))
                            .toList());
            json.writePOJOField(
                    "readings", motor.read().stream().map(BenchWriter::reading).toList());
            json.writePOJOField(
                    "faults",
                    motor.judged()
                            ? motor.ranked().stream().map(BenchWriter::wrong).toList()
                            : List.of());
            json.writeBooleanField("judged", motor.judged());
            json.writeBooleanField("singleFaultExplains", motor.judged() && !motor.unexplained());
            json.writePOJOField(
                    "notShown", motor.unseen().stream().map(BenchWriter::word).toList());
            json.writePOJOField(
                    "cannotTellFrom",
                    motor.twins().stream()
                            .map(t -> new Apart(word(t.fault()), word(t.by())))
                            .toList());
            json.writePOJOField(
                    "next", motor.next().stream().map(BenchWriter::word).toList());
            json.writePOJOField(
                    "leftOut",
                    motor.cannot().stream()
                            .map(c -> new Out(c.path(), word(c.why()), Numbers.of(c.value()), BenchWords.cannot(c)))
                            .toList());
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static Reading reading(Read read) {
        return new Reading(
                BenchWords.name(read),
                read.path(),
                BenchWords.kind(read.kind()).siSymbol(),
                Numbers.of(read.value()),
                Numbers.of(read.expected()),
                Numbers.of(read.standard()),
                Numbers.of(read.off()),
                Math.abs(read.off()) <= EXPECTED);
    }

    private static Wrong wrong(Ranked ranked) {
        return new Wrong(
                word(ranked.fault()),
                BenchWords.name(ranked),
                ranked.lead() < 0 ? "" : "ABC".substring(ranked.lead(), ranked.lead() + 1),
                Numbers.of(ranked.probability()),
                Numbers.of(ranked.size()),
                Numbers.of(ranked.low()),
                Numbers.of(ranked.high()),
                BenchWords.size(ranked),
                word(ranked.fault().lies()),
                BenchWords.look(ranked.fault()));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    private static @Nullable String word(MotorBench.@Nullable Test test) {
        return test == null ? null : test.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
