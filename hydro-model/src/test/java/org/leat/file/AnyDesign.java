package org.leat.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import net.jqwik.api.Arbitrary;
import org.leat.arbitraries.Draw;
import org.leat.design.Design;
import org.leat.design.ImpossibleValueException;
import org.leat.design.Limits;
import org.leat.quantity.Measured;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.QuantityText;
import org.leat.quantity.TradeUnit;
import org.leat.quantity.TradeUnits;

/** Designs that could not be built but could be written: every field, every kind, every unit, awkward texts. */
final class AnyDesign {

    private static final List<String> TEXTS = List.of(
            "a",
            "",
            " ",
            "null",
            "true",
            "12",
            "1.5",
            "~",
            "no",
            "a: b",
            "a #b",
            "- x",
            "[x]",
            "{x}",
            "\"",
            "'",
            "&a",
            "*a",
            "!t",
            "|",
            "%",
            "@",
            "`",
            "two\nlines",
            "tab\there",
            "back\\slash",
            "\u0085\u2028\uFEFF",
            "\uD83D\uDCA7 water",
            "日本",
            "0x1F",
            ".inf",
            "<<",
            "---",
            "...",
            "x ",
            "a,b",
            "end:",
            "°C",
            "ÅÄÖ",
            "1_000",
            "=");

    private AnyDesign() {}

    static Arbitrary<Design> any() {
        return Draw.arbitrary(3000, d -> (Design) make(d, Shape.of(Design.class)));
    }

    /** {@return one record of that type, the same each time} */
    static Object one(Class<? extends Record> type) {
        return make(Draw.seeded(type.getName().hashCode(), 3000), Shape.of(type));
    }

    private static Object make(Draw d, Shape shape) {
        for (int attempt = 0; attempt < 60; attempt++) {
            Object[] values = new Object[shape.fields().size()];
            for (Shape.Field field : shape.fields()) {
                boolean leave = !field.required() && d.share() < (attempt < 20 ? 0.6 : 0.2);
                values[field.index()] = leave
                        ? field.type() instanceof ValueType.OfList && !field.canBeAbsent() ? List.of() : null
                        : field.key().equals("parts") ? List.of() : value(d, field.type(), field.limits());
            }
            try {
                return shape.make(values);
            } catch (ImpossibleValueException e) {
                // the values do not agree: draw again
            }
        }
        return least(shape.type());
    }

    /** The least of a record: reached when the tape is used up. */
    private static Object least(Class<?> type) {
        Reading reading = DesignReader.read(SampleFiles.alderBeck(), "alder-beck.yaml");
        Object found = find(Objects.requireNonNull(reading.design()), type);
        return Objects.requireNonNull(found, type + " is not in the sample");
    }

    private static Object find(Object in, Class<?> type) {
        if (type.isInstance(in)) {
            return in;
        }
        List<Object> inside = new ArrayList<>();
        if (in instanceof Record r && !(r instanceof Measured<?>)) {
            Shape shape = Shape.of(r.getClass());
            shape.fields().forEach(f -> inside.add(Shape.get(r, f)));
        } else if (in instanceof List<?> list) {
            inside.addAll(list);
        }
        return inside.stream()
                .filter(Objects::nonNull)
                .map(x -> find(x, type))
                .filter(Objects::nonNull)
                .findFirst()
                .orElse(null);
    }

    private static Object value(Draw d, ValueType type, Limits limits) {
        if (type instanceof ValueType.OfList list) {
            int least = limits == null ? 0 : limits.items();
            return d.list(
                    Math.max(least, 1),
                    Math.max(least, 1) + (least == 12 ? 0 : 2),
                    () -> value(d, list.item(), limits));
        }
        if (type instanceof ValueType.OfRecord record) {
            return make(d, Shape.of(record.type()));
        }
        if (type instanceof ValueType.OfChoice choice) {
            List<Class<?>> classes = new ArrayList<>(choice.kinds().values());
            if (choice.plain() != null) {
                classes.add(choice.plain());
            }
            return make(d, Shape.of(classes.get(d.whole(0, classes.size() - 1))));
        }
        if (type instanceof ValueType.OfWord word) {
            return List.copyOf(word.words().values())
                    .get(d.whole(0, word.words().size() - 1));
        }
        if (type instanceof ValueType.OfQuantity quantity) {
            return quantity(d, quantity, limits);
        }
        return switch ((ValueType.Simple) type) {
            case WHOLE -> (int) Math.round(within(d, limits, QuantityKind.RATIO));
            case NUMBER -> within(d, limits, QuantityKind.RATIO);
            case YES_NO -> d.yes();
            case TEXT -> TEXTS.get(d.whole(0, TEXTS.size() - 1));
            case DAY -> java.time.LocalDate.of(d.whole(2000, 2100), d.whole(1, 12), d.whole(1, 28));
            case PLAIN -> throw new IllegalArgumentException("no design holds one");
        };
    }

    private static double within(Draw d, Limits limits, QuantityKind kind) {
        double reach = Math.min(1000, kind.greatest());
        double least = limits == null ? -reach : Math.max(Math.max(limits.atLeast(), limits.above()), -reach);
        double most = limits == null ? reach : Math.min(limits.atMost(), reach);
        double value = least + (most - least) * Math.max(d.share(), 1e-6);
        return value != 0 && Math.abs(value) < kind.least() ? kind.least() : value;
    }

    /** A number of any length in any unit of the kind. */
    private static Object quantity(Draw d, ValueType.OfQuantity type, Limits limits) {
        QuantityKind kind = type.kind();
        List<TradeUnit> units = TradeUnits.of(kind);
        TradeUnit unit = units.get(d.whole(0, units.size() - 1));
        double value = unit.fromSi(within(d, limits, kind));
        if (d.yes()) {
            value = Draw.rounded(value, d.whole(2, 17));
        }
        Measured<?> measured = read(java.math.BigDecimal.valueOf(value).toString(), unit, kind);
        if (!type.measured()) {
            return measured.value();
        }
        String difference = kind == QuantityKind.TEMPERATURE ? "K" : unit.symbol();
        String tolerance = Math.abs(value) * d.share() + " " + difference;
        return d.yes()
                ? ((QuantityText.Understood)
                                QuantityText.read(QuantityText.print(measured) + " \u00b1 " + tolerance, kind))
                        .measured()
                : measured;
    }

    private static Measured<?> read(String number, TradeUnit unit, QuantityKind kind) {
        return ((QuantityText.Understood) QuantityText.read((number + " " + unit.symbol()).strip(), kind)).measured();
    }
}
