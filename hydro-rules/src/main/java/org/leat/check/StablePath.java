package org.leat.check;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import org.jspecify.annotations.Nullable;
import org.leat.design.Design;
import org.leat.design.ElementPath;
import org.leat.file.Names;
import org.leat.quantity.QuantityText;

/**
 * Paths that stay the same where a list is reordered. An item without a name goes by what it is, a cable by its ends:
 * {@code /cables[rectifier+battery]}; where several are the same, the second and later ones are counted.
 */
final class StablePath {

    private StablePath() {}

    /** {@return the lasting path of an element of a design; the path itself where it leads nowhere} */
    static String path(Design design, String path) {
        if (path.indexOf('[') < 0) {
            return path; // no list on the way
        }
        List<PathSteps.Step> steps;
        try {
            steps = PathSteps.steps(path);
        } catch (IllegalArgumentException e) {
            return path;
        }
        String lasting = ElementPath.ROOT;
        Object at = design;
        for (PathSteps.Step step : steps) {
            at = field(at, step.component());
            lasting = ElementPath.field(lasting, step.field());
            if (step.item() == null) {
                continue;
            }
            List<?> list = at instanceof List<?> items ? items : List.of();
            int index = index(list, step.item());
            if (index < 0) {
                return path;
            }
            lasting = ElementPath.named(lasting, key(list, index, step.item()), index);
            at = list.get(index);
        }
        return lasting;
    }

    private static @Nullable Object field(@Nullable Object holder, String component) {
        if (holder instanceof Record record) {
            for (RecordComponent c : RecordShape.of(record.getClass()).components()) {
                if (c.getName().equals(component)) {
                    return DesignEdits.value(record, c);
                }
            }
        }
        return null;
    }

    private static int index(List<?> list, String item) {
        for (int i = 0; i < list.size(); i++) {
            if (item.equals(field(list.get(i), "name"))) {
                return i;
            }
        }
        return item.matches("\\d{1,6}") && Integer.parseInt(item) < list.size() ? Integer.parseInt(item) : -1;
    }

    private static String key(List<?> list, int index, String item) {
        if (item.equals(field(list.get(index), "name"))) {
            return item;
        }
        String what = what(list.get(index));
        int before = 0;
        for (Object other : list.subList(0, index)) {
            before += what.equals(what(other)) ? 1 : 0;
        }
        return before == 0 ? what : what + " " + (before + 1);
    }

    private static String what(Object item) {
        if (item instanceof Quantity<?> quantity) {
            return QuantityText.print(quantity);
        }
        if (!(item instanceof Record record)) {
            return String.valueOf(item);
        }
        List<String> words = new ArrayList<>();
        for (RecordComponent c : RecordShape.of(record.getClass()).components()) {
            Object value = DesignEdits.value(record, c);
            if (c.getName().equals("name") && value != null) {
                words.add(value.toString());
            } else if (value instanceof Enum<?> word) {
                words.add(Names.ofConstant(word));
            }
        }
        return words.stream().collect(Collectors.joining("+"));
    }
}
