package org.leat.check;

import java.lang.reflect.Constructor;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.List;

/**
 * What is needed to copy a record with one component changed; looked up once for each class.
 *
 * @param components in their order
 * @param constructor the canonical one
 */
record RecordShape(List<RecordComponent> components, Constructor<?> constructor) {

    private static final ClassValue<RecordShape> SHAPES = new ClassValue<>() {
        @Override
        protected RecordShape computeValue(Class<?> type) {
            RecordComponent[] components = type.getRecordComponents();
            Class<?>[] types =
                    Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
            try {
                Constructor<?> canonical = type.getDeclaredConstructor(types);
                // both are public; this only spares the check at every call
                canonical.setAccessible(true);
                for (RecordComponent component : components) {
                    component.getAccessor().setAccessible(true);
                }
                return new RecordShape(List.of(components), canonical);
            } catch (NoSuchMethodException e) {
                throw new IllegalStateException(e);
            }
        }
    };

    /** {@return the shape of a record class} */
    static RecordShape of(Class<?> type) {
        return SHAPES.get(type);
    }
}
