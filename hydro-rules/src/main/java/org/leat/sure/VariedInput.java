package org.leat.sure;

import java.lang.reflect.RecordComponent;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.jspecify.annotations.Nullable;
import org.leat.check.Edit;
import org.leat.check.Trial;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.design.GrossHead;
import org.leat.design.Plain;
import org.leat.design.Stream;
import org.leat.design.StreamFlow;
import org.leat.file.Names;
import org.leat.plant.Plant;
import org.leat.plant.numbers.Assumption;
import org.leat.plant.numbers.SiteNumbers;
import org.leat.plant.numbers.StreamNumbers.StreamLevel;
import org.leat.quantity.Measured;
import org.leat.quantity.Quantities.VolumeFlow;
import org.leat.quantity.QuantityKind;
import org.leat.quantity.Si;
import org.leat.quantity.TradeUnits;
import org.leat.sure.Sureness.Input;
import org.leat.sure.Sureness.Origin;
import tech.units.indriya.quantity.Quantities;

/**
 * An input that may vary, with how the design says it.
 *
 * @param input where it lies
 * @param said how the design would state another value; null for an assumption, which is moved itself
 */
record VariedInput(Input input, @Nullable Saying said) {

    private static final String HEAD = "/site/gross-head";
    private static final String FLOW = "/site/stream/flow";

    /** How a design states a value. */
    @FunctionalInterface
    interface Saying {
        Edit of(double si);
    }

    /** {@return every input of a plant that may vary: tolerances in the order of the design, then assumptions} */
    static List<VariedInput> all(Plant plant) {
        Design design = plant.design();
        List<VariedInput> all = new ArrayList<>();
        measured(design, ElementPath.ROOT, ElementPath.ROOT, all);
        gauged(plant, all);
        for (Assumption assumed : plant.assumptions()) {
            if (assumed.low() < assumed.high() && Double.isFinite(assumed.high() - assumed.low())) {
                all.add(new VariedInput(
                        new Input(
                                assumed.path(),
                                Origin.ASSUMPTION,
                                assumed.kind(),
                                assumed.value(),
                                Math.min(assumed.low(), assumed.value()),
                                Math.max(assumed.high(), assumed.value())),
                        null));
            }
        }
        return List.copyOf(all);
    }

    /** Head and flow by readings: their tolerance comes of all readings together, so that the result is moved and not a reading. */
    private static void gauged(Plant plant, List<VariedInput> all) {
        SiteNumbers site = plant.numbers().site();
        if (!asStated(plant.design().site().grossHead()) && site.grossHeadPlusMinus() > 0) {
            add(
                    all,
                    HEAD,
                    QuantityKind.LENGTH,
                    site.grossHead(),
                    site.grossHeadPlusMinus(),
                    si -> new Edit(
                            HEAD,
                            new GrossHead.Stated(new Measured<>(
                                    Si.quantity(si, "m", Length.class),
                                    Si.quantity(site.grossHeadPlusMinus(), "m", Length.class)))));
        }
        Stream stream = plant.design().site().stream();
        if (stream != null
                && !(stream.flow() instanceof StreamFlow.Constant)
                && site.stream().size() == 1) {
            StreamLevel level = site.stream().get(0);
            if (level.flowPlusMinus() > 0) {
                add(
                        all,
                        FLOW,
                        QuantityKind.VOLUME_FLOW,
                        level.flow(),
                        level.flowPlusMinus(),
                        si -> new Edit(
                                FLOW,
                                new StreamFlow.Constant(
                                        Measured.exactly(Si.quantity(si * 1000, "L/s", VolumeFlow.class)))));
            }
        }
    }

    private static boolean asStated(GrossHead head) {
        return head instanceof GrossHead.Stated || head instanceof GrossHead.Gauge;
    }

    private static void measured(Record holder, String path, String shown, List<VariedInput> all) {
        for (RecordComponent component : holder.getClass().getRecordComponents()) {
            Object value = value(holder, component);
            if (value == null) {
                continue;
            }
            String name = Names.ofComponent(component.getName());
            String at = ElementPath.field(path, name);
            String told = holder.getClass().isAnnotationPresent(Plain.class) ? shown : ElementPath.field(shown, name);
            if (value instanceof Measured<?> measured) {
                measured(measured, at, told, all);
            } else if (value instanceof List<?> list) {
                List<String> items = ElementPath.items(at, list);
                for (int i = 0; i < items.size(); i++) {
                    if (list.get(i) instanceof Record item) {
                        measured(item, items.get(i), items.get(i), all);
                    }
                }
            } else if (value instanceof Record record && !gaugedElsewhere(record)) {
                measured(record, at, told, all);
            }
        }
    }

    /** Readings of which {@link #gauged} moves the result. */
    private static boolean gaugedElsewhere(Record record) {
        return (record instanceof GrossHead head && !asStated(head))
                || (record instanceof StreamFlow && !(record instanceof StreamFlow.Constant));
    }

    private static void measured(Measured<?> measured, String path, String shown, List<VariedInput> all) {
        double value = measured.si();
        double half = measured.plusMinusSi();
        if (half > 0 && value > half) {
            QuantityKind kind = kind(measured);
            add(all, shown, kind, value, half, si -> new Edit(path, scaled(measured, si / value)));
        }
    }

    private static void add(
            List<VariedInput> all, String path, QuantityKind kind, double value, double half, Saying said) {
        all.add(new VariedInput(new Input(path, Origin.TOLERANCE, kind, value, value - half, value + half), said));
    }

    private static QuantityKind kind(Measured<?> measured) {
        for (QuantityKind kind : QuantityKind.values()) {
            if (TradeUnits.of(kind).stream()
                    .anyMatch(unit -> unit.unit().isCompatible(measured.value().getUnit()))) {
                return kind;
            }
        }
        return QuantityKind.RATIO;
    }

    private static <Q extends Quantity<Q>> Measured<Q> scaled(Measured<Q> measured, double factor) {
        Quantity<Q> now = measured.value();
        BigDecimal value = BigDecimal.valueOf(now.getValue().doubleValue() * factor);
        return new Measured<>(Quantities.getQuantity(value, now.getUnit()), measured.plusMinus());
    }

    private static @Nullable Object value(Record holder, RecordComponent component) {
        try {
            return component.getAccessor().invoke(holder);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    /**
     * {@return the plant with inputs moved}
     *
     * @param values SI, one for each input in their order; NaN for those that stay
     */
    static Trial moved(Trial trial, List<VariedInput> inputs, double[] values) {
        List<Edit> edits = new ArrayList<>();
        Map<String, Double> assumed = new TreeMap<>();
        for (int i = 0; i < values.length; i++) {
            VariedInput varied = inputs.get(i);
            if (Double.isNaN(values[i])) {
                continue;
            }
            if (varied.said == null) {
                assumed.put(varied.input.path(), values[i]);
            } else {
                edits.add(varied.said.of(values[i]));
            }
        }
        return trial.assuming(edits, assumed);
    }
}
