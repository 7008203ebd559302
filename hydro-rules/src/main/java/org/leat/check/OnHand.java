package org.leat.check;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.Fact;
import org.leat.design.PlantPart;
import org.leat.file.Names;

/** What of a design is a thing on hand, or says what a thing is: facts that a program does not change. */
@API(status = API.Status.EXPERIMENTAL, since = "0.1")
public final class OnHand {

    private OnHand() {}

    /** {@return the parts that edits would change and that the design says are bought or built already} */
    public static List<PlantPart> changedBy(List<Edit> edits, Design design) {
        return design.onHand().stream()
                .distinct()
                .filter(part -> edits.stream().anyMatch(edit -> isOf(part, edit)))
                .toList();
    }

    private static boolean isOf(PlantPart part, Edit edit) {
        List<PathSteps.Step> steps = PathSteps.steps(edit.path());
        return !steps.isEmpty() && steps.get(0).field().equals(Names.ofConstant(part));
    }

    /**
     * {@return whether a path leads to a field that says what a thing is marked, made or measured to be}
     *
     * <p>A field below such a one says so too.
     */
    public static boolean isFact(String path, Design design) {
        @Nullable Object holder = design;
        for (PathSteps.Step step : PathSteps.steps(path)) {
            Optional<RecordComponent> component = component(holder, step.component());
            if (component.isEmpty()) {
                return false;
            }
            if (component.get().isAnnotationPresent(Fact.class)) {
                return true;
            }
            Object value = DesignEdits.value((Record) holder, component.get());
            holder = step.item() != null && value instanceof List<?> list
                    ? list.get(DesignEdits.indexOf(list, step.item(), new Edit(path, null)))
                    : value;
        }
        return false;
    }

    private static Optional<RecordComponent> component(@Nullable Object holder, String name) {
        return holder instanceof Record record
                ? RecordShape.of(record.getClass()).components().stream()
                        .filter(c -> c.getName().equals(name))
                        .findFirst()
                : Optional.empty();
    }
}
