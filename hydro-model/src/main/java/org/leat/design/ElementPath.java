package org.leat.design;

import java.lang.reflect.Method;
import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.apiguardian.api.API;
import org.jspecify.annotations.Nullable;

/**
 * Paths of a design's elements: {@code /penstock/sections[run]/pipe/sdr}. An item of a list goes by its name if it has
 * one that no item before it has, else by its index from zero. In names {@code ~ / [ ]} are written
 * {@code ~0 ~1 ~2 ~3}.
 */
@API(status = API.Status.INTERNAL, since = "0.1")
public final class ElementPath {

    /** The whole design. */
    public static final String ROOT = "/";

    private static final ClassValue<Optional<Method>> NAMES = new ClassValue<>() {
        @Override
        protected Optional<Method> computeValue(Class<?> type) {
            return Arrays.stream(type.getRecordComponents())
                    .filter(c -> c.getName().equals("name") && c.getType() == String.class)
                    .map(RecordComponent::getAccessor)
                    .findFirst();
        }
    };

    private ElementPath() {}

    /** {@return the path of a field} */
    public static String field(String parent, String key) {
        return parent.equals(ROOT) ? ROOT + key : parent + "/" + key;
    }

    /**
     * {@return the path of an item of a list of a design}
     *
     * @param list the list's path
     * @param items the list
     * @param index of the item, from zero
     */
    public static String item(String list, List<?> items, int index) {
        String name = name(items.get(index));
        for (int i = 0; name != null && i < index; i++) {
            if (name.equals(name(items.get(i)))) {
                name = null;
            }
        }
        return named(list, name, index);
    }

    /** {@return the paths of all items of a list of a design, as {@link #item} gives each} */
    public static List<String> items(String list, List<?> items) {
        Set<String> before = new HashSet<>();
        List<String> paths = new ArrayList<>(items.size());
        for (int i = 0; i < items.size(); i++) {
            String name = name(items.get(i));
            paths.add(named(list, name == null || before.add(name) ? name : null, i));
        }
        return paths;
    }

    /**
     * {@return the path of an item of a list}
     *
     * @param list the list's path
     * @param name the item's, one that no item before it has; null or empty for none
     * @param index of the item, from zero
     */
    public static String named(String list, @Nullable String name, int index) {
        return list + "[" + (name == null || name.isEmpty() ? Integer.toString(index) : escaped(name)) + "]";
    }

    private static @Nullable String name(Object item) {
        if (!(item instanceof Record)) {
            return null;
        }
        Optional<Method> accessor = NAMES.get(item.getClass());
        try {
            return accessor.isPresent() ? (String) accessor.get().invoke(item) : null;
        } catch (ReflectiveOperationException e) {
            throw new IllegalStateException(e);
        }
    }

    private static String escaped(String name) {
        return name.replace("~", "~0").replace("/", "~1").replace("[", "~2").replace("]", "~3");
    }
}
