package org.leat.file;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.leat.design.Demand;
import org.leat.design.ElementPath;
import org.leat.design.ImpossibleValueException.Fault;
import org.leat.quantity.Measured;

/** Turns what records refuse into problems at the place of each value. */
final class Refusals {

    private final Problems problems;
    private final Map<String, Position> positions;
    private final boolean broken;

    Refusals(Problems problems, Map<String, Position> positions, boolean broken) {
        this.problems = problems;
        this.positions = positions;
        this.broken = broken;
    }

    /** What a constructor refused: what passes a limit, or else what does not agree. */
    void ofConstructor(Shape shape, @Nullable Object[] values, List<Fault> faults, String path, boolean plain) {
        if (ofLimits(shape, values, path, plain)) {
            return; // what a value that cannot be contradicts says nothing
        }
        for (Fault fault : faults) {
            Shape.Field field = field(shape, fault);
            Object value = values[field.index()];
            String at = plain ? path : ElementPath.field(path, field.key());
            if (value == null) {
                problems.add(ProblemKind.MISSING_CHOICE, position(at), at, "", fault.expected());
            } else {
                problems.add(ProblemKind.CONTRADICTION, position(at), at, fault.found(), fault.expected());
            }
        }
    }

    /** {@return whether anything passes a limit, of the values that could be bound} It is reported. */
    boolean ofLimits(Shape shape, @Nullable Object[] values, String path, boolean plain) {
        boolean any = false;
        for (Shape.Field field : shape.fields()) {
            Object value = values[field.index()];
            if (value == null) {
                continue;
            }
            String at = plain ? path : ElementPath.field(path, field.key());
            if (value instanceof List<?> list) {
                if (!broken) {
                    // of a list's own faults only its length: items follow at their own place
                    any |= report(Demand.faults(field.component(), Collections.nCopies(list.size(), "")), at);
                }
                any |= items(field, list, at);
            } else if (value instanceof Binder.Failed failed) {
                any |= items(field, failed.items(), at);
            } else {
                any |= report(Demand.faults(field.component(), value), at);
            }
        }
        return any;
    }

    private boolean items(Shape.Field field, List<? extends @Nullable Object> items, String path) {
        boolean any = false;
        for (int i = 0; i < items.size(); i++) {
            Object item = items.get(i);
            // items with limits are quantities, which have no names
            if (item != null && !(item instanceof Record && !(item instanceof Measured<?>))) {
                any |= report(Demand.faults(field.component(), item), ElementPath.named(path, null, i));
            }
        }
        return any;
    }

    private boolean report(List<Fault> faults, String path) {
        for (Fault fault : faults) {
            if (path.equals("/format")) {
                problems.add(
                        ProblemKind.UNSUPPORTED_FORMAT,
                        position(path),
                        path,
                        fault.found(),
                        "format: " + DesignReader.FORMAT);
            } else {
                problems.add(ProblemKind.IMPOSSIBLE_VALUE, position(path), path, fault.found(), fault.expected());
            }
        }
        return !faults.isEmpty();
    }

    private static Shape.Field field(Shape shape, Fault fault) {
        for (Shape.Field field : shape.fields()) {
            if (field.component().getName().equals(fault.field())) {
                return field;
            }
        }
        return shape.fields().get(0);
    }

    private Position position(String path) {
        Position found = Positions.nearest(positions, path);
        return found == null ? Position.startOf("") : found; // the root is always there
    }
}
