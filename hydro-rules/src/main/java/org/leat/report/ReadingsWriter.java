package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.file.Position;
import org.leat.file.Positions;
import org.leat.quantity.QuantityKind;
import org.leat.readings.Channel;
import org.leat.readings.Channel.LoadState;
import org.leat.readings.Channel.ReadingKind;
import org.leat.readings.Diagnosis;
import org.leat.readings.Expectations;
import org.leat.readings.FaultKind;
import org.leat.readings.ImpossibleReading;
import org.leat.readings.Observation;
import org.leat.readings.TakenReadings;

/** Writes readings against what was expected, and what is wrong with the plant. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class ReadingsWriter {

    /** In standard uncertainties: what building and instruments leave open. */
    /** A spread of hand-read volts has no more. */
    private static final int SHARE_DIGITS = 2;

    private static final double EXPECTED = 2;

    /** So many standard uncertainties off, a slip of the reader is likelier than chance. */
    private static final double FAR = 6;
    /** Share of what was expected below which a wheel stands. */
    private static final double STANDS = 0.005;

    private final Expectations expected;
    private final FaultWords words;
    private final Wording wording;
    private final Positions positions;

    /**
     * Writes of a plant, in the words of a rulebook.
     *
     * @param positions where each reading stands
     */
    public ReadingsWriter(Expectations expected, Rulebook rulebook, Positions positions) {
        this.expected = expected;
        this.positions = positions;
        this.words = new FaultWords(expected.plant());
        this.wording = new Wording(rulebook);
    }

    /** {@return what may be wrong, in words} */
    public static String name(FaultKind kind) {
        return FaultWords.name(kind);
    }

    /** {@return by how many standard uncertainties a reading is off what was expected} */
    public double off(Observation seen) {
        return (seen.value() - expected.value(seen.channel()))
                / Math.hypot(seen.standard(), expected.uncertainty(seen.channel()));
    }

    /** {@return whether all readings are as expected, each by itself} */
    public boolean allAsExpected(TakenReadings taken) {
        return taken.impossible().isEmpty()
                && taken.readings().stream().allMatch(seen -> Math.abs(off(seen)) <= EXPECTED);
    }

    /** Writes for a person. */
    public void text(TakenReadings taken, Diagnosis diagnosis, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>();
        for (Diagnosis.Ranked danger : diagnosis.dangers()) {
            // where no single fault explains the readings, how likely this one is of the single ones says nothing
            lines.add("FIRST, because it can hurt: " + FaultWords.name(danger.kind()) + "? "
                    + (diagnosis.unexplained()
                            ? "Not excluded. "
                            : FaultWords.probability(danger.probability()) + " likely. ")
                    + FaultWords.look(danger.kind()));
        }
        if (!diagnosis.dangers().isEmpty()) {
            lines.add("");
        }
        lines.add("Readings against what was expected");
        if (taken.readings().isEmpty()) {
            lines.add("  None is here, or left.");
        } else {
            lines.addAll(table(taken).lines(Columns.MOST));
        }
        for (ImpossibleReading cannot : taken.impossible()) {
            lines.add("  " + place(cannot.reading()) + ": " + cannot(cannot));
        }
        lines.addAll(slips(taken));
        OpenBatteryCircuit other = new OpenBatteryCircuit(expected);
        taken.readings()
                .forEach(seen -> other.told(seen, taken.readings())
                        .ifPresent(told -> lines.add("  " + place(seen) + ": " + told)));
        lines.add("");
        if (taken.readings().isEmpty()) {
            lines.add("What is wrong");
            lines.add("  Not known: no reading is here, or left, that would show anything.");
        } else {
            lines.addAll(wrong(diagnosis));
            lines.addAll(hidden(diagnosis));
        }
        lines.addAll(next(diagnosis));
        lines.add("");
        lines.add(wording.phrase("caution").replace('\n', ' '));
        for (String line : Columns.wrapped(lines)) {
            out.append(line.stripTrailing()).append('\n');
        }
    }

    private Table table(TakenReadings taken) {
        Table table = new Table();
        table.row("  what", "read", "expected", "range", "off by", "");
        for (Observation seen : taken.readings()) {
            ReadingKind what = seen.channel().what();
            double value = expected.value(seen.channel());
            double range = EXPECTED * Math.hypot(seen.standard(), expected.uncertainty(seen.channel()));
            double off = off(seen);
            double least = what == ReadingKind.LEAD_SPREAD ? Math.max(0, value - range) : value - range;
            table.row(
                    "  " + named(seen.channel()),
                    show(seen.value(), value, what.kind()),
                    show(value, value, what.kind()),
                    FaultWords.ends(show(least, value, what.kind()), show(value + range, value, what.kind())),
                    Math.abs(off) < 0.05 ? "0.0 u" : String.format(Locale.ROOT, "%+.1f u", off),
                    Math.abs(off) <= EXPECTED ? "as expected" : Math.abs(off) <= 3 ? "a little off" : "off");
        }
        return table;
    }

    private static String show(double value, double like, QuantityKind kind) {
        return kind == QuantityKind.RATIO
                ? UsualUnits.show(value, kind, "%", SHARE_DIGITS)
                : UsualUnits.alike(value, like, kind);
    }

    private static String named(Channel channel) {
        return ReadingKindWords.name(channel.what())
                + (channel.state() == LoadState.SHUT
                        ? ""
                        : ", " + PlainText.of(channel.nozzles())
                                + (channel.state() == LoadState.BUS
                                        ? ""
                                        : ", " + ReadingKindWords.state(channel.state())));
    }

    /** {@return why a reading cannot be, in a sentence} */
    public static String cannot(ImpossibleReading cannot) {
        Observation seen = cannot.reading();
        QuantityKind kind = seen.channel().what().kind();
        String because = switch (cannot.why()) {
            case BELOW_NIL -> "it is less than nothing";
            case ABOVE_HEAD -> "the fall makes no more than " + most(cannot);
            case ABOVE_RUNAWAY -> "a wheel that has run away makes no more than " + most(cannot);
            case ABOVE_RUNAWAY_VOLTS -> "the runaway speed gives no more than " + most(cannot);
            case ABOVE_JET_POWER -> "the jets carry no more than makes " + most(cannot);
            case ABOVE_SHORT_CIRCUIT -> "shorted leads carry no more than " + most(cannot);
            case ABOVE_FREE_JET -> "the nozzles pass no more than " + most(cannot);
            case ABOVE_STANDING -> "standing water was read to press no more than " + most(cannot);
            case TURNED_ROUND ->
                "the battery would give just what it should take: the clamp or the shunt is turned round";
            case SAME_SLIP -> "another of the same meter cannot be, by the same slip";
            case DEAD_BATTERY -> "no battery has volts as low";
            case CHANGED_PLACES ->
                "this and another of its line are each what was expected of the other: did they change places?";
            case NO_SUCH_VALUE -> "there is no such value";
        };
        double like = cannot.most() > 0 ? cannot.most() : kind == QuantityKind.PRESSURE ? 1e5 : seen.value();
        boolean asked = because.endsWith("?");
        return "This reading cannot be: " + named(seen.channel()) + " of " + UsualUnits.alike(seen.value(), like, kind)
                + "; " + because + (asked ? "" : ".") + slip(cannot.slip()) + " It is left out.";
    }

    private static String slip(ImpossibleReading.Slip slip) {
        return switch (slip) {
            case NONE -> "";
            case SIGN -> " With the other sign it would be as expected.";
            case PEAK_FOR_RMS -> " It is what was expected times √2: does the meter show the peak?";
            case TEN_TIMES -> " It is what was expected times ten: look at the point and the range.";
            case THOUSAND_TIMES -> " It is what was expected times a thousand: milli?";
            case A_TENTH -> " It is a tenth of what was expected: look at the point and the range.";
            case A_THOUSANDTH -> " It is a thousandth of what was expected: milli?";
            case BAR_FOR_PSI, BAR_FOR_KILOPASCAL -> " In bar it would be as expected.";
            case PSI_FOR_BAR -> " In psi it would be as expected.";
            case METRES_FOR_BAR -> " In metres of water it would be as expected.";
            case MINUTE_FOR_SECOND -> " In litres a minute it would be as expected.";
            case SECOND_FOR_MINUTE -> " In litres a second it would be as expected.";
            case TWO_MARKS -> " It is what was expected times two: two marks on the wheel?";
            case TWO_TURNS -> " It is what was expected times two: two turns through the clamp?";
        };
    }

    /** What a reading that is far off would be by one slip: it is worth to be read again. */
    private List<String> slips(TakenReadings taken) {
        List<String> lines = new ArrayList<>();
        Set<Observation> told = new HashSet<>();
        taken.readings().stream()
                .filter(this::stands)
                .findFirst()
                .ifPresent(
                        seen -> lines.add(
                                "  " + place(seen)
                                        + ": The wheel stands: is the water on, a deflector in the jet, the wheel stuck? What follows is of one that turns."));
        for (Observation seen : taken.readings()) {
            Observation changed = TakenReadings.changedPlaces(seen, taken.readings(), expected);
            ImpossibleReading.Slip slip = TakenReadings.slip(seen, expected);
            if (changed != null && told.contains(seen)) {
                continue;
            }
            if (changed != null) {
                told.add(changed);
                lines.add("  " + place(seen) + ": Read again: " + named(seen.channel()) + " and "
                        + named(changed.channel())
                        + " are each what was expected of the other: did they change places?");
            } else if (Math.abs(off(seen)) > FAR && slip != ImpossibleReading.Slip.NONE) {
                lines.add("  " + place(seen) + ": Read again: " + named(seen.channel()) + "." + slip(slip));
            }
        }
        return lines;
    }

    /** Whether the wheel does not turn, on a plant whose wheel should. */
    private boolean stands(Observation seen) {
        return seen.channel().what() == ReadingKind.SPEED
                && Math.abs(seen.value()) < STANDS * expected.value(seen.channel());
    }

    private Position place(Observation seen) {
        return positions.of(seen.path());
    }

    private static String most(ImpossibleReading cannot) {
        return UsualUnits.show(cannot.most(), cannot.reading().channel().what().kind());
    }

    private List<String> wrong(Diagnosis diagnosis) {
        List<String> lines = new ArrayList<>();
        if (diagnosis.unexplained()) {
            lines.add("No single fault explains these readings. Of two together the likeliest:");
            for (Diagnosis.Pair pair : diagnosis.pairs()) {
                lines.add("  " + FaultWords.name(pair.one()) + " and " + FaultWords.name(pair.other()));
            }
            lines.add("A reading may be wrong as well: take those that are most off again.");
            return lines;
        }
        lines.add("What is wrong");
        Table table = new Table();
        diagnosis
                .ranked()
                .forEach(ranked -> table.row(
                        "  " + FaultWords.name(ranked.kind()) + size(ranked),
                        FaultWords.probability(ranked.probability())));
        lines.addAll(table.lines());
        Diagnosis.Ranked first = diagnosis.ranked().get(0);
        if (!FaultWords.look(first.kind()).isEmpty()) {
            lines.add("  " + FaultWords.look(first.kind()));
        }
        for (Diagnosis.Twin twin : diagnosis.twins()) {
            Channel by = twin.separating();
            lines.add("  These readings cannot tell it from: " + FaultWords.name(twin.kind()) + ". "
                    + (by == null
                            ? "No reading does; look: " + FaultWords.look(twin.kind())
                            : "What would: " + named(by) + " (" + ReadingKindWords.where(by.what()) + ")."));
        }
        return lines;
    }

    private static List<String> hidden(Diagnosis diagnosis) {
        if (diagnosis.unseen().isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>(List.of("", "Not shown by these readings, and by which it would be"));
        for (Diagnosis.Unseen unseen : diagnosis.unseen()) {
            Channel by = unseen.showing();
            lines.add("  " + FaultWords.name(unseen.kind()) + ": "
                    + (by == null
                            ? "no reading that the design tells. " + FaultWords.look(unseen.kind())
                            : named(by) + " (" + ReadingKindWords.where(by.what()) + ")"));
        }
        return lines;
    }

    private String size(Diagnosis.Ranked ranked) {
        String size = words.size(ranked);
        return size.isEmpty() ? "" : ": " + size;
    }

    private static List<String> next(Diagnosis diagnosis) {
        if (diagnosis.next().isEmpty()) {
            return List.of();
        }
        List<String> lines = new ArrayList<>();
        lines.add("");
        lines.add("What to read next, the reading that tells most first");
        for (Diagnosis.Next next : diagnosis.next()) {
            lines.add(String.format(
                    Locale.ROOT,
                    "  %s (%s): %.2f bit",
                    named(next.channel()),
                    ReadingKindWords.where(next.channel().what()),
                    next.bits()));
        }
        return lines;
    }

    private record Read(
            String what,
            String nozzles,
            String state,
            String unit,
            @Nullable BigDecimal read,
            @Nullable BigDecimal expected,
            @Nullable BigDecimal standardUncertainty,
            @Nullable BigDecimal off,
            boolean asExpected) {}

    private record Cannot(
            String path,
            int line,
            int column,
            String what,
            String nozzles,
            @Nullable BigDecimal read,
            @Nullable BigDecimal most,
            String why,
            String text) {}

    private record Fault(
            String fault,
            String text,
            String nozzles,
            @Nullable BigDecimal probability,
            @Nullable BigDecimal size,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            String sizeText,
            boolean dangerous,
            String look) {}

    private record Apart(
            String fault,
            @Nullable String nozzles,
            @Nullable String state,
            @Nullable String reading) {}

    private record Next(
            String reading,
            String nozzles,
            String state,
            String where,
            @Nullable BigDecimal bits) {}

    private record Two(String one, String other, @Nullable BigDecimal share) {}

    /** Writes for a program: values in SI. */
    public void json(TakenReadings taken, Diagnosis diagnosis, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writeStartObject();
            json.writePOJOField(
                    "readings", taken.readings().stream().map(this::read).toList());
            json.writePOJOField(
                    "impossible",
                    taken.impossible().stream()
                            .map(c -> new Cannot(
                                    c.reading().path(),
                                    place(c.reading()).line(),
                                    place(c.reading()).column(),
                                    word(c.reading().channel().what()),
                                    c.reading().channel().nozzles(),
                                    Numbers.of(c.reading().value()),
                                    Numbers.of(c.most()),
                                    word(c.why()),
                                    cannot(c)))
                            .toList());
            json.writePOJOField(
                    "dangers", diagnosis.dangers().stream().map(this::fault).toList());
            boolean judged = !taken.readings().isEmpty();
            json.writeBooleanField("judged", judged);
            json.writePOJOField(
                    "faults",
                    judged ? diagnosis.ranked().stream().map(this::fault).toList() : List.of());
            json.writePOJOField(
                    "notShown",
                    diagnosis.unseen().stream().map(ReadingsWriter::hidden).toList());
            json.writeBooleanField("singleFaultExplains", judged && !diagnosis.unexplained());
            json.writePOJOField(
                    "pairs",
                    diagnosis.pairs().stream()
                            .map(p -> new Two(word(p.one()), word(p.other()), Numbers.of(p.share())))
                            .toList());
            json.writePOJOField(
                    "cannotTellFrom",
                    diagnosis.twins().stream().map(ReadingsWriter::apart).toList());
            json.writePOJOField(
                    "next",
                    diagnosis.next().stream()
                            .map(n -> new Next(
                                    word(n.channel().what()),
                                    n.channel().nozzles(),
                                    word(n.channel().state()),
                                    ReadingKindWords.where(n.channel().what()),
                                    Numbers.of(n.bits())))
                            .toList());
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private static Apart hidden(Diagnosis.Unseen unseen) {
        return apart(unseen.kind(), unseen.showing());
    }

    private static Apart apart(Diagnosis.Twin twin) {
        return apart(twin.kind(), twin.separating());
    }

    private static Apart apart(FaultKind kind, @Nullable Channel by) {
        return new Apart(
                word(kind),
                by == null ? null : by.nozzles(),
                by == null ? null : word(by.state()),
                by == null ? null : word(by.what()));
    }

    private Read read(Observation seen) {
        double off = off(seen);
        return new Read(
                word(seen.channel().what()),
                seen.channel().nozzles(),
                word(seen.channel().state()),
                seen.channel().what().kind().siSymbol(),
                Numbers.of(seen.value()),
                Numbers.of(expected.value(seen.channel())),
                Numbers.of(Math.hypot(seen.standard(), expected.uncertainty(seen.channel()))),
                Numbers.of(off),
                Math.abs(off) <= EXPECTED);
    }

    private Fault fault(Diagnosis.Ranked ranked) {
        return new Fault(
                word(ranked.kind()),
                FaultWords.name(ranked.kind()),
                ranked.nozzles(),
                Numbers.of(ranked.probability()),
                Numbers.of(ranked.size()),
                Numbers.of(ranked.low()),
                Numbers.of(ranked.high()),
                words.size(ranked),
                ranked.kind().dangerous(),
                FaultWords.look(ranked.kind()));
    }

    private static String word(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
