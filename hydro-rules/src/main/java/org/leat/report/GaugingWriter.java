package org.leat.report;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.check.Rulebook;
import org.leat.design.Gauging;
import org.leat.hydraulics.Estimate;
import org.leat.plant.derive.Gaugings;
import org.leat.plant.numbers.Amount;
import org.leat.plant.numbers.Assumption;
import org.leat.quantity.QuantityKind;

/** Writes what the readings of a stream come to: each method's value with its uncertainty, and all of them together. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class GaugingWriter {

    private final Map<String, String> texts;

    /** Writes in the words of a rulebook. */
    public GaugingWriter(Rulebook rulebook) {
        this.texts = rulebook.texts();
    }

    private record Part(String name, QuantityKind kind, List<Method> methods, List<Gaugings.One> values) {}

    private static List<Part> parts(Gauging gauging) {
        Part flow = new Part(
                "flow",
                QuantityKind.VOLUME_FLOW,
                gauging.flow().stream().map(Method::of).toList(),
                Gaugings.flows(gauging));
        Part head = new Part(
                "head",
                QuantityKind.LENGTH,
                gauging.head().stream().map(Method::of).toList(),
                Gaugings.heads(gauging));
        return Stream.of(flow, head).filter(part -> !part.values().isEmpty()).toList();
    }

    /** Writes for a person. */
    public void text(Gauging gauging, Appendable out) throws IOException {
        List<String> lines = new ArrayList<>();
        for (Part part : parts(gauging)) {
            lines.add(part.name());
            for (int i = 0; i < part.values().size(); i++) {
                lines.addAll(one(part.methods().get(i), part.values().get(i), part.kind()));
            }
            lines.addAll(together(part));
            lines.add("");
        }
        lines.add(texts.getOrDefault("caution", "").replace('\n', ' '));
        for (String line : lines) {
            out.append(line).append('\n');
        }
    }

    private List<String> one(Method method, Gaugings.One one, QuantityKind kind) {
        List<String> lines = new ArrayList<>();
        lines.add("  " + method.name() + ": " + value(one.value(), one.plusMinus(), kind));
        if (one.value() instanceof Amount.OutsideRange outside) {
            lines.add("      " + outside(outside));
        }
        lines.add("      " + method.law() + "; " + method.source());
        for (Assumption assumed : one.assumptions()) {
            lines.add("      assumed " + lastOf(assumed.path()) + " " + UsualUnits.show(assumed.value(), assumed.kind())
                    + " (" + UsualUnits.show(assumed.low(), assumed.kind()) + " to "
                    + UsualUnits.show(assumed.high(), assumed.kind()) + "): "
                    + texts.getOrDefault(assumed.reason(), assumed.reason()));
        }
        return lines;
    }

    private String value(Amount amount, OptionalDouble plusMinus, QuantityKind kind) {
        if (amount instanceof Amount.Known known) {
            return UsualUnits.show(known.value(), kind)
                    + (plusMinus.isEmpty()
                            ? ", how well known these readings cannot tell"
                            : " ± " + UsualUnits.alike(plusMinus.getAsDouble(), known.value(), kind));
        }
        String reason = ((Amount.Unknown) amount).reason();
        return "open: " + texts.getOrDefault(reason, reason);
    }

    private static String outside(Amount.OutsideRange o) {
        String unit = o.unit().equals("1") ? "" : " " + o.unit();
        String low = o.low().isPresent() ? "from " + number(o.low().getAsDouble()) : "";
        String high = o.high().isPresent() ? number(o.high().getAsDouble()) + unit : "";
        String range = high.isEmpty() ? low + unit + " on" : low.isEmpty() ? "up to " + high : low + " to " + high;
        return o.input() + " is " + number(o.value()) + unit + "; " + o.law() + " holds " + range;
    }

    private static String number(double value) {
        BigDecimal rounded = Numbers.of(value);
        return rounded == null
                ? "without limit"
                : UsualUnits.show(value, QuantityKind.RATIO).strip();
    }

    private static List<String> together(Part part) {
        Estimate all = Gaugings.together(part.values());
        List<String> lines = new ArrayList<>();
        if (all != null) {
            OptionalDouble half = all.plusMinus();
            lines.add("  together: " + UsualUnits.show(all.value(), part.kind())
                    + (half.isEmpty() ? "" : " ± " + UsualUnits.alike(half.getAsDouble(), all.value(), part.kind())));
            lines.add("      mean weighted by 1/u²; R. T. Birge, Physical Review 40 (1932) 207");
        }
        if (Gaugings.contradict(part.values())) {
            lines.add("      the methods contradict each other: one of them was read wrongly, or the water changed");
        }
        return lines;
    }

    private static String lastOf(String path) {
        return path.substring(path.lastIndexOf('/') + 1);
    }

    private record Assumed(
            String field,
            @Nullable BigDecimal value,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high) {}

    private record Outside(
            String law,
            String input,
            @Nullable BigDecimal value,
            @Nullable BigDecimal low,
            @Nullable BigDecimal high,
            String unit) {}

    private record One(
            String method,
            String law,
            String source,
            @Nullable BigDecimal value,
            @Nullable BigDecimal plusMinus,
            @Nullable String open,
            @Nullable Outside outside,
            List<Assumed> assumed) {}

    private record Together(
            @Nullable BigDecimal value, @Nullable BigDecimal plusMinus) {}

    private record Whole(List<One> gaugings, @Nullable Together together, boolean contradict) {}

    /** Writes for a program: values in SI, half-widths at 95 % confidence. */
    public void json(Gauging gauging, Appendable out) throws IOException {
        try (JsonGenerator json = JsonLines.to(out)) {
            json.writeStartObject();
            for (Part part : parts(gauging)) {
                json.writePOJOField(part.name(), whole(part));
            }
            json.writeEndObject();
            json.writeRaw('\n');
        }
    }

    private Whole whole(Part part) {
        List<One> ones = new ArrayList<>();
        for (int i = 0; i < part.values().size(); i++) {
            Gaugings.One one = part.values().get(i);
            Method method = part.methods().get(i);
            Amount.OutsideRange o = one.value() instanceof Amount.OutsideRange outside ? outside : null;
            ones.add(new One(
                    method.name(),
                    method.law(),
                    method.source(),
                    one.value() instanceof Amount.Known known ? Numbers.of(known.value()) : null,
                    Numbers.of(one.plusMinus()),
                    one.value() instanceof Amount.Unknown unknown
                            ? texts.getOrDefault(unknown.reason(), unknown.reason())
                            : null,
                    o == null
                            ? null
                            : new Outside(
                                    o.law(),
                                    o.input(),
                                    Numbers.of(o.value()),
                                    Numbers.of(o.low()),
                                    Numbers.of(o.high()),
                                    o.unit()),
                    one.assumptions().stream()
                            .map(a -> new Assumed(
                                    lastOf(a.path()), Numbers.of(a.value()), Numbers.of(a.low()), Numbers.of(a.high())))
                            .toList()));
        }
        Estimate all = Gaugings.together(part.values());
        return new Whole(
                ones,
                all == null ? null : new Together(Numbers.of(all.value()), Numbers.of(all.plusMinus())),
                Gaugings.contradict(part.values()));
    }
}
