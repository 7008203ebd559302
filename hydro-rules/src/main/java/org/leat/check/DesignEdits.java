package org.leat.check;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import javax.measure.Quantity;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.Plain;
import org.leat.file.Names;
import org.leat.quantity.Measured;

/** Applies edits to a design: copies the records along each path, the rest is shared. */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class DesignEdits {

    private DesignEdits() {}

    /**
     * {@return the design with every edit applied, in order}
     *
     * @throws IllegalArgumentException if a path leads nowhere or a value does not fit there
     * @throws org.leat.design.ImpossibleValueException if the edited design can never be
     */
    public static Design apply(Design design, List<Edit> edits) {
        Object edited = design;
        for (Edit edit : edits) {
            List<PathSteps.Step> steps = PathSteps.steps(edit.path());
            if (steps.isEmpty()) {
                throw new IllegalArgumentException("an edit names a field");
            }
            edited = replaced(edited, steps, edit);
        }
        return (Design) edited;
    }

    /**
     * A field of a design, whether it holds something or not.
     *
     * @param record that has it
     * @param field as files spell it
     * @param item whether the path leads to an item of the list that it holds
     */
    public record Place(Class<? extends Record> record, String field, boolean item) {}

    /**
     * A path that leads nowhere.
     *
     * @param name the step that is not there
     * @param known what is there
     */
    public record Nowhere(String name, List<String> known) {}

    /**
     * {@return the field that a path leads to, a {@link Place}, or why it leads nowhere, a {@link Nowhere}}
     *
     * @throws IllegalArgumentException if it is no path, or that of the whole design
     */
    public static Record find(Design design, String path) {
        List<PathSteps.Step> steps = PathSteps.steps(path);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("an edit names a field");
        }
        @Nullable Object holder = design;
        String before = "";
        for (int i = 0; i < steps.size(); i++) {
            PathSteps.Step step = steps.get(i);
            if (!(holder instanceof Record record)) {
                return new Nowhere(before, List.of());
            }
            List<RecordComponent> components = RecordShape.of(record.getClass()).components();
            RecordComponent component = components.stream()
                    .filter(c -> c.getName().equals(step.component()))
                    .findFirst()
                    .orElse(null);
            if (component == null) {
                return new Nowhere(
                        step.field(),
                        components.stream()
                                .map(c -> Names.ofComponent(c.getName()))
                                .toList());
            }
            before = step.field();
            Object value = value(record, component);
            if (step.item() != null) {
                List<?> items = value instanceof List<?> list ? list : List.of();
                int index = at(items, step.item());
                if (index < 0) {
                    return new Nowhere(step.field() + "[" + step.item() + "]", items(items, step.field()));
                }
                value = items.get(index);
            }
            if (i == steps.size() - 1) {
                return new Place(record.getClass(), step.field(), step.item() != null);
            }
            holder = value;
        }
        throw new IllegalStateException(path);
    }

    private static List<String> items(List<?> list, String field) {
        List<String> known = new ArrayList<>();
        for (int i = 0; i < list.size(); i++) {
            Object name = name(list.get(i));
            known.add(field + "[" + (name == null ? i : name) + "]");
        }
        return known;
    }

    private static Object replaced(Object holder, List<PathSteps.Step> steps, Edit edit) {
        if (!(holder instanceof Record record)) {
            throw nowhere(edit);
        }
        PathSteps.Step step = steps.get(0);
        List<PathSteps.Step> rest = steps.subList(1, steps.size());
        List<RecordComponent> components = RecordShape.of(record.getClass()).components();
        String wanted = step.component();
        @Nullable Object[] values = new Object[components.size()];
        boolean found = false;
        for (int i = 0; i < values.length; i++) {
            RecordComponent component = components.get(i);
            values[i] = value(record, component);
            if (component.getName().equals(wanted)) {
                found = true;
                values[i] = changed(values[i], component.getType(), step, rest, edit);
            }
        }
        if (!found) {
            throw nowhere(edit);
        }
        return build(record.getClass(), values, edit);
    }

    private static @Nullable Object changed(
            @Nullable Object now, Class<?> type, PathSteps.Step step, List<PathSteps.Step> rest, Edit edit) {
        if (step.item() == null) {
            return rest.isEmpty() ? fitted(edit.value(), type) : replaced(present(now, edit), rest, edit);
        }
        if (!(now instanceof List<?> list)) {
            throw nowhere(edit);
        }
        int index = indexOf(list, step.item(), edit);
        List<Object> items = new ArrayList<>(list);
        if (!rest.isEmpty()) {
            items.set(index, replaced(items.get(index), rest, edit));
        } else if (edit.value() == null) {
            items.remove(index);
        } else {
            items.set(index, edit.value());
        }
        return items;
    }

    /** A bare number with its unit where a tolerance could stand, or a value where a one-field record holds it. */
    private static @Nullable Object fitted(@Nullable Object value, Class<?> type) {
        if (value instanceof Quantity<?> quantity && type == Measured.class) {
            return exactly(quantity);
        }
        if (value != null && type.isSealed() && !type.isInstance(value)) {
            for (Class<?> record : type.getPermittedSubclasses()) {
                RecordComponent[] components = record.getRecordComponents();
                if (record.isAnnotationPresent(Plain.class) && components != null && components.length == 1) {
                    Edit inner = new Edit("", value);
                    return build(record, new Object[] {fitted(value, components[0].getType())}, inner);
                }
            }
        }
        return value;
    }

    @SuppressWarnings({"unchecked", "rawtypes"}) // a quantity is of its own type, whatever that is
    private static Measured<?> exactly(Quantity quantity) {
        return Measured.exactly(quantity);
    }

    static int indexOf(List<?> list, String item, Edit edit) {
        int index = at(list, item);
        if (index < 0) {
            throw nowhere(edit);
        }
        return index;
    }

    private static int at(List<?> list, String item) {
        for (int i = 0; i < list.size(); i++) {
            if (item.equals(name(list.get(i)))) {
                return i;
            }
        }
        return item.matches("\\d{1,6}") && Integer.parseInt(item) < list.size() ? Integer.parseInt(item) : -1;
    }

    private static @Nullable Object name(Object item) {
        if (item instanceof Record record) {
            for (RecordComponent component : RecordShape.of(record.getClass()).components()) {
                if (component.getName().equals("name")) {
                    return value(record, component);
                }
            }
        }
        return null;
    }

    static @Nullable Object value(Record record, RecordComponent component) {
        try {
            return component.getAccessor().invoke(record);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object build(Class<?> type, @Nullable Object[] values, Edit edit) {
        try {
            return RecordShape.of(type).constructor().newInstance(values);
        } catch (InvocationTargetException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            throw new IllegalStateException(e);
        } catch (IllegalArgumentException e) {
            throw new IllegalArgumentException("what is to stand at " + edit.path() + " does not fit there", e);
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static Object present(@Nullable Object value, Edit edit) {
        if (value == null) {
            throw nowhere(edit);
        }
        return value;
    }

    private static IllegalArgumentException nowhere(Edit edit) {
        return new IllegalArgumentException("no such place in the design: " + edit.path());
    }
}
